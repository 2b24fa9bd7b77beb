package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Bursts of spikes. Single spikes are left out as they are; where they come in dozens, some hit
 * neighbouring readings or are too small to be told from noise, and get through.
 */
final class InterferenceCheck implements Check {

  /** Half an hour: a burst is found in windows of this length [ms]. */
  private static final long WINDOW_MS = 1_800_000;

  /** Struck readings in a burst, in one of its windows, and their share; own choice. */
  private static final int LEAST_STRUCK = 6;

  private static final int LEAST_IN_WINDOW = 2;
  private static final double LEAST_SHARE = 0.03;

  /** Times the usual number of struck readings; own choice. */
  private static final double TIMES_USUAL = 8;

  /** Windows without a struck reading inside a burst. */
  private static final int MOST_QUIET = 2;

  private static final int SURE_STRUCK = 40;

  @Override
  public FindingKind kind() {
    return FindingKind.INTERFERENCE;
  }

  @Override
  public String method() {
    return "Half hours in which at least 2 readings of a wire and 3 % of them are spikes or out"
        + " of range or, beside such ones, 1 mm off the median of five readings, 10 times the usual"
        + " noise and 20 times what four in ten are off; 6 in a burst and 8 times the usual number"
        + " (own choice; counting"
        + " rejected readings: common practice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Pace pace = Pace.of(scene.record());
    int window = pace.readings(WINDOW_MS);
    List<Burst> bursts = new ArrayList<>();
    if (window >= 2 * LEAST_IN_WINDOW) {
      for (int wire = 0; wire < scene.depths().wires(); wire++) {
        bursts.addAll(bursts(scene, wire, window));
      }
    }
    return together(bursts).stream()
        .map(burst -> finding(scene, pace, burst))
        .filter(finding -> stands(scene, finding))
        .toList();
  }

  /**
   * A burst.
   *
   * @param wires the wires struck
   * @param fromRow row of the first struck reading
   * @param toRow row after the last
   * @param struck struck readings
   */
  private record Burst(List<Integer> wires, int fromRow, int toRow, int struck) {

    Burst with(Burst other) {
      List<Integer> all =
          IntStream.concat(wires.stream().mapToInt(w -> w), other.wires.stream().mapToInt(w -> w))
              .distinct()
              .sorted()
              .boxed()
              .toList();
      return new Burst(
          all,
          Math.min(fromRow, other.fromRow),
          Math.max(toRow, other.toRow),
          struck + other.struck);
    }
  }

  private static List<Burst> bursts(Scene scene, int wire, int window) {
    StruckReadings readings = new StruckReadings(scene, wire, window);
    int[] struck = new int[scene.record().size() / window + 1];
    for (int row = 0; row < scene.record().size(); row++) {
      struck[row / window] += readings.at(row) ? 1 : 0;
    }
    double usual = usual(struck);
    List<Burst> bursts = new ArrayList<>();
    int i = 0;
    while (i < struck.length) {
      int end = i;
      int sum = 0;
      int quiet = 0;
      for (int j = i; j < struck.length && struck[i] >= LEAST_IN_WINDOW; j++) {
        quiet = struck[j] == 0 ? quiet + 1 : 0;
        if (quiet > MOST_QUIET) {
          break;
        }
        sum += struck[j];
        end = struck[j] > 0 ? j + 1 : end;
      }
      int length = (end - i) * window;
      if (sum >= LEAST_STRUCK
          && sum >= LEAST_SHARE * length
          && sum >= TIMES_USUAL * usual * (end - i)) {
        int to = Math.min(end * window, scene.record().size());
        bursts.add(trimmed(readings, wire, i * window, to));
      }
      i = Math.max(i + 1, end);
    }
    return bursts;
  }

  /** Mean number in a window, the worst twentieth left out. */
  private static double usual(int[] struck) {
    int[] sorted = struck.clone();
    Arrays.sort(sorted);
    int kept = Math.max(1, (int) (0.95 * sorted.length));
    return Arrays.stream(sorted, 0, kept).average().orElse(0);
  }

  private static Burst trimmed(StruckReadings readings, int wire, int fromRow, int toRow) {
    int[] rows = IntStream.range(fromRow, toRow).filter(readings::at).toArray();
    return new Burst(List.of(wire), rows[0], rows[rows.length - 1] + 1, rows.length);
  }

  /** Bursts of different wires at the same time, as one. */
  private static List<Burst> together(List<Burst> bursts) {
    List<Burst> joined = new ArrayList<>();
    List<Burst> ordered = new ArrayList<>(bursts);
    ordered.sort((a, b) -> Integer.compare(a.fromRow, b.fromRow));
    for (Burst burst : ordered) {
      int last = joined.size() - 1;
      if (last >= 0 && burst.fromRow < joined.get(last).toRow) {
        joined.set(last, joined.get(last).with(burst));
      } else {
        joined.add(burst);
      }
    }
    return joined;
  }

  private static boolean stands(Scene scene, Finding finding) {
    return !scene.explained(finding.span())
        && !scene.found(FindingKind.UNMARKED_VISIT, finding.span())
        && scene.found().stream()
            .filter(
                other ->
                    other.kind() == FindingKind.SILENT_WIRE
                        || other.kind() == FindingKind.WIRE_OUT_OF_RANGE)
            .noneMatch(
                other ->
                    other.span().overlaps(finding.span())
                        && (other.wires().isEmpty()
                            || finding.wires().stream().anyMatch(other.wires()::contains)));
  }

  private Finding finding(Scene scene, Pace pace, Burst burst) {
    Interval span = pace.span(burst.fromRow, burst.toRow);
    List<String> names = burst.wires.stream().map(scene::wireName).toList();
    int readings = burst.wires.size() * (burst.toRow - burst.fromRow);
    String reason =
        Words.text(
            "%d of %d readings of %s are struck in %s (%.0f %%).",
            burst.struck,
            readings,
            Wording.names(names),
            Wording.duration(span.lengthMs()),
            100.0 * burst.struck / readings);
    return Finding.doubting(
        kind(),
        new Finding.Subject(span, names),
        reason,
        Math.min(1, 0.3 + 0.5 * burst.struck / SURE_STRUCK),
        Proposals.bad(span, names, BadReason.INTERFERENCE, "Spikes."));
  }
}
