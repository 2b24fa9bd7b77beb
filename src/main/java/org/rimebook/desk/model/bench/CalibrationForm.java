package org.rimebook.desk.model.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.export.leaflet.CalibrationLeaflet;
import org.rimebook.export.leaflet.NewSheetLeaflet;
import org.rimebook.season.Season;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.LoadReading;
import org.rimebook.upkeep.Weighing;
import org.rimebook.upkeep.WeightFit;

/** A wire's calibration: fitted to check weights, or from a sheet that came with the wire. */
public final class CalibrationForm extends BenchForm {

  /** Where the calibration comes from. */
  public enum Source {
    WEIGHTS("check weights (kg)"),
    WATER("water poured in (L)"),
    SHEET("a sheet: A, B, f0");

    private final String words;

    Source(String words) {
      this.words = words;
    }

    /** Its name on screen. */
    public String words() {
      return words;
    }
  }

  private static final String TOO_FEW =
      "One or two weights check the wire. Three or more, spread over the range, give a calibration"
          + " that can be stored.";

  private final List<String> wires;
  private final Loads loads = new Loads(this::changed);
  private String wire;
  private Source source = Source.WEIGHTS;

  CalibrationForm(StationSheet sheet, Runnable changed) {
    super(sheet.utcOffset(), changed);
    this.wires = sheet.wires().stream().map(Wire::name).toList();
    this.wire = wires.get(0);
  }

  /** Names of the wires, as in the station sheet. */
  public List<String> wires() {
    return wires;
  }

  /** The wire. */
  public String wire() {
    return wire;
  }

  /** Chooses a wire. */
  public void wire(String chosen) {
    if (!wire.equals(chosen)) {
      wire = chosen;
      changed();
    }
  }

  /** Where the calibration comes from. */
  public Source source() {
    return source;
  }

  /** Chooses where it comes from. */
  public void source(Source chosen) {
    if (source != chosen) {
      source = chosen;
      changed();
    }
  }

  /** The check weights. */
  public Loads loads() {
    return loads;
  }

  @Override
  public List<BenchField> fields() {
    return switch (source) {
      case WEIGHTS -> List.of(BenchField.F0, BenchField.VALID_FROM);
      case WATER -> List.of(BenchField.WATER_DEG_C, BenchField.F0, BenchField.VALID_FROM);
      case SHEET ->
          List.of(
              BenchField.SHEET_A, BenchField.SHEET_B, BenchField.SHEET_F0, BenchField.VALID_FROM);
    };
  }

  @Override
  public List<String> cautions() {
    return source == Source.SHEET ? List.of() : Caution.weights();
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> fault =
        source == Source.SHEET ? firstFault() : firstFault().or(loads::firstFault);
    if (fault.isPresent()) {
      return Preparation.not(fault.get());
    }
    Wire of = wireOf(now.sheet());
    Optional<Instant> from = time(BenchField.VALID_FROM);
    if (source == Source.SHEET) {
      Calibration given =
          new Calibration(
              from,
              checked(BenchField.SHEET_A),
              checked(BenchField.SHEET_B),
              checked(BenchField.SHEET_F0));
      return Preparation.of(progress -> sheet(now.sheet(), of, given));
    }
    List<LoadReading> readings =
        loads.readings(
            source == Source.WATER ? number(BenchField.WATER_DEG_C) : OptionalDouble.empty());
    if (readings.stream().noneMatch(reading -> reading.massKg() > 0)) {
      return Preparation.not("Enter at least one weight with the frequency read under it");
    }
    double areaCm2 = now.sheet().gauge().orificeAreaCm2();
    Weighing weighing = new Weighing(readings, number(BenchField.F0), areaCm2);
    return Preparation.of(progress -> weighed(now.sheet(), of, weighing, from));
  }

  private Wire wireOf(StationSheet sheet) {
    return sheet.wires().stream().filter(w -> w.name().equals(wire)).findFirst().orElseThrow();
  }

