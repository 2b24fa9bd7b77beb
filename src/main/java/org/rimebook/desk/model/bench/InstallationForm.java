package org.rimebook.desk.model.bench;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.export.leaflet.InstallationLeaflet;
import org.rimebook.station.Interval;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.InstallationCheck;
import org.rimebook.upkeep.Steps;

/** A gauge just set up, checked by a few minutes of its readings at rest. */
public final class InstallationForm extends BenchForm {

  /** A time longer than this isn't one at rest, and isn't proposed; own choice. */
  private static final long LONGEST_MS = 24 * 3_600_000L;

  private final Set<Integer> done = new TreeSet<>();
  private boolean timesTyped;

  InstallationForm(ZoneOffset offset, Runnable changed) {
    super(offset, changed);
  }

  @Override
  public List<BenchField> fields() {
    return List.of(
        BenchField.FROM,
        BenchField.TO,
        BenchField.EXPECTED,
        BenchField.TAPS_FROM,
        BenchField.TAPS_TO,
        BenchField.INITIALS);
  }

  /** The steps of setting a gauge up. */
  public List<String> steps() {
    return Steps.installation();
  }

  /** Whether a step is ticked, counted from 0. */
  public boolean done(int step) {
    return done.contains(step);
  }

  /** Ticks a step, or takes the tick back. */
  public void done(int step, boolean ticked) {
    if (ticked ? done.add(step) : done.remove(step)) {
      changed();
    }
  }

  @Override
  public void type(BenchField field, String text) {
    if ((field == BenchField.FROM || field == BenchField.TO) && !text.equals(text(field))) {
      timesTyped = true;
    }
    super.type(field, text);
  }

  /** Proposes a time, unless one was typed or it is longer than a gauge is watched at rest. */
  void propose(Interval time) {
    if (!timesTyped && time.lengthMs() <= LONGEST_MS) {
      fill(BenchField.FROM, StationTime.words(time.from(), offset()));
      fill(BenchField.TO, StationTime.words(roundedUp(time.to()), offset()));
    }
  }

  /** Times are written to the minute; what is proposed loses no reading by it. */
  private static Instant roundedUp(Instant at) {
    long ms = at.toEpochMilli();
    return Instant.ofEpochMilli(-Math.floorDiv(-ms, 60_000L) * 60_000L);
  }

  @Override
  public Optional<String> fault(BenchField field) {
    return super.fault(field)
        .or(
            () ->
                switch (field) {
                  case TO -> after(field, BenchField.FROM, "From");
                  case TAPS_FROM -> tapsFault();
                  case TAPS_TO -> after(field, BenchField.TAPS_FROM, "Taps begin");
                  default -> Optional.empty();
                });
  }

  private Optional<String> after(BenchField field, BenchField first, String name) {
    Optional<Instant> end = time(field);
    return end.isPresent() && time(first).filter(f -> !f.isBefore(end.get())).isPresent()
        ? Optional.of("It comes after \"" + name + "\"")
        : Optional.empty();
  }

  private Optional<String> tapsFault() {
    Optional<Instant> begin = time(BenchField.TAPS_FROM);
    if (begin.isPresent() != time(BenchField.TAPS_TO).isPresent()) {
      return Optional.of("Enter both, beginning and end, or neither");
    }
    return begin.isPresent() && time(BenchField.TO).filter(begin.get()::isBefore).isPresent()
        ? Optional.of("The taps come after the time at rest")
        : Optional.empty();
  }

  @Override
  public List<String> cautions() {
    return Caution.site();
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> fault = firstFault();
    if (fault.isPresent()) {
      return Preparation.not(fault.get());
    }
    Interval at = new Interval(checkedMs(BenchField.FROM), checkedMs(BenchField.TO));
    Optional<Interval> taps =
        time(BenchField.TAPS_FROM).map(f -> Interval.of(f, time(BenchField.TAPS_TO).orElseThrow()));
    double expectedMm = checked(BenchField.EXPECTED);
    Set<Integer> ticked = Set.copyOf(done);
    String initials = text(BenchField.INITIALS).strip();
    return Preparation.of(
        progress -> {
          InstallationCheck check = InstallationCheck.of(now.season(), at, expectedMm, taps);
          String note = note(check, new TreeSet<>(ticked));
          Fact.OfNotebook fact = fact(at, note, initials);
          Optional<String> obstacle =
              fact.isIn(now.season())
                  ? Optional.of("The notebook has this outcome.")
                  : Signature.missing(now, initials);
          return new Outcome(
              InstallationLeaflet.of(check, now.sheet(), ticked),
              obstacle.isPresent() ? Optional.empty() : Optional.of(fact),
              obstacle.orElse(""));
        });
  }

  private Fact.OfNotebook fact(Interval at, String note, String initials) {
    return Fact.OfNotebook.remark(
        Optional.of(at),
        note,
        initials,
        "The outcome is in the notebook as a remark of "
            + StationTime.words(at.from(), offset())
            + "; Ctrl+Z takes it back");
  }

  private static String note(InstallationCheck check, Set<Integer> ticked) {
    List<String> steps = Steps.installation();
    String left =
        IntStream.range(0, steps.size())
            .filter(step -> !ticked.contains(step))
            .mapToObj(steps::get)
            .collect(Collectors.joining(" "));
    return check.words()
        + " Steps ticked: "
        + ticked.size()
        + " of "
        + steps.size()
        + "."
        + (left.isEmpty() || ticked.isEmpty() ? "" : " Not ticked: " + left);
  }
}
