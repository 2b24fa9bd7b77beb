package org.rimebook.desk.table;

import static org.rimebook.station.Words.text;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.FindingWords;
import org.rimebook.desk.model.ShortTime;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryWords;
import org.rimebook.season.why.Line;
import org.rimebook.station.Interval;

/**
 * Makes components of the lines of an explanation.
 *
 * @param time writes times
 * @param wires the wires in the order of their colours
 * @param roomy whether there is room for figures in a column of their own
 * @param to leads elsewhere
 */
record WhyLine(ShortTime time, List<String> wires, boolean roomy, To to) {

  /**
   * Ways that lead elsewhere.
   *
   * @param span goes to a time
   * @param entry chooses an entry
   * @param finding puts a finding under review
   */
  record To(
      Consumer<Interval> span, BiConsumer<String, Interval> entry, Consumer<Finding> finding) {}

  JComponent of(Line line) {
    if (line instanceof Line.Words plain) {
      return Prose.of(plain.words());
    } else if (line instanceof Line.Detail detail) {
      return figure("", Prose.quiet(detail.words()));
    } else if (line instanceof Line.Part part) {
      return roomy
          ? figure(part.amount(), Prose.of(part.words()))
          : Prose.of(part.amount() + "  " + part.words());
    } else if (line instanceof Line.OfWire wire) {
      return wire(wire);
    } else if (line instanceof Line.OfSpan about) {
      return about(about);
    } else if (line instanceof Line.OfPiece piece) {
      return piece(piece);
    } else if (line instanceof Line.OfEntry entry) {
      return entry(entry);
    } else if (line instanceof Line.OfFinding found) {
      return finding(found.finding());
    }
    throw new IllegalArgumentException("no component for " + line);
  }

  private JComponent wire(Line.OfWire line) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 0 0, wrap 2", "[22!]8[grow, fill, 0:0]"));
    row.setOpaque(false);
    row.add(new Sample(Math.max(0, wires.indexOf(line.wire()))), "top");
    row.add(Prose.of(line.wire()), "wmin 0");
    row.add(Prose.quiet(line.words()), "skip 1, wmin 0");
    return row;
  }

  /** Lines beside their figure, or under it where there is no room. */
  private JComponent figure(String amount, JComponent... lines) {
    JPanel column = column(roomy ? "[72!, fill]8[grow, fill, 0:0]" : "[grow, fill, 0:0]");
    if (roomy) {
      column.add(new TabularLabel(amount, SwingConstants.TRAILING), "top");
    }
    String skip = roomy ? "skip 1, " : "";
    for (JComponent line : lines) {
      boolean beside = line == lines[0] && roomy;
      String width = line instanceof Link ? "grow 0, align left, wmin 0" : "wmin 0";
      column.add(line, (beside ? "" : skip) + width + ", wrap");
    }
    return column;
  }

  private static JPanel column(String columns) {
    JPanel column = new JPanel(new MigLayout("insets 0, gap 0 0", columns));
    column.setOpaque(false);
    return column;
  }

  private JComponent about(Line.OfSpan about) {
    Link link =
        Link.to(time.span(about.span()), "Goes to this time", () -> to.span().accept(about.span()));
    JPanel column = column("[grow, fill, 0:0]");
    column.add(
        Prose.of((about.before() + about.after()).strip().replace(" ;", ";")), "wmin 0, wrap");
    column.add(link, "grow 0, align left, wmin 0");
    return column;
  }

  private JComponent piece(Line.OfPiece piece) {
    Link link =
        Link.to(time.span(piece.span()), "Goes to this time", () -> to.span().accept(piece.span()));
    String amount = text("%.3f mm", piece.catchMm());
    return roomy
        ? figure(amount, link, Prose.quiet(piece.words()))
        : figure("", link, Prose.of(amount + "  " + piece.words()));
  }

  private JComponent entry(Line.OfEntry line) {
    Entry entry = line.entry();
    String particulars = EntryWords.particulars(entry);
    String words =
        entry.kind().replace('-', ' ') + (particulars.isEmpty() ? "" : " (" + particulars + ")");
    Link link =
        Link.to(
            words,
            "Chooses this entry and goes there",
            () -> to.entry().accept(entry.header().id(), line.span()));
    String who = entry.header().by().isEmpty() ? "" : ", " + entry.header().by();
    JPanel column = column("[grow, fill, 0:0]");
    column.add(link, "grow 0, align left, wmin 0, wrap");
    column.add(Prose.quiet(time.span(line.span()) + who), "wmin 0, wrap");
    if (!entry.header().note().isEmpty()) {
      column.add(Prose.of(entry.header().note()), "wmin 0");
    }
    return column;
  }

  private JComponent finding(Finding finding) {
    Link link =
        Link.to(
            FindingWords.kind(finding),
            "Puts this finding under review",
            () -> to.finding().accept(finding));
    JPanel column = column("[grow, fill, 0:0]");
    column.add(link, "grow 0, align left, wmin 0, wrap");
    column.add(
        Prose.quiet(time.span(finding.span()) + ", " + FindingWords.subject(finding)),
        "wmin 0, wrap");
    column.add(Prose.of(finding.reason()), "wmin 0");
    return column;
  }

  /** A piece of a wire's line, in its colour and style. */
  private static final class Sample extends JComponent {
    private final int wire;

    Sample(int wire) {
      this.wire = wire;
    }

    @Override
    public Dimension getPreferredSize() {
      return new Dimension(Look.px(22), Look.px(17));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHints(TextHints.of(this));
      g.setColor(Look.wire(wire));
      g.setStroke(Look.wireLine(wire));
      int middle = Look.px(8);
      g.drawLine(0, middle, getWidth(), middle);
      g.dispose();
    }
  }
}
