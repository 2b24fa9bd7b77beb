package org.rimebook.desk.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimebook.findings.Check;
import org.rimebook.findings.Checks;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/** What findings are called, and what they propose. */
public final class FindingWords {

  /** Strengths from here on are called strong, fair, weak; own choice. */
  private static final double[] FROM = {0.75, 0.5, 0.25};

  private static final String[] STRENGTHS = {"strong", "fair", "weak", "faint"};

  private FindingWords() {}

  /** What it is, with a capital. */
  public static String kind(Finding finding) {
    String words = finding.kind().words();
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** What it is about. */
  public static String subject(Finding finding) {
    List<String> wires = finding.wires();
    return switch (wires.size()) {
      case 0 -> "the bucket as a whole";
      case 1 -> "wire " + wires.get(0);
      default -> "wires " + String.join(", ", wires);
    };
  }

  /** How many of four marks its strength is worth, 1 to 4. */
  public static int marks(Finding finding) {
    int rank = 0;
    while (rank < FROM.length && finding.strength() < FROM[rank]) {
      rank++;
    }
    return STRENGTHS.length - rank;
  }

  /** Its strength in a word. */
  public static String strength(Finding finding) {
    return STRENGTHS[STRENGTHS.length - marks(finding)];
  }

  /** The entry it proposes: kind, particulars, and its span where that is another. */
  public static String proposal(Finding finding, EntryTimes times) {
    Entry entry = finding.proposal();
    String particulars = EntryWords.particulars(entry);
    Optional<Interval> span = entry.span().filter(own -> !own.equals(finding.span()));
    return EntryWords.kind(entry).toLowerCase(Locale.ROOT)
        + (particulars.isEmpty() ? "" : ": " + particulars)
        + span.map(own -> ", " + times.span(own)).orElse("");
  }

  /** What its proposal does to the totals, in a few words. */
  public static String effect(Finding finding) {
    return MarkKind.of(finding.proposal()).map(MarkKind::effect).orElse("");
  }

  /** Where it is and why it looks wrong, in a line. */
  public static String line(Finding finding, EntryTimes times) {
    return kind(finding)
        + ", "
        + times.span(finding.span())
        + ", "
        + subject(finding)
        + ". "
        + finding.reason();
  }

  /** How its check finds it and where the method comes from. */
  public static String method(Finding finding) {
    return Checks.all().stream()
        .filter(check -> check.kind() == finding.kind())
        .findFirst()
        .map(Check::method)
        .orElse("");
  }
}
