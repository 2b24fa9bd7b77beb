package org.rimebook.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import org.rimebook.accumulation.DriftLaw;
import org.rimebook.accumulation.Fitted;
import org.rimebook.accumulation.Learnt;

/** What the estimator learnt from a season, as members of its summary; {@code _u_} marks k = 1. */
final class LearntSummary {

  private static final MathContext DIGITS = new MathContext(4);

  private LearntSummary() {}

  static void add(ObjectNode node, Learnt learnt) {
    node.put("node_noise_mm", number(learnt.nodeNoiseMm()));
    node.put("noise_correlation_factor", number(learnt.noiseCorrelation()));
    node.put("whole_noise_factor", number(learnt.wholeNoise()));
    node.put("dry_drift_mm_per_sqrt_h", number(learnt.dryDriftMmPerSqrtH()));
    addDrift(node, learnt.drift());
    node.put("rehearsed_variance_factor", number(learnt.rehearsed().withinFactor()));
    node.put("rehearsed_dry_variance_factor", number(learnt.rehearsed().dryFactor()));
    node.put("counter_bias_mm", number(Math.sqrt(learnt.counterMm2())));
    node.put("common_uncertainty_share", number(learnt.commonShare()));
  }

  private static void addDrift(ObjectNode node, DriftLaw law) {
    node.put("dry_hours", law.dryHours());
    node.put("temperature_applied", law.temperaturePerDegC().isPresent());
    law.temperaturePerDegC().ifPresent(c -> put(node, "temperature_coefficient", "per_degc", c));
    node.put("evaporation_applied", law.evaporationMmPerD().isPresent());
    law.evaporationMmPerD().ifPresent(e -> put(node, "evaporation", "mm_per_d", e));
    ArrayNode waves = node.putArray("daily_wave_mm_per_h");
    law.waveMmPerH().forEach(term -> waves.add(number(term.value())));
    ArrayNode departures = node.putArray("wire_departures");
    for (DriftLaw.Departure departure : law.departures()) {
      ObjectNode wire = departures.addObject();
      wire.put("wire", departure.wire());
      put(wire, "level", "mm_per_mm", departure.mmPerMm());
    }
  }

  private static void put(ObjectNode node, String name, String unit, Fitted fitted) {
    node.put(name + "_" + unit, number(fitted.value()));
    node.put(name + "_u_" + unit, number(fitted.standardUncertainty()));
  }

  private static BigDecimal number(double value) {
    return new BigDecimal(value).round(DIGITS);
  }
}
