package org.rimebook.practice;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Set;
import org.rimebook.station.Interval;

/**
 * What a logger gets wrong in its files.
 *
 * @param clockResets when its clock had started again from {@link #CLOCK_EPOCH}
 * @param repeats stretches it wrote down twice, one after the other
 * @param overlaps months whose file starts with the last rows of the month before
 * @param cut months whose file ends inside a line
 */
public record LoggerFaults(
    List<Interval> clockResets,
    List<Interval> repeats,
    Set<YearMonth> overlaps,
    Set<YearMonth> cut) {

  /** Station time a clock starts from when it has lost the time. */
  static final LocalDateTime CLOCK_EPOCH = LocalDateTime.of(2000, 1, 1, 0, 0);

  /** A logger without fault. */
  public static final LoggerFaults NONE =
      new LoggerFaults(List.of(), List.of(), Set.of(), Set.of());

  public LoggerFaults {
    clockResets = List.copyOf(clockResets);
    repeats = List.copyOf(repeats);
    overlaps = Set.copyOf(overlaps);
    cut = Set.copyOf(cut);
  }
}
