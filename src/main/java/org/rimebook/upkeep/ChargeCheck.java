package org.rimebook.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.rimebook.depth.LevelsBeside;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.season.SeasonDepths;
import org.rimebook.station.Wire;

/**
 * What was poured in at a visit against what each wire shows: a check of orifice, calibration and
 * notebook at once.
 *
 * @param visit the visit
 * @param emptied whether the bucket was emptied before
 * @param expectedMm rise that the litres make, or depth when it was emptied [mm]
 * @param wires what the wires show
 */
public record ChargeCheck(
    Entry.ServiceVisit visit, boolean emptied, double expectedMm, List<WireRise> wires) {

  /**
   * What jug, scales and wires may be off: published accuracy of three wires together is 1 %
   * (Duchon, Wade and Cole 2003); the rest is own choice [mm].
   */
  private static final double LET_MM = 2;

  private static final double LET = 0.03;

  public ChargeCheck {
    wires = List.copyOf(wires);
  }

  /**
   * What one wire shows.
   *
   * @param wire its name
   * @param beforeMm depth before [mm]; empty when it wasn't read
   * @param afterMm depth after [mm]; empty when it wasn't read
   */
  public record WireRise(String wire, OptionalDouble beforeMm, OptionalDouble afterMm) {

    /** What it gained [mm], from nothing when the bucket was emptied. */
    OptionalDouble gainedMm(boolean emptied) {
      double fromMm = emptied ? 0 : beforeMm.orElse(Double.NaN);
      double mm = afterMm.orElse(Double.NaN) - fromMm;
      return Double.isFinite(mm) ? OptionalDouble.of(mm) : OptionalDouble.empty();
    }
  }

  /** Checks each visit of a season whose litres are written down, in the order of time. */
  public static List<ChargeCheck> of(SeasonDepths season, Poured like) {
    double areaCm2 = season.season().sheet().gauge().orificeAreaCm2();
    LevelsBeside levels = new LevelsBeside(season.season().record(), season.depths());
    List<ChargeCheck> checks = new ArrayList<>();
    for (Entry entry : season.season().notebook().inForce()) {
      if (entry instanceof Entry.ServiceVisit visit
          && (visit.antifreezeL().isPresent() || visit.oilL().isPresent())) {
        boolean emptied = visit.actions().contains(VisitAction.EMPTIED);
        checks.add(
            new ChargeCheck(
                visit, emptied, like.at(visit).riseMm(areaCm2), rises(season, levels, visit)));
      }
    }
    checks.sort((a, b) -> Long.compare(a.visit.interval().fromMs(), b.visit.interval().fromMs()));
    return checks;
  }

  private static List<WireRise> rises(
      SeasonDepths season, LevelsBeside levels, Entry.ServiceVisit visit) {
    List<WireRise> rises = new ArrayList<>();
    List<Wire> wires = season.season().sheet().wires();
    for (int wire = 0; wire < wires.size(); wire++) {
      rises.add(
          new WireRise(
              wires.get(wire).name(),
              levels.before(wire, visit.interval()),
              levels.after(wire, visit.interval())));
    }
    return rises;
  }

  /** By how much the wires may miss what is expected [mm]. */
  public double letMm() {
    return LET_MM + LET * expectedMm;
  }

  /** What a wire gained less what was expected [mm]; empty when the wire wasn't read. */
  public OptionalDouble offMm(WireRise wire) {
    OptionalDouble gained = wire.gainedMm(emptied);
    return gained.isPresent()
        ? OptionalDouble.of(gained.getAsDouble() - expectedMm)
        : OptionalDouble.empty();
  }

  /** Whether a wire that was read suits what was poured in. */
  public boolean suits(WireRise wire) {
    return Math.abs(offMm(wire).orElse(0)) <= letMm();
  }
}
