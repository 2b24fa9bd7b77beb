package org.rimebook.export.report;

import static org.rimebook.station.Words.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.rimebook.accumulation.DriftLaw;
import org.rimebook.accumulation.Fitted;
import org.rimebook.accumulation.Learnt;
import org.rimebook.accumulation.Rehearsed;

/** How the totals were made: the steps, what was fitted to this season, and published sources. */
final class MethodSection implements ReportSection {

  private static final MathContext DIGITS = new MathContext(4);

  private static final List<String> STEPS =
      List.of(
          "Depth. Each wire's frequency becomes depth by its calibration. Of what has a time, only"
              + " single readings are left out unasked: missing ones, those outside the wire's"
              + " physical range, isolated spikes. The bucket's level is the mean of its wires; a"
              + " wire lost or back makes no step.",
          "Noise and drift. Noise is judged hour by hour from the departures of readings from their"
              + " neighbours, and by wind where it is measured. What moves the level while nothing"
              + " falls (air temperature, departures of wires from each other, a daily wave,"
              + " evaporation) is fitted to dry time and taken off.",
          "Catch. The sky is dry, paused or in one of five wet states; filters of interacting"
              + " models forwards and backwards in time find the wet spells. A spell's total is the"
              + " difference of the levels at its ends. Inside it the level never falls.",
          "Gaps. The bucket keeps its water: across a gap the rise of level is catch if it exceeds"
              + " twice its uncertainty; otherwise nothing fell.",
          "Uncertainty. Standard, k = 1: from the levels before and after wet time, the wander of a"
              + " dry level, what the steps of a counter leave in it, what all catch of the season"
              + " may share, evaporation in wet hours, and rounding. The answer is taken for the"
              + " truth, covered with the season's own noise and wander and estimated anew; what that"
              + " gets wrong, by days and by hours, scales it.",
          "Rounding. Cumulative: hours add up to days, days to months and the season, exactly, in"
              + " the printed digits.",
          "Undercatch. Wind is brought to gauge height by the logarithmic law; catch efficiency"
              + " follows from wind and air temperature, by half hours.",
          "Phase. Where humidity is recorded, by the temperature of a wet or iced bulb: snow with"
              + " less than 5 % of rain, rain with more than 95 %. Else by air temperature: snow"
              + " below −2 °C, rain above 2 °C, mixed between.");

  private static final List<String> SOURCES =
      List.of(
          "ASHRAE Handbook - Fundamentals 2017, chapter 1: wet and iced bulb.",
          "Blom, Bar-Shalom 1988: interacting multiple models (citation from memory).",
          "Goodison, Louie, Yang 1998, WMO/TD-No. 872: wind at gauge height.",
          "Harder, Pomeroy 2013, Hydrol. Process. 27, 1901–1914: share of rain, curve for hours.",
          "JCGM 100:2008 and JCGM 101:2008: expression of uncertainty.",
          "Kim 1994: smoothing of switching models, as named in season.json.",
          "Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21, 3525–3542, eq. 3: catch efficiency"
              + " and phase classes.",
          "Lamb, Persaud, Mouradian 2009, AMS 89th annual meeting: temperature coefficient.",
          "OGC 10-126r4, WaterML 2.0: words for quality.",
          "Smith et al. 2020, Hydrol. Earth Syst. Sci. 24, 4025–4043: how far adjustments miss.");

  private final ReportData data;

  MethodSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Method";
  }

  @Override
  public void write(Flow flow) {
    STEPS.forEach(flow::paragraph);
    flow.heading2("Fitted to this season");
    if (data.result().estimate().learnt().isEmpty()) {
      flow.paragraph("No level was usable; nothing was fitted.");
    } else {
      flow.table(fitted(data.result().estimate().learnt().get()));
    }
    flow.heading2("Published sources");
    SOURCES.forEach(flow::small);
  }

  private static Table fitted(Learnt learnt) {
    Table.Builder table =
        new Table.Builder()
            .words("Parameter")
            .figures("Value")
            .figures("Uncertainty")
            .words("Unit");
    row(table, "Noise of one value, median", learnt.nodeNoiseMm(), "mm");
    row(table, "Quarter-hour variance over independent noise", learnt.noiseCorrelation(), "1");
    row(table, "Whole noise over that not shared", learnt.wholeNoise(), "1");
    row(table, "Wander of a dry level", learnt.dryDriftMmPerSqrtH(), "mm/√h");
    DriftLaw drift = learnt.drift();
    row(table, "Dry three-hour changes drift is fitted to", drift.dryHours(), "1");
    drift
        .temperaturePerDegC()
        .ifPresent(fit -> row(table, "Temperature coefficient of the reading", fit, "1/°C"));
    drift.evaporationMmPerD().ifPresent(fit -> row(table, "Mean fall of a dry level", fit, "mm/d"));
    List<Fitted> wave = drift.waveMmPerH();
    for (int term = 1; term < wave.size(); term++) {
      String name = text("Daily wave, %d a day, %s", (term + 1) / 2, term % 2 == 1 ? "cos" : "sin");
      row(table, name, wave.get(term), "mm/h");
    }
    for (DriftLaw.Departure departure : drift.departures()) {
      row(table, "Level with departure of " + departure.wire(), departure.mmPerMm(), "mm/mm");
    }
    Rehearsed rehearsed = learnt.rehearsed();
    row(table, "Variances of levels in rain multiplied by", rehearsed.withinFactor(), "1");
    row(table, "Variances of dry levels multiplied by", rehearsed.dryFactor(), "1");
    row(table, "What the counters' steps leave in a level", Math.sqrt(learnt.counterMm2()), "mm");
    row(table, "Uncertainty all catch has in common", learnt.commonShare(), "share");
    return table.done();
  }

  private static void row(Table.Builder table, String name, double value, String unit) {
    table.row(name, digits(value), "", unit);
  }

  private static void row(Table.Builder table, String name, Fitted fit, String unit) {
    table.row(name, digits(fit.value()), digits(fit.standardUncertainty()), unit);
  }

  /** Four figures, as in season.json. */
  private static String digits(double value) {
    return new BigDecimal(value).round(DIGITS).toString().replace('-', '−');
  }
}
