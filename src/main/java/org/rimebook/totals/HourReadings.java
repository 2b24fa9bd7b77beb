package org.rimebook.totals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.depth.Screening;
import org.rimebook.notebook.Entry;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/** What the readings of consecutive hours are like: cover, wires, screening, weather. */
final class HourReadings {

  private static final long HOUR_MS = Clock.HOUR_MS;

  private final Evidence evidence;
  private final Interval span;
  private final int hours;
  private final int wires;
  private final long[] coveredMs;
  private final long[][] wireMs;
  private final List<Set<Reason>> screened = new ArrayList<>();
  private final List<Set<Reason>> reasons = new ArrayList<>();
  private final HalfHourWeather weather;
  private int firstHour;
  private int lastHour;

  /** Takes a row of the record that closes an interval. */
  private interface RowTaker {
    void take(int row, long fromMs, long toMs);
  }

  private HourReadings(Evidence evidence, Interval span, HalfHourWeather weather) {
    this.evidence = evidence;
    this.span = span;
    this.hours = (int) (span.lengthMs() / HOUR_MS);
    this.wires = evidence.sheet().wires().size();
    this.coveredMs = new long[hours];
    this.wireMs = new long[wires][hours];
    for (int h = 0; h < hours; h++) {
      screened.add(EnumSet.noneOf(Reason.class));
    }
    this.weather = weather;
    this.lastHour = hours - 1;
  }

  static HourReadings of(Evidence evidence, Interval span) {
    HourReadings readings = new HourReadings(evidence, span, new HalfHourWeather(evidence, span));
    readings.readRows(0, evidence.record().size(), readings.weather::add);
    readings.readEntries();
    return readings;
  }

  /**
   * The same hours where readings are used otherwise in some of them, and entries are others.
   *
   * @param now the record, sheet and span are the same
   * @param touched where readings are used otherwise
   */
  HourReadings revised(Evidence now, Interval touched) {
    HourReadings readings = new HourReadings(now, span, weather);
    readings.firstHour = Math.max(0, Math.min(hours - 1, hourOf(touched.fromMs() - 1)));
    readings.lastHour = Math.max(0, Math.min(hours - 1, hourOf(touched.toMs())));
    readings.keep(this);
    SeasonRecord record = now.record();
    long longestMs = record.sampling().stream().mapToLong(SamplingRun::intervalMs).max().orElse(0);
    long fromMs = span.fromMs() + readings.firstHour * HOUR_MS;
    long toMs = span.fromMs() + (readings.lastHour + 1) * HOUR_MS + 2 * longestMs;
    readings.readRows(
        record.firstRowAtOrAfter(fromMs), record.firstRowAtOrAfter(toMs), (row, from, to) -> {});
    readings.readEntries();
    return readings;
  }

  /** Takes over the hours that aren't read anew. */
  private void keep(HourReadings before) {
    for (int h = 0; h < hours; h++) {
      if (h < firstHour || h > lastHour) {
        coveredMs[h] = before.coveredMs[h];
        screened.get(h).addAll(before.screened.get(h));
        for (int wire = 0; wire < wires; wire++) {
          wireMs[wire][h] = before.wireMs[wire][h];
        }
      }
    }
  }

  /** Share of the hour covered by usable readings, 0 to 1. */
  double completeness(int hour) {
    return Math.min(1, coveredMs[hour] / (double) HOUR_MS);
  }

  /** Whether a wire gave a usable reading in the hour. */
  boolean used(int wire, int hour) {
    return wireMs[wire][hour] > 0;
  }

  /** What the readings and the entries about wires give as reasons. */
  Set<Reason> reasons(int hour) {
    return reasons.get(hour);
  }

  /** The weather of its half hours. */
  HalfHourWeather weather() {
    return weather;
  }

  private void readRows(int fromRow, int toRow, RowTaker also) {
    int run = 0;
    for (int row = fromRow; row < toRow; row++) {
      while (row > evidence.record().sampling().get(run).lastRow()) {
        run++;
      }
      SamplingRun sampling = evidence.record().sampling().get(run);
      long to = evidence.record().stampMs(row);
      long from = to - sampling.intervalMs();
      if (row > 0) {
        long before = evidence.record().stampMs(row - 1);
        from = to - before <= sampling.intervalMs() * 3 / 2 ? before : from;
      }
      readRow(row, from, to);
      also.take(row, from, to);
    }
  }

  private void readRow(int row, long fromMs, long toMs) {
    boolean any = false;
    int closing = hourOf(toMs - 1);
    for (int wire = 0; wire < wires; wire++) {
      if (evidence.depths().used(wire, row)) {
        any = true;
        cover(wireMs[wire], fromMs, toMs);
      } else if (closing >= firstHour && closing <= lastHour) {
        screened(evidence.depths().screening(wire, row)).ifPresent(screened.get(closing)::add);
      }
    }
    if (any) {
      cover(coveredMs, fromMs, toMs);
    }
  }

  private static Optional<Reason> screened(Screening screening) {
    return switch (screening) {
      case SPIKE -> Optional.of(Reason.SPIKE);
      case OUT_OF_RANGE -> Optional.of(Reason.OUT_OF_RANGE);
      default -> Optional.empty();
    };
  }

  /** Index of the hour that holds an instant; negative before the first. */
  private int hourOf(long epochMs) {
    return (int) Math.min(hours - 1, Math.floorDiv(epochMs - span.fromMs(), HOUR_MS));
  }

  private void cover(long[] ms, long fromMs, long toMs) {
    int last = Math.min(lastHour, hourOf(toMs - 1));
    for (int h = Math.max(firstHour, hourOf(fromMs)); h <= last; h++) {
      long start = span.fromMs() + h * HOUR_MS;
      ms[h] += Math.max(0, Math.min(toMs, start + HOUR_MS) - Math.max(fromMs, start));
    }
  }

  private void readEntries() {
    screened.forEach(reason -> reasons.add(EnumSet.copyOf(reason)));
    for (Entry entry : evidence.notebook().inForce()) {
      if (entry instanceof Entry.BadInterval bad && bears(bad)) {
        int last = hourOf(bad.interval().toMs() - 1);
        for (int h = Math.max(0, hourOf(bad.interval().fromMs())); h <= last; h++) {
          reasons.get(h).add(Reason.BAD_INTERVAL);
        }
      }
    }
    for (int h = 0; h < hours; h++) {
      addWireReasons(h);
    }
  }

  /** Whether an entry leaves out any wire of the sheet in any hour of the record. */
  private boolean bears(Entry.BadInterval bad) {
    boolean known =
        bad.wires().isEmpty()
            || evidence.sheet().wires().stream().map(Wire::name).anyMatch(bad.wires()::contains);
    return known && bad.interval().overlaps(span);
  }

  private void addWireReasons(int h) {
    int using = 0;
    boolean lacking = false;
    for (int wire = 0; wire < wires; wire++) {
      using += wireMs[wire][h] > 0 ? 1 : 0;
      lacking |= coveredMs[h] - wireMs[wire][h] > HourlyCatch.TOLERANCE_MS;
    }
    if (lacking) {
      reasons.get(h).add(Reason.WIRE_MISSING);
    }
    if (using == 1) {
      reasons.get(h).add(Reason.ONE_WIRE);
    }
  }
}
