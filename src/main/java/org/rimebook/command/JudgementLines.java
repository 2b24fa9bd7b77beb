package org.rimebook.command;

import static org.rimebook.command.LabelledLines.counted;
import static org.rimebook.command.LabelledLines.text;

import java.util.OptionalDouble;
import org.rimebook.accumulation.DriftLaw;
import org.rimebook.accumulation.DriftTaken;
import org.rimebook.accumulation.Estimate;
import org.rimebook.accumulation.Learnt;
import org.rimebook.station.Interval;

/** What was judged noise and what drift in a span of time, and by what was learnt. */
final class JudgementLines {

  private final Estimate estimate;
  private final Interval span;

  JudgementLines(Estimate estimate, Interval span) {
    this.estimate = estimate;
    this.span = span;
  }

  void addTo(LabelledLines lines) {
    if (estimate.learnt().isEmpty()) {
      lines.add("noise", "not known: the season has no usable level");
      return;
    }
    Learnt learnt = estimate.learnt().get();
    addNoise(lines, learnt);
    if (learnt.drift().evaporationMmPerD().isEmpty()) {
      lines.add(
          "drift",
          "none taken off: too little dry time to learn it from, "
              + counted(learnt.drift().dryHours(), "hour"));
      return;
    }
    addDrift(lines, learnt.drift());
  }

  private void addNoise(LabelledLines lines, Learnt learnt) {
    OptionalDouble noise = estimate.judgement().noiseMm(span.fromMs(), span.toMs());
    int nodes = estimate.judgement().nodes(span.fromMs(), span.toMs());
    lines.add(
        "noise",
        noise.isPresent()
            ? text(
                "%.3f mm a level, of %s of readings within a minute",
                noise.getAsDouble(), counted(nodes, "mean"))
            : "no level inside; the ends are judged by their neighbours");
    lines.add(
        "",
        text(
            "variance times %.2f over a quarter of an hour, as neighbours share noise",
            learnt.noiseCorrelation()));
  }

  private void addDrift(LabelledLines lines, DriftLaw law) {
    DriftTaken taken = estimate.judgement().taken(span.fromMs(), span.toMs());
    lines.add(
        "drift",
        text("%+.3f mm of the change of level isn't catch, as learnt from", taken.totalMm())
            + text(" %s:", counted(law.dryHours(), "dry hour")));
    law.temperaturePerDegC()
        .ifPresent(
            c ->
                lines.add(
                    "",
                    text(
                        "%+.3f mm  temperature: %+.2e of the load a degree, u %.1e",
                        taken.temperatureMm(), c.value(), c.standardUncertainty())));
    if (!law.departures().isEmpty()) {
      lines.add("", text("%+.3f mm  the wires' departures from their mean:", taken.departuresMm()));
      for (DriftLaw.Departure departure : law.departures()) {
        lines.add(
            "",
            text(
                "           %s %+.3f mm a mm, u %.3f",
                departure.wire(),
                departure.mmPerMm().value(),
                departure.mmPerMm().standardUncertainty()));
      }
    }
    law.evaporationMmPerD()
        .ifPresent(
            e ->
                lines.add(
                    "",
                    text(
                        "%+.3f mm  daily wave: evaporation of %.3f mm a day, u %.3f; half while wet",
                        taken.waveMm(), e.value(), e.standardUncertainty())));
  }
}
