package org.rimebook.accumulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.depth.WireDepths;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/**
 * How the air temperature moves the reading of one wire while nothing falls: fitted to that wire's
 * depths in the way {@link DriftModel} fits the level's, over the same dry time, beside a daily
 * wave. What the sun does to a single wire goes with the temperature from day to day and comes in
 * here, which the mean of all wires is mostly free of; the uncertainty is that of the fit alone.
 *
 * @param wire its name
 * @param statedPerDegC what its sheet states [1/°C]; NaN when it states none
 * @param perDegC what the readings show [1/°C]; empty with too little dry time, or without air
 *     temperature
 * @param dryChanges three-hour changes of the wire behind it, one starting each hour
 */
public record WireTemperature(
    String wire, double statedPerDegC, Optional<Fitted> perDegC, int dryChanges) {

  private static final double DRY = 0.3;

  /**
   * The wires of a season.
   *
   * @param evidence what the season was estimated from
   * @param estimate its estimate
   * @return a wire each, in the order of the sheet; empty when nothing was learnt from the season
   */
  public static List<WireTemperature> of(LevelEvidence evidence, Estimate estimate) {
    return estimate
        .basis()
        .map(
            basis ->
                IntStream.range(0, evidence.depths().wires())
                    .mapToObj(wire -> of(evidence, basis, wire))
                    .toList())
        .orElse(List.of());
  }

  private static WireTemperature of(LevelEvidence evidence, CatchBasis basis, int wire) {
    Wire sheet = evidence.sheet().wires().get(wire);
    LevelNodes own = basis.nodes().at(depthsMm(evidence, basis.nodes(), wire));
    DriftLaw law =
        DriftModel.fit(
                own,
                Covariates.ofTemperature(own, evidence),
                basis.noise().varianceMm2(),
                basis.wet())
            .law();
    double stated = sheet.temperaturePerDegC().orElse(Double.NaN);
    double before = Double.isNaN(stated) ? 0 : stated;
    return new WireTemperature(
        sheet.name(),
        stated,
        law.temperaturePerDegC()
            .map(left -> new Fitted(before + left.value(), left.standardUncertainty())),
        law.dryHours());
  }

  /** Mean depth of the wire over the readings of each node [mm]; NaN where it isn't used. */
  private static double[] depthsMm(LevelEvidence evidence, LevelNodes nodes, int wire) {
    WireDepths depths = evidence.depths();
    double[] mean = new double[nodes.size()];
    for (int node = 0; node < mean.length; node++) {
      int first = nodes.firstIndex()[node];
      int end = Math.min(evidence.level().size(), first + nodes.readings()[node]);
      double sum = 0;
      int count = 0;
      for (int i = first; i < end; i++) {
        int row = evidence.level().row(i);
        if (depths.used(wire, row)) {
          sum += depths.depthMm(wire, row);
          count++;
        }
      }
      mean[node] = count == 0 ? Double.NaN : sum / count;
    }
    return mean;
  }

  /**
   * The dry spells of a season that tell of temperature: readings that follow each other for three
   * hours and more with nothing falling.
   *
   * @param estimate its estimate
   */
  public static List<Interval> drySpells(Estimate estimate) {
    return estimate.basis().map(WireTemperature::drySpells).orElse(List.of());
  }

  private static List<Interval> drySpells(CatchBasis basis) {
    List<Interval> spells = new ArrayList<>();
    LevelNodes nodes = basis.nodes();
    long leastMs = DryChanges.LAG * 3_600_000L;
    int from = 0;
    for (int link = 0; link <= nodes.links().length; link++) {
      boolean goesOn =
          link < nodes.links().length
              && nodes.links()[link] == LevelNodes.Link.STEP
              && basis.wet()[link] < DRY;
      if (!goesOn) {
        if (nodes.timeMs()[link] - nodes.timeMs()[from] >= leastMs) {
          spells.add(new Interval(nodes.timeMs()[from], nodes.timeMs()[link]));
        }
        from = link + 1;
      }
    }
    return spells;
  }
}
