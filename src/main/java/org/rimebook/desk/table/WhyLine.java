package org.rimebook.desk.table;

import static org.rimebook.station.Words.text;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.ShortTime;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryWords;
import org.rimebook.season.why.Line;
import org.rimebook.station.Interval;

/** Makes components of the lines of an explanation. */
record WhyLine(
    ShortTime time,
    List<String> wires,
    Consumer<Interval> toSpan,
    BiConsumer<String, Interval> toEntry) {

  JComponent of(Line line) {
    if (line instanceof Line.Words plain) {
      return Prose.of(plain.words());
    } else if (line instanceof Line.Detail detail) {
      return row("[72!]8[grow, fill]", new JLabel(), Prose.quiet(detail.words()));
    } else if (line instanceof Line.Part part) {
      return row("[72!, fill]8[grow, fill]", amount(part.amount()), Prose.of(part.words()));
    } else if (line instanceof Line.OfWire wire) {
      return wire(wire);
    } else if (line instanceof Line.OfSpan about) {
      return about(about);
    } else if (line instanceof Line.OfPiece piece) {
      return piece(piece);
    } else if (line instanceof Line.OfEntry entry) {
      return entry(entry);
    }
    throw new IllegalArgumentException("no component for " + line);
  }

  private JComponent wire(Line.OfWire line) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 0 0, wrap 2", "[22!]8[grow, fill]"));
    row.setOpaque(false);
    row.add(new Sample(Math.max(0, wires.indexOf(line.wire()))), "top");
    row.add(Prose.of(line.wire()), "wmin 0");
    row.add(Prose.quiet(line.words()), "skip 1, wmin 0");
    return row;
  }

  private static JPanel row(String columns, JComponent... parts) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 0 0, hidemode 3", columns));
    row.setOpaque(false);
    for (JComponent part : parts) {
      row.add(part, "top, wmin 0");
    }
    return row;
  }

  private static JLabel amount(String amount) {
    return new TabularLabel(amount, SwingConstants.TRAILING);
  }

  private JComponent about(Line.OfSpan about) {
    Link link =
        Link.to(time.span(about.span()), "Goes to this time", () -> toSpan.accept(about.span()));
    JPanel column = new JPanel(new MigLayout("insets 0, gap 0 0, wrap 1", "[grow, fill]"));
    column.setOpaque(false);
    column.add(Prose.of((about.before() + about.after()).strip().replace(" ;", ";")), "wmin 0");
    column.add(link, "grow 0, align left, wmin 0");
    return column;
  }

  private JComponent piece(Line.OfPiece piece) {
    Link link =
        Link.to(time.span(piece.span()), "Goes to this time", () -> toSpan.accept(piece.span()));
    JPanel column = new JPanel(new MigLayout("insets 0, gap 0 0", "[72!, fill]8[grow, fill]"));
    column.setOpaque(false);
    column.add(amount(text("%.3f mm", piece.catchMm())), "top");
    column.add(link, "grow 0, align left, wmin 0, wrap");
    column.add(Prose.quiet(piece.words()), "skip 1, wmin 0");
    return column;
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
            () -> toEntry.accept(entry.header().id(), line.span()));
    String who = entry.header().by().isEmpty() ? "" : ", " + entry.header().by();
    JPanel column = new JPanel(new MigLayout("insets 0, gap 0 0, wrap 1", "[grow, fill]"));
    column.setOpaque(false);
    column.add(link, "grow 0, align left, wmin 0");
    column.add(Prose.quiet(time.span(line.span()) + who), "wmin 0");
    if (!entry.header().note().isEmpty()) {
      column.add(Prose.of(entry.header().note()), "wmin 0");
    }
    return column;
  }

  /** A piece of a wire's line, in its colour and style. */
  private static final class Sample extends JComponent {
    private final int wire;

    Sample(int wire) {
      this.wire = wire;
      setPreferredSize(new Dimension(Look.px(22), Look.px(17)));
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
