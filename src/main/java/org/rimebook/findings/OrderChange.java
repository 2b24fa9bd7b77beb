package org.rimebook.findings;

import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/**
 * When exactly wires were exchanged: at the visit nearby, or between the two rows that part the
 * readings best.
 */
final class OrderChange {

  /** The change is looked for so many hours about the hour it was seen in; own choice. */
  private static final int ABOUT_HOURS = 4;

  private final Scene scene;
  private final SharedHours hours;
  private final List<Interval> visits;

  OrderChange(Scene scene, SharedHours hours) {
    this.scene = scene;
    this.hours = hours;
    this.visits = scene.spans(Entry.ServiceVisit.class);
  }

  /** When an order begins to suit, near the start of an hour [ms since epoch]. */
  long afterMs(int hour, int[] order) {
    Interval about = about(hour);
    return visits.stream()
        .filter(about::overlaps)
        .mapToLong(Interval::toMs)
        .findFirst()
        .orElseGet(() -> scene.record().stampMs(parting(about, order, 1)));
  }

  /** When an order ceases to suit, near the start of an hour [ms since epoch]. */
  long beforeMs(int hour, int[] order) {
    Interval about = about(hour);
    return visits.stream()
        .filter(about::overlaps)
        .mapToLong(Interval::fromMs)
        .findFirst()
        .orElseGet(() -> scene.record().stampMs(parting(about, order, -1)));
  }

  private Interval about(int hour) {
    int from = Math.max(0, hour - ABOUT_HOURS);
    int to = Math.min(hours.size(), hour + ABOUT_HOURS);
    while (from > 0 && !hours.known(from)) {
      from--;
    }
    while (to < hours.size() && !hours.known(to - 1)) {
      to++;
    }
    return new Interval(hours.startMs(from), hours.startMs(to) + 1);
  }

  /** The row after which the order suits better, or worse with the other sign. */
  private int parting(Interval about, int[] order, int sign) {
    int from = scene.record().firstRowAtOrAfter(about.fromMs());
    int to = Math.min(scene.record().size() - 1, scene.record().firstRowAtOrAfter(about.toMs()));
    double sum = 0;
    double least = 0;
    int parting = from;
    for (int row = from; row < to; row++) {
      if (hours.whole(row)) {
        boolean suits = spreadMm(row, order) < spreadMm(row, sheets());
        sum += suits ? sign : -sign;
        if (sum < least) {
          least = sum;
          parting = row + 1;
        }
      }
    }
    return parting;
  }

  private int[] sheets() {
    return IntStream.range(0, hours.wires()).toArray();
  }

  private double spreadMm(int row, int[] order) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int wire = 0; wire < hours.wires(); wire++) {
      double depth =
          hours.curve(order[wire], scene.record().stampMs(row)).depthMm(hours.hertz(wire, row));
      low = Math.min(low, depth);
      high = Math.max(high, depth);
    }
    return high - low;
  }
}
