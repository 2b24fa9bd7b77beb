package org.rimebook.desk.model.bench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.export.leaflet.VisitDoneLeaflet;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.station.Gauge;
import org.rimebook.station.Interval;
import org.rimebook.upkeep.Caution;

/** What was written down at a visit, to go into the notebook as one entry. */
public final class VisitForm extends BenchForm {

  private final PouredForm poured;
  private final Gauge gauge;
  private final Set<VisitAction> actions = EnumSet.noneOf(VisitAction.class);

  VisitForm(PouredForm poured, Gauge gauge, Runnable changed) {
    super(poured.offset(), changed);
    this.poured = poured;
    this.gauge = gauge;
  }

  @Override
  public List<BenchField> fields() {
    return List.of(
        BenchField.ARRIVED,
        BenchField.LEFT,
        BenchField.ANTIFREEZE,
        BenchField.OIL,
        BenchField.LEVEL_BEFORE,
        BenchField.LEVEL_AFTER,
        BenchField.REMARKS,
        BenchField.INITIALS);
  }

  /** Whether something was done. */
  public boolean done(VisitAction action) {
    return actions.contains(action);
  }

  /** Says that something was done, or wasn't. */
  public void done(VisitAction action, boolean was) {
    if (was ? actions.add(action) : actions.remove(action)) {
      changed();
    }
  }

  @Override
  public Optional<String> fault(BenchField field) {
    Optional<String> fault = super.fault(field);
    boolean reversed =
        field == BenchField.LEFT
            && fault.isEmpty()
            && time(BenchField.ARRIVED)
                .filter(arrived -> !arrived.isBefore(time(field).orElseThrow()))
                .isPresent();
    return reversed ? Optional.of("One leaves after one arrived") : fault;
  }

  @Override
  public List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    if (number(BenchField.ANTIFREEZE).orElse(0) > 0 || done(VisitAction.ANTIFREEZE_ADDED)) {
      cautions.addAll(
          poured
              .antifreeze()
              .map(Caution::charge)
              .orElse(
                  List.of(
                      "Antifreeze: read its data sheet, wear gloves and eye protection, and let"
                          + " nothing go on the ground or into a drain.")));
    }
    if (done(VisitAction.EMPTIED)) {
      cautions.addAll(Caution.lifting(number(BenchField.LEVEL_BEFORE).orElse(0), gauge));
    }
    if (done(VisitAction.CHECK_WEIGHTS)) {
      cautions.addAll(Caution.weights());
    }
    return cautions;
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> fault = firstFault();
    if (fault.isPresent()) {
      return Preparation.not(fault.get());
    }
    Interval at = new Interval(checkedMs(BenchField.ARRIVED), checkedMs(BenchField.LEFT));
    Entry.ServiceVisit visit =
        new Entry.ServiceVisit(
            new Entry.Header("bench", "", "", note()),
            at,
            List.copyOf(actions),
            number(BenchField.ANTIFREEZE),
            number(BenchField.OIL));
    String initials = text(BenchField.INITIALS).strip();
    List<String> cautions = cautions();
    return Preparation.of(
        progress -> {
          Optional<String> obstacle =
              overlap(now.season(), at).or(() -> Signature.missing(now, initials));
          return new Outcome(
              VisitDoneLeaflet.of(visit, cautions, now.sheet()),
              obstacle.isPresent() ? Optional.empty() : Optional.of(fact(visit, initials)),
              obstacle.orElse(beside(now.season().record(), at)));
        });
  }

  private Fact fact(Entry.ServiceVisit visit, String initials) {
    return new Fact.OfNotebook(
        visit,
        initials,
        "The visit of "
            + StationTime.words(visit.interval().from(), offset())
            + " is in the notebook; Ctrl+Z takes it back");
  }

  private Optional<String> overlap(Season season, Interval at) {
    return season.notebook().inForce().stream()
        .filter(Entry.ServiceVisit.class::isInstance)
        .map(entry -> ((Entry.ServiceVisit) entry).interval())
        .filter(at::overlaps)
        .findFirst()
        .map(
            there ->
                "The notebook has a visit from "
                    + StationTime.words(there.from(), offset())
                    + " to "
                    + StationTime.words(there.to(), offset())
                    + ", which overlaps this one: change or withdraw that entry, or enter other"
                    + " times.");
  }

  private static String beside(SeasonRecord record, Interval at) {
    boolean outside =
        at.toMs() <= record.stampMs(0) || at.fromMs() > record.stampMs(record.size() - 1);
    return outside ? "The record has no readings at that time: are the times right?" : "";
  }

  private String note() {
    List<String> parts = new ArrayList<>();
    level("Level before", BenchField.LEVEL_BEFORE).ifPresent(parts::add);
    level("Level after", BenchField.LEVEL_AFTER).ifPresent(parts::add);
    if (!text(BenchField.REMARKS).isBlank()) {
      parts.add(text(BenchField.REMARKS).strip());
    }
    return String.join(" ", parts);
  }

  private Optional<String> level(String words, BenchField field) {
    OptionalDouble mm = number(field);
    return mm.isPresent()
        ? Optional.of(words + " as written down: " + EntryWords.number(mm.getAsDouble()) + " mm.")
        : Optional.empty();
  }
}
