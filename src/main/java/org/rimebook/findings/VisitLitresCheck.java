package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.depth.LevelsBeside;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Litres in a visit's entry against what the level gained by them. */
final class VisitLitresCheck implements Check {

  /** Density of methanol and of glycol with some water [kg/L], from memory. */
  private static final double LIGHTEST = 0.78;

  private static final double HEAVIEST = 1.12;

  /** Density of oils against evaporation [kg/L], from memory. */
  private static final double LIGHTEST_OIL = 0.75;

  private static final double HEAVIEST_OIL = 0.95;

  /** What measuring jug and wires may be off [mm], and of the litres; own choice. */
  private static final double OFF_MM = 2;

  private static final double OFF = 0.05;

  private static final double MM_PER_CM = 10;
  private static final double CM3_PER_L = 1000;

  @Override
  public FindingKind kind() {
    return FindingKind.VISIT_LITRES;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "The litres of a visit's entry over the orifice, antifreeze weighing 0.78 to 1.12 and oil"
        + " 0.75 to 0.95 of water (from memory), against the level after when the bucket was"
        + " emptied and its rise otherwise, medians of 11 readings on each side; 2 mm and 5 % are"
        + " let pass (own choice). Water in the antifreeze counts with it.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    List<Finding> findings = new ArrayList<>();
    for (Entry entry : scene.notebook().inForce()) {
      if (entry instanceof Entry.ServiceVisit visit) {
        look(scene, visit).ifPresent(findings::add);
      }
    }
    findings.sort(Findings.BY_TIME);
    return findings;
  }

  private Optional<Finding> look(Scene scene, Entry.ServiceVisit visit) {
    boolean stated = visit.antifreezeL().isPresent() || visit.oilL().isPresent();
    boolean emptied = visit.actions().contains(VisitAction.EMPTIED);
    OptionalDouble gained = gainedMm(scene, visit.interval(), emptied);
    if (!stated || gained.isEmpty()) {
      return Optional.empty();
    }
    double perLitre = CM3_PER_L / scene.sheet().gauge().orificeAreaCm2() * MM_PER_CM;
    double antifreezeMm = visit.antifreezeL().orElse(0) * perLitre;
    double oilMm = visit.oilL().orElse(0) * perLitre;
    double least = antifreezeMm * LIGHTEST + oilMm * LIGHTEST_OIL;
    double most = antifreezeMm * HEAVIEST + oilMm * HEAVIEST_OIL;
    double let = OFF_MM + OFF * most;
    double gain = gained.getAsDouble();
    if (gain >= least - let && gain <= most + let) {
      return Optional.empty();
    }
    return Optional.of(finding(visit, gain, new double[] {least, most}, emptied));
  }

  private Finding finding(Entry.ServiceVisit visit, double gain, double[] range, boolean emptied) {
    String litres = Words.text("%.2f L", visit.antifreezeL().orElse(0) + visit.oilL().orElse(0));
    String reason =
        Words.text(
            "%s poured in stand %.1f to %.1f mm high as water, but %s %.1f mm.",
            litres,
            range[0],
            range[1],
            emptied ? "the emptied bucket reads" : "the level rose by",
            gain);
    double apart = Math.max(range[0] - gain, gain - range[1]);
    double strength = Math.min(1, 0.3 + 0.5 * apart / Math.max(1, range[1]));
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(visit.interval()),
        reason,
        strength,
        Proposals.remark(visit.interval(), reason + " Litres, or orifice, written wrongly?"));
  }

  private static OptionalDouble gainedMm(Scene scene, Interval visit, boolean emptied) {
    LevelsBeside levels = new LevelsBeside(scene.record(), scene.depths());
    double[] gains = new double[scene.depths().wires()];
    Arrays.setAll(
        gains,
        wire ->
            levels.after(wire, visit).orElse(Double.NaN)
                - (emptied ? 0 : levels.before(wire, visit).orElse(Double.NaN)));
    double gain = Disturbance.median(gains);
    return Double.isNaN(gain) ? OptionalDouble.empty() : OptionalDouble.of(gain);
  }
}
