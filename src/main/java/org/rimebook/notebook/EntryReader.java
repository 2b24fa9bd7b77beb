package org.rimebook.notebook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.station.Interval;
import org.rimebook.station.Members;

/**
 * Makes an entry of one JSON object. What isn't understood is noted; an entry whose meaning is in
 * doubt, by its id, kind, span, wires, total or the entry it names, isn't made.
 */
final class EntryReader {

  private static final Set<String> SPAN = Set.of("from", "to");

  private final Members at;
  private final Entry.Header header;

  private EntryReader(Members at, String id) {
    this.at = at;
    String written = at.requiredText("at", "2025-01-15T10:30:00-07:00");
    if (!written.isEmpty()) {
      at.instant("at");
    }
    this.header =
        new Entry.Header(id, written, at.requiredText("by", "ab"), at.text("note").orElse(""));
  }

  /** The entry, empty when it can't have an effect; notes go where the members collect theirs. */
  static Optional<Entry> read(Members at) {
    String id = at.requiredText("id", "e1");
    String kind = at.requiredText("kind", Entry.Remark.KIND);
    if (id.isEmpty() || kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<Entry> entry = new EntryReader(at, id).ofKind(kind);
    if (entry.isEmpty() || !(entry.get() instanceof Entry.Unknown)) {
      noteUnknownMembers(at);
    }
    return entry;
  }

  private static void noteUnknownMembers(Members at) {
    for (String name : at.untaken()) {
      if (!SPAN.contains(name)) {
        at.problem(name, "isn't a member this version knows", "It is kept and has no effect");
      }
    }
  }

  private Optional<Entry> ofKind(String kind) {
    return switch (kind) {
      case Entry.ServiceVisit.KIND -> visit();
      case Entry.BadInterval.KIND -> badInterval();
      case Entry.LateCatch.KIND -> interval().map(span -> new Entry.LateCatch(header, span));
      case Entry.DrySpell.KIND -> interval().map(span -> new Entry.DrySpell(header, span));
      case Entry.Estimate.KIND -> estimate();
      case Entry.Remark.KIND -> Optional.of(remark());
      case Entry.Dismissal.KIND ->
          required("finding").map(finding -> new Entry.Dismissal(header, finding));
      case Entry.Withdrawal.KIND ->
          required("entry").map(entry -> new Entry.Withdrawal(header, entry));
      case Entry.SignOff.KIND -> signOff();
      default -> {
        at.problem(
            "kind",
            "is \"" + kind + "\", which this version doesn't know",
            "The entry is kept and has no effect");
        yield Optional.of(new Entry.Unknown(header, kind));
      }
    };
  }

  private Optional<Entry> visit() {
    List<VisitAction> actions = new ArrayList<>();
    for (String word : at.texts("actions")) {
      Optional<VisitAction> action = VisitAction.ofCode(word);
      if (action.isEmpty()) {
        at.problem(
            "actions",
            "names \"" + word + "\", which this version doesn't know",
            "Use " + VisitAction.codes());
      }
      action.ifPresent(actions::add);
    }
    OptionalDouble antifreezeL = litres("antifreeze_l");
    OptionalDouble oilL = litres("oil_l");
    return interval().map(span -> new Entry.ServiceVisit(header, span, actions, antifreezeL, oilL));
  }

  private OptionalDouble litres(String name) {
    OptionalDouble litres = at.number(name);
    if (litres.isPresent() && litres.getAsDouble() < 0) {
      at.problem(name, "is " + litres.getAsDouble(), "It is the amount poured in, in litres");
      return OptionalDouble.empty();
    }
    return litres;
  }

  private Optional<Entry> badInterval() {
    String word = at.requiredText("reason", BadReason.WIRE_FAULT.code());
    Optional<BadReason> reason = BadReason.ofCode(word);
    if (reason.isEmpty() && !word.isEmpty()) {
      at.problem("reason", "is \"" + word + "\"", "Taken as other; use " + BadReason.codes());
    }
    Optional<Set<String>> wires = wires();
    Optional<Interval> span = interval();
    return wires.isEmpty() || span.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Entry.BadInterval(header, span.get(), wires.get(), reason.orElse(BadReason.OTHER)));
  }

  /** The wires named, none for all; empty when the member is there and names none. */
  private Optional<Set<String>> wires() {
    boolean named = at.has("wires");
    Set<String> wires = Set.copyOf(at.texts("wires"));
    if (named && wires.isEmpty()) {
      at.problem("wires", "names no wire", "Name them in a list, or leave it out to mean all");
      return Optional.empty();
    }
    return Optional.of(wires);
  }

  private Optional<Entry> estimate() {
    double totalMm = at.requiredNumber("total_mm", "12.5");
    String source = at.requiredText("source", "neighbouring gauge");
    if (totalMm < 0) {
      at.problem("total_mm", "is " + totalMm, "A total isn't negative");
    }
    return interval()
        .filter(span -> totalMm >= 0)
        .map(span -> new Entry.Estimate(header, span, totalMm, source));
  }

  private Entry remark() {
    boolean spans = at.has("from") || at.has("to");
    return new Entry.Remark(header, spans ? interval() : Optional.empty());
  }

  private Optional<Entry> signOff() {
    Optional<String> record = digest("record_sha256");
    Optional<String> station = digest("station_sha256");
    List<String> entries = at.texts("entries");
    return record.isEmpty() || station.isEmpty()
        ? Optional.empty()
        : Optional.of(new Entry.SignOff(header, record.get(), station.get(), entries));
  }

  private Optional<String> digest(String name) {
    return Optional.of(at.requiredText(name, "64 hexadecimal digits"))
        .filter(text -> !text.isEmpty());
  }

  private Optional<String> required(String name) {
    return Optional.of(at.requiredText(name, "e1")).filter(text -> !text.isEmpty());
  }

  private Optional<Interval> interval() {
    Optional<Instant> from = requiredInstant("from");
    Optional<Instant> to = requiredInstant("to");
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().toEpochMilli() >= to.get().toEpochMilli()) {
      at.problem("to", "isn't later than from", "Write the start in from and the end in to");
      return Optional.empty();
    }
    return Optional.of(Interval.of(from.get(), to.get()));
  }

  private Optional<Instant> requiredInstant(String name) {
    if (!at.has(name)) {
      at.requiredText(name, "2025-01-15T10:30:00-07:00");
      return Optional.empty();
    }
    return at.instant(name);
  }
}
