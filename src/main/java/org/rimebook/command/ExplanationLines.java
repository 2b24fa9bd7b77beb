package org.rimebook.command;

import static org.rimebook.station.Words.text;

import java.time.ZoneOffset;
import java.util.List;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.EntryWords;
import org.rimebook.season.why.Explanation;
import org.rimebook.season.why.Line;
import org.rimebook.season.why.Section;

/** An explanation as lines for a terminal. */
final class ExplanationLines {

  private final LabelledLines lines;

  private ExplanationLines(ZoneOffset offset) {
    this.lines = new LabelledLines(offset);
  }

  static List<String> of(Explanation explanation, ZoneOffset offset) {
    ExplanationLines made = new ExplanationLines(offset);
    made.lines.title(explanation.station() + ", " + made.lines.span(explanation.interval()));
    explanation.sections().forEach(made::add);
    return made.lines.lines();
  }

  private void add(Section section) {
    String label = section.label();
    for (Line line : section.lines()) {
      lines.add(label, words(line));
      label = "";
      if (line instanceof Line.OfEntry entry) {
        lines.add(label, lines.span(entry.span()));
      } else if (line instanceof Line.OfFinding found) {
        lines.add(label, lines.span(found.finding().span()));
        lines.add(label, found.finding().reason());
      }
    }
  }

  private String words(Line line) {
    if (line instanceof Line.Words plain) {
      return plain.words();
    } else if (line instanceof Line.Detail detail) {
      return text("%11s%s", "", detail.words());
    } else if (line instanceof Line.Part part) {
      return part.amount() + "  " + part.words();
    } else if (line instanceof Line.OfWire wire) {
      return text("%-10s %s", wire.wire(), wire.words());
    } else if (line instanceof Line.OfSpan about) {
      return about.before() + lines.span(about.span()) + about.after();
    } else if (line instanceof Line.OfPiece piece) {
      return lines.span(piece.span()) + text("  %6.3f mm  %s", piece.catchMm(), piece.words());
    } else if (line instanceof Line.OfEntry entry) {
      return EntryWords.of(entry.entry());
    } else if (line instanceof Line.OfFinding found) {
      return words(found.finding());
    }
    throw new IllegalArgumentException("no words for " + line);
  }

  private static String words(Finding finding) {
    return finding.kind().code()
        + ": "
        + finding.kind().words()
        + (finding.wires().isEmpty() ? "" : " (" + String.join(", ", finding.wires()) + ")");
  }
}
