package org.rimebook.practice;

import java.time.Duration;
import org.rimebook.station.Interval;

/**
 * Snow that bridges the orifice: what falls on it stays up there until it lets go.
 *
 * @param blocked while the orifice is bridged
 * @param release how long the cap takes to slide in, from the end of {@code blocked} on
 */
public record Cap(Interval blocked, Duration release) {

  /** What enters the bucket of what falls. */
  Precipitation through(Precipitation fell) {
    Interval sliding =
        new Interval(blocked.toMs(), Math.addExact(blocked.toMs(), release.toMillis()));
    return fell.without(blocked).with(new Pulse(sliding, fell.amountMm(blocked)));
  }
}
