package org.rimebook.command;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryWords;
import org.rimebook.station.StationSheet;

/** Findings for a terminal: what, where, how sure, why, and what is proposed. */
final class FindingLines {

  private static final int WIDTH = 100;
  private static final String MARGIN = "    ";

  private final LabelledLines times;
  private final List<String> lines = new ArrayList<>();

  private FindingLines(StationSheet sheet) {
    times = new LabelledLines(sheet.utcOffset());
  }

  static List<String> of(Collection<Finding> findings, StationSheet sheet) {
    FindingLines all = new FindingLines(sheet);
    all.lines.add(
        sheet.name()
            + ": "
            + (findings.isEmpty()
                ? "nothing is left to decide"
                : counted(findings.size(), "finding") + " to decide"));
    findings.forEach(all::add);
    return all.lines;
  }

  private void add(Finding finding) {
    String wires = finding.wires().isEmpty() ? "" : " (" + String.join(", ", finding.wires()) + ")";
    lines.add("");
    lines.add(times.span(finding.span()));
    wrap(text("%s%s, strength %.2f", finding.kind().words(), wires, finding.strength()));
    wrap(finding.reason());
    wrap("proposes: " + proposal(finding.proposal()));
    finding
        .doubted()
        .ifPresent(
            doubted ->
                wrap(
                    doubted.equals(finding.span())
                        ? "totals inside are suspect until decided"
                        : "totals are suspect until decided from " + times.span(doubted)));
    wrap("id: " + finding.id());
  }

  private String proposal(Entry entry) {
    String about = entry.span().map(span -> " over " + times.span(span)).orElse("");
    String particulars = EntryWords.particulars(entry);
    String note = entry.header().note();
    return entry.kind()
        + about
        + (particulars.isEmpty() ? "" : " (" + particulars + ")")
        + (note.isEmpty() ? "" : ": " + note);
  }

  private void wrap(String words) {
    StringBuilder line = new StringBuilder(MARGIN);
    for (String word : words.split(" ")) {
      if (line.length() + word.length() > WIDTH && line.length() > MARGIN.length()) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(MARGIN);
      }
      line.append(word).append(' ');
    }
    lines.add(line.toString().stripTrailing());
  }
}
