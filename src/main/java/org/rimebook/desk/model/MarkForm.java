package org.rimebook.desk.model;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;

/** What is being filled in for an entry: its fields as typed, and what is wrong with them. */
public final class MarkForm {

  /** A field of words or figures. */
  public enum Field {
    ANTIFREEZE("antifreeze [L]"),
    OIL("oil [L]"),
    TOTAL("total [mm]"),
    SOURCE("source"),
    NOTE("note"),
    INITIALS("your initials");

    private final String words;

    Field(String words) {
      this.words = words;
    }

    /** Its label on screen. */
    public String words() {
      return words;
    }
  }

  private final MarkKind kind;
  private final Map<Field, String> texts = new EnumMap<>(Field.class);
  private final Set<VisitAction> actions = EnumSet.noneOf(VisitAction.class);
  private BadReason reason = BadReason.WIRE_FAULT;
  private boolean reasoned;

  /**
   * An empty form.
   *
   * @param kind of the entry
   * @param unsigned whether initials have to be given
   */
  public MarkForm(MarkKind kind, boolean unsigned) {
    this.kind = kind;
    if (kind == MarkKind.SERVICE_VISIT) {
      texts.put(Field.ANTIFREEZE, "");
      texts.put(Field.OIL, "");
    } else if (kind == MarkKind.ESTIMATE) {
      texts.put(Field.TOTAL, "");
      texts.put(Field.SOURCE, "");
    }
    texts.put(Field.NOTE, "");
    if (unsigned) {
      texts.put(Field.INITIALS, "");
    }
  }

  /** A form that asks for initials alone. */
  static MarkForm signature() {
    MarkForm form = new MarkForm(MarkKind.REMARK, true);
    form.texts.remove(Field.NOTE);
    return form;
  }

  /** A form that asks for a reason. */
  static MarkForm reasoned(boolean unsigned) {
    MarkForm form = new MarkForm(MarkKind.REMARK, unsigned);
    form.reasoned = true;
    return form;
  }

  /** A form filled in with an entry; empty when its kind isn't filled in by hand. */
  public static Optional<MarkForm> of(Entry entry, boolean unsigned) {
    return MarkKind.of(entry).map(kind -> new MarkForm(kind, unsigned).filled(entry));
  }

  private MarkForm filled(Entry entry) {
    texts.put(Field.NOTE, entry.header().note());
    if (entry instanceof Entry.ServiceVisit visit) {
      actions.addAll(visit.actions());
      texts.put(Field.ANTIFREEZE, litres(visit.antifreezeL()));
      texts.put(Field.OIL, litres(visit.oilL()));
    } else if (entry instanceof Entry.BadInterval bad) {
      reason = bad.reason();
    } else if (entry instanceof Entry.Estimate estimate) {
      texts.put(Field.TOTAL, EntryWords.number(estimate.totalMm()));
      texts.put(Field.SOURCE, estimate.source());
    }
    return this;
  }

  /** Kind of the entry. */
  public MarkKind kind() {
    return kind;
  }

  /** The fields of its kind, in the order they are filled in. */
  public List<Field> fields() {
    return List.copyOf(texts.keySet());
  }

  /** A field as typed. */
  public String text(Field field) {
    return texts.getOrDefault(field, "");
  }

  /** Types into a field; nothing when the kind doesn't have it. */
  public void type(Field field, String text) {
    texts.computeIfPresent(field, (same, before) -> text);
  }

  /** Why the readings aren't to be believed. */
  public BadReason reason() {
    return reason;
  }

  /** Chooses why. */
  public void choose(BadReason why) {
    reason = why;
  }

  /** What was done at a visit. */
  public Set<VisitAction> actions() {
    return Set.copyOf(actions);
  }

  /** Says that something was done, or wasn't. */
  public void choose(VisitAction action, boolean done) {
    if (done) {
      actions.add(action);
    } else {
      actions.remove(action);
    }
  }

