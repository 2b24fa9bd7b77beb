package org.rimebook.desk.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.export.leaflet.Leaflet;
import org.rimebook.export.leaflet.TemperatureLeaflet;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;
import org.rimebook.upkeep.StoredWords;

/** What the air temperature does to the wires: as learnt, stated by hand, or left alone. */
public final class TemperatureForm extends BenchForm {

  /** Where the coefficient comes from. */
  public enum Source {
    LEARNT("learnt from dry spells"),
    STATED("stated"),
    OFF("none: nothing is taken off");

    private final String words;

    Source(String words) {
      this.words = words;
    }

    /** Its name on screen. */
    public String words() {
      return words;
    }
  }

  /** Stands for all wires. */
  public static final String ALL = "all wires";

  private static final double PPM = 1e6;

  private final List<String> wires;
  private final Chosen<String> wire;
  private final Chosen<Source> source;

  TemperatureForm(StationSheet sheet, Runnable changed) {
    super(sheet.utcOffset(), changed);
    this.wires = sheet.wires().stream().map(Wire::name).toList();
    this.wire = new Chosen<>(ALL, this::changed);
    this.source = new Chosen<>(Source.LEARNT, this::changed);
  }

  /** What a coefficient can be for. */
  public List<String> choices() {
    List<String> choices = new ArrayList<>(List.of(ALL));
    choices.addAll(wires);
    return choices;
  }

  /** The wire, or {@link #ALL}. */
  public String wire() {
    return wire.get();
  }

  /** Chooses a wire. */
  public void wire(String chosen) {
    wire.set(chosen);
  }

  /** Where it comes from. */
  public Source source() {
    return source.get();
  }

  /** Chooses where it comes from. */
  public void source(Source chosen) {
    source.set(chosen);
  }

  @Override
  public List<BenchField> fields() {
    return source.get() == Source.STATED
        ? List.of(BenchField.PER_DEG_C, BenchField.INITIALS)
        : List.of(BenchField.INITIALS);
  }

  @Override
  public List<String> cautions() {
    return List.of();
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> fault = firstFault();
    if (fault.isPresent() || now.settled().isEmpty()) {
      return Preparation.not(fault.orElse(ChargeForm.UNSETTLED));
    }
    SeasonResult result = now.settled().get();
    String initials = text(BenchField.INITIALS).strip();
    SheetWriting.Stated stated =
        new SheetWriting.Stated(wire.get().equals(ALL) ? wires : List.of(wire.get()), perDegC());
    return Preparation.of(
        progress -> {
          Leaflet leaflet = TemperatureLeaflet.of(result);
          if (stated.in(now.sheet())) {
            return new Outcome(leaflet, Optional.empty(), "The station sheet has it so.");
          }
          Optional<String> obstacle = Signature.missing(now, initials);
          return new Outcome(
              leaflet,
              obstacle.isPresent() ? Optional.empty() : Optional.of(fact(stated, initials)),
              obstacle.orElse(""));
        });
  }

  private OptionalDouble perDegC() {
    return switch (source.get()) {
      case LEARNT -> OptionalDouble.empty();
      case OFF -> OptionalDouble.of(0);
      case STATED -> OptionalDouble.of(checked(BenchField.PER_DEG_C) / PPM);
    };
  }

  private static Fact fact(SheetWriting.Stated stated, String initials) {
    String words = StoredWords.temperature(stated.wires(), stated.perDegC());
    return new Fact.OfSheet(
        stated,
        Fact.OfNotebook.remark(Optional.empty(), words, initials, ""),
        "Write into "
            + Season.STATION_FILE
            + "?\n\n"
            + words
            + "\n\nAll totals follow it. It can be put back in the same way.",
        "Stored in " + Season.STATION_FILE + ": " + words);
  }
}
