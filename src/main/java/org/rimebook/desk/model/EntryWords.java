package org.rimebook.desk.model;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;

/** What entries and steps are called, and what entries do. */
public final class EntryWords {

  private EntryWords() {}

  /** Name of an entry's kind; as written when this version doesn't know it. */
  public static String kind(Entry entry) {
    return MarkKind.of(entry).map(MarkKind::words).orElseGet(() -> capital(spaced(entry.kind())));
  }

  /** What an entry does beyond its kind: wires, reason, actions, amounts; may be empty. */
  public static String particulars(Entry entry) {
    if (entry instanceof Entry.BadInterval bad) {
      return wires(bad) + ", " + reason(bad.reason());
    } else if (entry instanceof Entry.ServiceVisit visit) {
      return visit(visit);
    } else if (entry instanceof Entry.Estimate estimate) {
      return number(estimate.totalMm()) + " mm, from " + estimate.source();
    } else if (entry instanceof Entry.Dismissal) {
      return "a finding isn't raised again";
    } else if (entry instanceof Entry.SignOff signOff) {
      return "totals defended with " + counted(signOff.entries().size(), "entry", "entries");
    } else if (entry instanceof Entry.Unknown) {
      return "a kind this version doesn't know: kept, without effect";
    }
    return "";
  }

  /** Name of a reason. */
  public static String reason(BadReason reason) {
    return spaced(reason.code());
  }

  /** Name of an action. */
  public static String action(VisitAction action) {
    return spaced(action.code());
  }

  /** An amount as the analyst would write it: as few decimals as say it. */
  public static String number(double amount) {
    return BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString();
  }

  /** Name of a step, for example "change of bad interval, 12 Jan 05:00". */
  public static String step(Steps.Step step, EntryTimes times) {
    List<Entry> marks =
        step.marks().stream().filter(entry -> !(entry instanceof Entry.Withdrawal)).toList();
    int withdrawn = step.marks().size() - marks.size();
    if (marks.isEmpty()) {
      return "withdrawal of " + counted(withdrawn, "entry", "entries");
    }
    String what = (withdrawn > 0 ? "change of " : "") + kind(marks.get(0)).toLowerCase(Locale.ROOT);
    List<Entry> more =
        marks.stream().skip(1).filter(entry -> !(entry instanceof Entry.Dismissal)).toList();
    if (!more.isEmpty()) {
      return what + " and " + more.size() + " more";
    }
    Optional<Interval> span = marks.get(0).span();
    return what + span.map(s -> ", " + times.dayAndTime(s.fromMs())).orElse("");
  }

  private static String wires(Entry.BadInterval bad) {
    return bad.wires().isEmpty()
        ? "all wires"
        : bad.wires().stream().sorted().collect(Collectors.joining(", "));
  }

  private static String visit(Entry.ServiceVisit visit) {
    List<String> parts = new ArrayList<>();
    visit.actions().forEach(action -> parts.add(action(action)));
    litres(visit.antifreezeL(), "of antifreeze").ifPresent(parts::add);
    litres(visit.oilL(), "of oil").ifPresent(parts::add);
    return String.join(", ", parts);
  }

  private static Optional<String> litres(OptionalDouble amount, String what) {
    return amount.isPresent()
        ? Optional.of(number(amount.getAsDouble()) + " L " + what)
        : Optional.empty();
  }

  private static String counted(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  private static String spaced(String code) {
    return code.replace('-', ' ');
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