  /** What is wrong with a field as typed, and what to do; empty when nothing is. */
  public Optional<String> fault(Field field) {
    String text = text(field).strip();
    String wrong =
        switch (field) {
          case ANTIFREEZE, OIL ->
              text.isEmpty() || amount(text).isPresent() ? "" : "litres, 0 or more";
          case TOTAL ->
              text.isEmpty()
                  ? "enter the total in mm"
                  : amount(text).isPresent() ? "" : "millimetres, 0 or more";
          case SOURCE -> text.isEmpty() ? "say where it comes from" : "";
          case INITIALS -> text.isEmpty() ? "entries are signed" : "";
          case NOTE -> reasoned && text.isEmpty() ? "say why" : "";
        };
    return texts.containsKey(field) && !wrong.isEmpty() ? Optional.of(wrong) : Optional.empty();
  }

  /** Whether it can be written. */
  public boolean complete() {
    return fields().stream().allMatch(field -> fault(field).isEmpty());
  }

  /**
   * What to take care of at the gauge. Lifting in pairs is common practice; the antifreeze's own
   * safety data sheet tells about it, whichever is used.
   */
  public List<String> cautions() {
    boolean poured =
        actions.contains(VisitAction.ANTIFREEZE_ADDED)
            || !text(Field.ANTIFREEZE).isBlank() && fault(Field.ANTIFREEZE).isEmpty();
    boolean lifted =
        actions.contains(VisitAction.EMPTIED) || actions.contains(VisitAction.RECHARGED);
    return Stream.of(
            poured
                ? "Antifreeze is toxic: read its safety data sheet, wear gloves and eye protection,"
                    + " and keep to local rules for disposal."
                : "",
            lifted ? "A full bucket is heavy: lift it with two people." : "")
        .filter(line -> !line.isEmpty())
        .toList();
  }

  /**
   * The entry as far as it is filled in; empty when it would mean nothing yet.
   *
   * @param id its id
   * @param span what it is about; only a remark can do without
   * @param wires names of the wires it is about, empty = all
   */
  public Optional<Entry> entry(String id, Optional<Interval> span, Set<String> wires) {
    Entry.Header header = new Entry.Header(id, "", "", text(Field.NOTE).strip());
    if (kind == MarkKind.REMARK) {
      return Optional.of(new Entry.Remark(header, span));
    }
    return span.flatMap(about -> spanning(header, about, wires));
  }

  private Optional<Entry> spanning(Entry.Header header, Interval about, Set<String> wires) {
    return switch (kind) {
      case SERVICE_VISIT ->
          Optional.of(
              new Entry.ServiceVisit(
                  header,
                  about,
                  List.copyOf(actions),
                  amount(text(Field.ANTIFREEZE)),
                  amount(text(Field.OIL))));
      case BAD_INTERVAL -> Optional.of(new Entry.BadInterval(header, about, wires, reason));
      case LATE_CATCH -> Optional.of(new Entry.LateCatch(header, about));
      case DRY_SPELL -> Optional.of(new Entry.DrySpell(header, about));
      case ESTIMATE -> estimate(header, about);
      case REMARK -> Optional.of(new Entry.Remark(header, Optional.of(about)));
    };
  }

  private Optional<Entry> estimate(Entry.Header header, Interval about) {
    OptionalDouble totalMm = amount(text(Field.TOTAL));
    return totalMm.isPresent()
        ? Optional.of(
            new Entry.Estimate(header, about, totalMm.getAsDouble(), text(Field.SOURCE).strip()))
        : Optional.empty();
  }

  /** A number not negative, with a decimal comma or point; empty when it isn't one. */
  private static OptionalDouble amount(String text) {
    String plain = text.strip().replace(',', '.');
    return plain.matches("[0-9]{1,9}(\\.[0-9]{0,9})?|\\.[0-9]{1,9}")
        ? OptionalDouble.of(Double.parseDouble(plain))
        : OptionalDouble.empty();
  }

  private static String litres(OptionalDouble amount) {
    return amount.isPresent() ? EntryWords.number(amount.getAsDouble()) : "";
  }
}
