package org.rimebook.totals;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.rimebook.station.Interval;
import org.rimebook.undercatch.Phase;

/**
 * The total of one hour or day.
 *
 * @param interval the hour or day
 * @param catchUnits what the bucket caught, in whole units of the table's resolution; empty when
 *     missing
 * @param uncertaintyMm standard uncertainty of the catch (k = 1) [mm]; empty when missing
 * @param quality quality
 * @param completeness share of the interval covered by usable readings, 0 to 1
 * @param wires names of the wires used, in the order of the station sheet
 * @param accumulatedSinceMs when the catch holds all that fell since this instant [ms since epoch]
 * @param adjustedUnits catch adjusted for wind undercatch, in whole units; empty when it can't be
 * @param phase phase of what fell, when anything did and the air temperature is known
 * @param reasons how it came about, in the order of {@link Reason}; copied
 */
public record TotalRow(
    Interval interval,
    OptionalLong catchUnits,
    OptionalDouble uncertaintyMm,
    Quality quality,
    double completeness,
    List<String> wires,
    OptionalLong accumulatedSinceMs,
    OptionalLong adjustedUnits,
    Optional<Phase> phase,
    Set<Reason> reasons) {

  public TotalRow {
    wires = List.copyOf(wires);
    Set<Reason> inOrder = EnumSet.noneOf(Reason.class);
    inOrder.addAll(reasons);
    reasons = Collections.unmodifiableSet(inOrder);
  }
}
