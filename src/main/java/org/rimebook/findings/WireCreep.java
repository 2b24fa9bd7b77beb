package org.rimebook.findings;

import java.util.List;
import org.rimebook.station.Interval;

/**
 * A wire that creeps or shifts.
 *
 * @param wires the wire, or the two of which it may be either
 * @param creeps whether it creeps; else it shifts at once
 * @param span from its start to its end; about the moment of a shift
 * @param mm how far it comes [mm]
 * @param noiseMm noise of a night [mm]
 */
record WireCreep(List<Integer> wires, boolean creeps, Interval span, double mm, double noiseMm) {

  WireCreep {
    wires = List.copyOf(wires);
  }
}
