package org.rimebook.season.why;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.rimebook.accumulation.DriftLaw;
import org.rimebook.accumulation.DriftTaken;
import org.rimebook.accumulation.Estimate;
import org.rimebook.accumulation.Learnt;
import org.rimebook.station.Interval;

/** What was judged noise and what drift in a span of time, and by what was learnt. */
final class Judgement {

  private final Estimate estimate;
  private final Interval span;

  Judgement(Estimate estimate, Interval span) {
    this.estimate = estimate;
    this.span = span;
  }

  List<Section> sections() {
    if (estimate.learnt().isEmpty()) {
      return List.of(
          Section.of("noise", new Line.Words("not known: the season has no usable level")));
    }
    Learnt learnt = estimate.learnt().get();
    if (learnt.drift().evaporationMmPerD().isEmpty()) {
      String words =
          "none taken off: too little dry time to learn it from, "
              + counted(learnt.drift().dryHours(), "hour");
      return List.of(noise(learnt), Section.of("drift", new Line.Words(words)));
    }
    return List.of(noise(learnt), drift(learnt.drift()));
  }

  private Section noise(Learnt learnt) {
    OptionalDouble noise = estimate.judgement().noiseMm(span.fromMs(), span.toMs());
    int nodes = estimate.judgement().nodes(span.fromMs(), span.toMs());
    String judged =
        noise.isPresent()
            ? text(
                "%.3f mm a level, of %s of readings within a minute",
                noise.getAsDouble(), counted(nodes, "mean"))
            : "no level inside; the ends are judged by their neighbours";
    String correlation =
        text(
            "variance times %.2f over a quarter of an hour, as neighbours share noise",
            learnt.noiseCorrelation());
    return Section.of("noise", new Line.Words(judged), new Line.Words(correlation));
  }

  private Section drift(DriftLaw law) {
    DriftTaken taken = estimate.judgement().taken(span.fromMs(), span.toMs());
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line.Words(
            text("%+.3f mm of the change of level isn't catch, as learnt from", taken.totalMm())
                + text(" %s:", counted(law.dryHours(), "dry hour"))));
    law.temperaturePerDegC()
        .ifPresent(
            c ->
                lines.add(
                    part(
                        taken.temperatureMm(),
                        text(
                            "temperature: %+.2e of the load a degree, u %.1e",
                            c.value(), c.standardUncertainty()))));
    if (!law.departures().isEmpty()) {
      lines.add(part(taken.departuresMm(), "the wires' departures from their mean:"));
      law.departures().forEach(departure -> lines.add(detail(departure)));
    }
    law.evaporationMmPerD()
        .ifPresent(
            e ->
                lines.add(
                    part(
                        taken.waveMm(),
                        text(
                            "daily wave: evaporation of %.3f mm a day, u %.3f; half while wet",
                            e.value(), e.standardUncertainty()))));
    return new Section("drift", lines);
  }

  private static Line detail(DriftLaw.Departure departure) {
    return new Line.Detail(
        text(
            "%s %+.3f mm a mm, u %.3f",
            departure.wire(),
            departure.mmPerMm().value(),
            departure.mmPerMm().standardUncertainty()));
  }

  private static Line part(double mm, String words) {
    return new Line.Part(text("%+.3f mm", mm), words);
  }
}
