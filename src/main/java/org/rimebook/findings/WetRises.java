package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.station.Interval;

/**
 * How much each wire rises, precipitation event by event, against the middle one of all. Dry hours
 * in between don't count, so that creep and the daily wave hardly matter.
 */
final class WetRises {

  /** An hour is wet when the middle wire rises by this [mm] and so many times the usual change. */
  private static final double WET_MM = 0.3;

  private static final double WET_SD = 5;

  /** More isn't precipitation but somebody pouring [mm/h]; own choice. */
  private static final double MOST_MM = 40;

  /** Wet hours this near belong together. */
  private static final int JOINED_HOURS = 3;

  /** An event counts from this rise on [mm]; own choice. */
  private static final double LEAST_EVENT_MM = 1.5;

  private final SharedHours hours;
  private final int fromHour;
  private final int toHour;
  private final List<double[]> rises = new ArrayList<>();

  /**
   * Events of a stretch without a change of calibration.
   *
   * @param closed spans that no event may touch
   */
  WetRises(SharedHours hours, int fromHour, int toHour, List<Interval> closed) {
    this.hours = hours;
    this.fromHour = fromHour;
    this.toHour = toHour;
    collect(middleRises(closed));
  }

  /** Rise of the middle wire into each hour [mm]; NaN where it doesn't compare. */
  private double[] middleRises(List<Interval> closed) {
    double[] rise = new double[toHour];
    Arrays.fill(rise, Double.NaN);
    for (int hour = fromHour + 1; hour < toHour; hour++) {
      if (hours.known(hour) && hours.known(hour - 1)) {
        Interval both = new Interval(hours.startMs(hour - 1), hours.startMs(hour + 1));
        if (closed.stream().noneMatch(both::overlaps)) {
          rise[hour] = middle(rises(hour - 1, hour));
        }
      }
    }
    return rise;
  }

  private double[] rises(int from, int to) {
    return IntStream.range(0, hours.wires())
        .mapToDouble(w -> hours.depthMm(w, to) - hours.depthMm(w, from))
        .toArray();
  }

  private static double middle(double[] values) {
    return Robust.medianInPlace(values.clone(), values.length);
  }

  private void collect(double[] rise) {
    double[] finite = Arrays.stream(rise).filter(Double::isFinite).toArray();
    if (finite.length == 0) {
      return;
    }
    double wetMm = Math.max(WET_MM, WET_SD * Robust.sdInPlace(finite, finite.length));
    int hour = fromHour + 1;
    while (hour < toHour) {
      if (rise[hour] > wetMm && rise[hour] < MOST_MM) {
        int last = hour;
        for (int next = hour + 1;
            next < toHour && next <= last + JOINED_HOURS && rise[next] < MOST_MM;
            next++) {
          last = rise[next] > wetMm ? next : last;
        }
        add(hour - 1, last);
        hour = last + 1;
      } else {
        hour++;
      }
    }
  }

  private void add(int before, int last) {
    double[] event = rises(before, last);
    if (middle(event) >= LEAST_EVENT_MM) {
      rises.add(event);
    }
  }

  /** Events. */
  int size() {
    return rises.size();
  }

  /** What fell in all events [mm]. */
  double totalMm() {
    return rises.stream().mapToDouble(WetRises::middle).sum();
  }

  /**
   * How a wire's rises compare with the middle one's.
   *
   * @param ratio weighted median over the events; 1 for sound wires
   * @param standardError standard error of it
   * @param early the ratio in the first half of the events
   * @param late the ratio in the second half of the events
   */
  record Ratio(double ratio, double standardError, double early, double late) {

    /** How far it certainly lies from 1, on whichever side; negative when it may not. */
    double surelyOff(double standardErrors) {
      return Math.abs(ratio - 1) - standardErrors * standardError;
    }

    /** Whether both halves of the events say the same. */
    boolean lasting() {
      return Math.min((early - 1) / (ratio - 1), (late - 1) / (ratio - 1)) > 0.4;
    }
  }

  /** At least two events are needed. */
  Ratio ratio(int wire) {
    int half = rises.size() / 2;
    double ratio = median(wire, rises);
    double[] off = rises.stream().mapToDouble(event -> event[wire] / middle(event)).toArray();
    double sd = Robust.sdInPlace(off, off.length);
    return new Ratio(
        ratio,
        1.25 * sd / Math.sqrt(off.length),
        median(wire, rises.subList(0, half)),
        median(wire, rises.subList(half, rises.size())));
  }

  private static double median(int wire, List<double[]> events) {
    List<double[]> sorted =
        events.stream()
            .sorted(Comparator.comparingDouble(event -> event[wire] / middle(event)))
            .toList();
    double whole = sorted.stream().mapToDouble(WetRises::middle).sum();
    double sum = 0;
    for (double[] event : sorted) {
      sum += middle(event);
      if (sum >= whole / 2) {
        return event[wire] / middle(event);
      }
    }
    return Double.NaN;
  }
}
