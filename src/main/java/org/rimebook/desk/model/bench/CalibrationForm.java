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
import org.rimebook.export.leaflet.Leaflet;
import org.rimebook.export.leaflet.NewSheetLeaflet;
import org.rimebook.season.Season;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.LoadReading;
import org.rimebook.upkeep.StoredWords;
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
      "One or two weights check the wire; three or more, spread over the range, give a calibration.";

  private final List<String> wires;
  private final Loads loads = new Loads(this::changed);
  private final Chosen<String> wire;
  private final Chosen<Source> source;

  CalibrationForm(StationSheet sheet, Runnable changed) {
    super(sheet.utcOffset(), changed);
    this.wires = sheet.wires().stream().map(Wire::name).toList();
    this.wire = new Chosen<>(wires.get(0), this::changed);
    this.source = new Chosen<>(Source.WEIGHTS, this::changed);
  }

  /** Names of the wires, as in the station sheet. */
  public List<String> wires() {
    return wires;
  }

  /** The wire. */
  public String wire() {
    return wire.get();
  }

  /** Chooses a wire. */
  public void wire(String chosen) {
    wire.set(chosen);
  }

  /** Where the calibration comes from. */
  public Source source() {
    return source.get();
  }

  /** Chooses where it comes from. */
  public void source(Source chosen) {
    source.set(chosen);
  }

  /** The check weights. */
  public Loads loads() {
    return loads;
  }

  @Override
  public List<BenchField> fields() {
    return switch (source.get()) {
      case WEIGHTS -> List.of(BenchField.F0, BenchField.VALID_FROM, BenchField.INITIALS);
      case WATER ->
          List.of(
              BenchField.WATER_DEG_C, BenchField.F0, BenchField.VALID_FROM, BenchField.INITIALS);
      case SHEET ->
          List.of(
              BenchField.SHEET_A,
              BenchField.SHEET_B,
              BenchField.SHEET_F0,
              BenchField.VALID_FROM,
              BenchField.INITIALS);
    };
  }

  @Override
  public List<String> cautions() {
    return source.get() == Source.SHEET ? List.of() : Caution.weights();
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> fault =
        source.get() == Source.SHEET ? firstFault() : firstFault().or(loads::firstFault);
    if (fault.isPresent()) {
      return Preparation.not(fault.get());
    }
    Wire of = wireOf(now.sheet());
    Optional<Instant> from = time(BenchField.VALID_FROM);
    Asked asked = new Asked(from, text(BenchField.INITIALS).strip());
    if (source.get() == Source.SHEET) {
      Calibration given =
          new Calibration(
              from,
              checked(BenchField.SHEET_A),
              checked(BenchField.SHEET_B),
              checked(BenchField.SHEET_F0));
      return Preparation.of(progress -> sheet(now, of, given, asked));
    }
    List<LoadReading> readings =
        loads.readings(
            source.get() == Source.WATER ? number(BenchField.WATER_DEG_C) : OptionalDouble.empty());
    if (readings.stream().noneMatch(reading -> reading.massKg() > 0)) {
      return Preparation.not("Enter at least one weight with the frequency read under it");
    }
    double areaCm2 = now.sheet().gauge().orificeAreaCm2();
    Weighing weighing = new Weighing(readings, number(BenchField.F0), areaCm2);
    return Preparation.of(progress -> weighed(now, of, weighing, asked));
  }

  private Wire wireOf(StationSheet sheet) {
    return sheet.wires().stream()
        .filter(w -> w.name().equals(wire.get()))
        .findFirst()
        .orElseThrow();
  }

  private static Calibration last(Wire of) {
    return of.calibrations().get(of.calibrations().size() - 1);
  }

  private static Outcome weighed(Moment now, Wire of, Weighing weighing, Asked asked) {
    StationSheet sheet = now.sheet();
    CalibrationCurve curve = CalibrationCurve.of(last(of));
    Leaflet leaflet = CalibrationLeaflet.of(of.name(), weighing, curve, sheet.name());
    Optional<WeightFit> fit = weighing.fit();
    if (fit.isPresent()) {
      return storing(leaflet, now, of, fit.get().calibration(asked.from()), asked);
    }
    String note = StoredWords.checked(of.name(), weighing.checks(curve));
    Fact.OfNotebook check =
        Fact.OfNotebook.remark(
            Optional.empty(),
            note,
            asked.initials(),
            "The check is in the notebook as a remark; Ctrl+Z takes it back");
    Optional<String> obstacle =
        check.isIn(now.season())
            ? Optional.of("The notebook has this check.")
            : Signature.missing(now, asked.initials());
    return new Outcome(
        leaflet,
        obstacle.isPresent() ? Optional.empty() : Optional.of(check),
        obstacle.map(why -> why + " ").orElse("") + TOO_FEW);
  }

  private static Outcome sheet(Moment now, Wire of, Calibration given, Asked asked) {
    CalibrationCurve curve = CalibrationCurve.of(given);
    CalibrationCurve before = CalibrationCurve.of(last(of));
    return storing(
        NewSheetLeaflet.of(of.name(), curve, before, now.sheet()), now, of, given, asked);
  }

  /** What is asked beside the numbers. */
  private record Asked(Optional<Instant> from, String initials) {}

  private static Outcome storing(
      Leaflet leaflet, Moment now, Wire of, Calibration made, Asked asked) {
    List<String> alerts = new ArrayList<>();
    try {
      StationSheet only =
          now.sheet()
              .withWires(
                  List.of(new Wire(of.name(), of.frequencyColumn(), of.lead(), List.of(made))));
      alerts.addAll(CalibrationCheck.of(only, Season.STATION_FILE).alerts());
    } catch (InputException e) {
      String why = e.problems().stream().map(Problem::what).findFirst().orElse("");
      return new Outcome(leaflet, Optional.empty(), "Can't be stored: " + why + ".");
    }
    String look = alerts.isEmpty() ? "" : "Worth a look: " + String.join("; ", alerts) + ". ";
    Optional<String> obstacle =
        obstacle(of, made).or(() -> Signature.missing(now, asked.initials()));
    return new Outcome(
        leaflet,
        obstacle.isPresent()
            ? Optional.empty()
            : Optional.of(fact(now.sheet(), of, made, asked.initials(), look)),
        (look + obstacle.orElse("")).strip());
  }

  private static Optional<String> obstacle(Wire of, Calibration made) {
    if (of.calibrations().contains(made)) {
      return Optional.of("The station sheet has this calibration.");
    }
    if (made.from().isEmpty()) {
      return Optional.of("To store it, enter from when it holds.");
    }
    boolean late = last(of).from().isEmpty() || made.from().get().isAfter(last(of).from().get());
    return late
        ? Optional.empty()
        : Optional.of(
            "The wire has a calibration from then or later on: enter a later time, or write one"
                + " between others into the file by hand.");
  }

  private static Fact fact(
      StationSheet sheet, Wire of, Calibration made, String initials, String look) {
    String from = StationTime.words(made.from().orElseThrow(), sheet.utcOffset());
    String wire = "wire " + of.name() + " from " + from + " (UTC" + sheet.utcOffset() + ") on";
    return new Fact.OfSheet(
        new SheetWriting.Added(of.name(), made),
        Fact.OfNotebook.remark(
            Optional.empty(),
            StoredWords.calibration(of.name(), made, sheet.utcOffset()),
            initials,
            ""),
        "Write this calibration of "
            + wire
            + " into "
            + Season.STATION_FILE
            + "?\n\n"
            + StoredWords.coefficients(made)
            + "\ninstead of "
            + StoredWords.coefficients(last(of))
            + "\n\n"
            + look
            + "Totals from then on follow it. It can't be undone here.",
        "Stored in " + Season.STATION_FILE + ": " + wire + ", " + StoredWords.coefficients(made));
  }
}