  private static Calibration last(Wire of) {
    return of.calibrations().get(of.calibrations().size() - 1);
  }

  private static Outcome weighed(
      StationSheet sheet, Wire of, Weighing weighing, Optional<Instant> from) {
    var leaflet =
        CalibrationLeaflet.of(of.name(), weighing, CalibrationCurve.of(last(of)), sheet.name());
    Optional<WeightFit> fit = weighing.fit();
    if (fit.isEmpty()) {
      return new Outcome(leaflet, Optional.empty(), TOO_FEW);
    }
    Calibration fitted =
        new Calibration(
            from, fit.get().aCmPerHz(), fit.get().bCmPerHz2(), fit.get().fit().curve().f0Hz());
    Storing storing = storing(sheet, of, fitted);
    return new Outcome(leaflet, storing.fact(), storing.words());
  }

  private static Outcome sheet(StationSheet sheet, Wire of, Calibration given) {
    Storing storing = storing(sheet, of, given);
    return new Outcome(
        NewSheetLeaflet.of(
            of.name(), CalibrationCurve.of(given), CalibrationCurve.of(last(of)), sheet),
        storing.fact(),
        storing.words());
  }

  private record Storing(Optional<Fact> fact, String words) {}

  private static Storing storing(StationSheet sheet, Wire of, Calibration made) {
    List<String> alerts = new ArrayList<>();
    try {
      alerts.addAll(CalibrationCheck.of(only(sheet, of, made), Season.STATION_FILE).alerts());
    } catch (InputException e) {
      String why = e.problems().stream().map(Problem::what).findFirst().orElse("");
      return new Storing(Optional.empty(), "Can't be stored: " + why + ".");
    }
    String look = alerts.isEmpty() ? "" : "Worth a look: " + String.join("; ", alerts) + ". ";
    if (of.calibrations().contains(made)) {
      return new Storing(Optional.empty(), look + "The station sheet has this calibration.");
    }
    if (made.from().isEmpty()) {
      return new Storing(Optional.empty(), look + "To store it, enter from when it holds.");
    }
    if (of.calibrations().stream().anyMatch(c -> c.from().equals(made.from()))) {
      return new Storing(
          Optional.empty(), look + "Another calibration holds from that time: enter another one.");
    }
    return new Storing(Optional.of(fact(sheet, of, made, look)), look.strip());
  }

  private static Fact fact(StationSheet sheet, Wire of, Calibration made, String look) {
    String from = StationTime.words(made.from().orElseThrow(), sheet.utcOffset());
    Calibration before = of.calibrationAt(made.from().orElseThrow().toEpochMilli());
    String wire = "wire " + of.name() + " from " + from + " (UTC" + sheet.utcOffset() + ") on";
    return new Fact.OfSheet(
        of.name(),
        made,
        "Write this calibration of "
            + wire
            + " into "
            + Season.STATION_FILE
            + "?\n\n"
            + numbers(made)
            + "\ninstead of "
            + numbers(before)
            + "\n\n"
            + look
            + "Totals from then on follow it. It can't be undone here.",
        "Stored in " + Season.STATION_FILE + ": " + wire + ", " + numbers(made));
  }

  private static String numbers(Calibration of) {
    return "A "
        + of.aCmPerHz()
        + " cm/Hz, B "
        + of.bCmPerHz2()
        + " cm/Hz², f0 "
        + of.f0Hz()
        + " Hz";
  }

  /** The sheet with nothing but a wire with a calibration, which alone is to be checked. */
  private static StationSheet only(StationSheet sheet, Wire of, Calibration made) {
    return new StationSheet(
        sheet.name(),
        sheet.latitudeDeg(),
        sheet.longitudeDeg(),
        sheet.elevationM(),
        sheet.utcOffset(),
        sheet.dayStartsAt(),
        sheet.gauge(),
        List.of(new Wire(of.name(), of.frequencyColumn(), of.lead(), List.of(made))),
        sheet.layout(),
        sheet.channels());
  }
}
