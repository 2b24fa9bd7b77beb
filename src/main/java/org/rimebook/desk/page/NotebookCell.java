package org.rimebook.desk.page;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.FindingWords;
import org.rimebook.desk.model.NotebookRow;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;

/** Writes a row of the notebook page: a month's head, or an entry as in a field notebook. */
final class NotebookCell extends JPanel implements ListCellRenderer<NotebookRow> {

  private static final long serialVersionUID = 1;

  private record Text(String words, Font font, Color colour) {}

  private final transient Function<Entry, List<String>> history;
  private final transient List<Text> texts = new ArrayList<>();
  private String signature = "";
  private boolean chosen;
  private boolean focused;
  private boolean struck;
  private boolean open;
  private boolean head;
  private int width = 300;

  /**
   * @param history lines of an entry's history where they are to be shown; none elsewhere
   */
  NotebookCell(Function<Entry, List<String>> history) {
    super(null, false);
    setOpaque(false);
    this.history = history;
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends NotebookRow> list,
      NotebookRow row,
      int index,
      boolean selected,
      boolean focus) {
    texts.clear();
    width = Math.max(Look.px(120), list.getWidth());
    chosen = selected;
    focused = focus && list.isFocusOwner();
    head = row instanceof NotebookRow.Month;
    open = row instanceof NotebookRow.Found;
    struck = row instanceof NotebookRow.Line line && line.withdrawn();
    signature = "";
    if (row instanceof NotebookRow.Month month) {
      texts.add(new Text(month.words(), Look.bold(0.92), Look.muted()));
    } else if (row instanceof NotebookRow.Line line) {
      line(line);
    } else if (row instanceof NotebookRow.Found found) {
      found(found);
    }
    return this;
  }

  private void line(NotebookRow.Line line) {
    Entry entry = line.entry();
    signature = entry.header().by();
    Color ink = struck ? Look.muted() : Look.ink();
    texts.add(new Text(line.time(), Look.text(0.92), Look.muted()));
    texts.add(new Text(EntryWords.kind(entry), Look.bold(1), ink));
    add(EntryWords.particulars(entry), Look.text(1), Look.muted());
    add(entry.header().note(), Look.text(1), ink);
    history.apply(entry).forEach(words -> add(words, Look.text(0.92), Look.muted()));
    getAccessibleContext()
        .setAccessibleName(
            String.join(
                ", ",
                line.time(),
                EntryWords.kind(entry) + (struck ? ", withdrawn" : ""),
                EntryWords.particulars(entry),
                entry.header().note(),
                signature));
  }

  private void found(NotebookRow.Found found) {
    Finding finding = found.finding();
    signature = "to decide";
    String what = FindingWords.subject(finding) + ", " + FindingWords.strength(finding);
    texts.add(new Text(found.time(), Look.text(0.92), Look.muted()));
    texts.add(new Text(FindingWords.kind(finding), Look.bold(1), Look.ink()));
    texts.add(new Text(what, Look.text(1), Look.muted()));
    getAccessibleContext()
        .setAccessibleName(
            String.join(
                ", ",
                found.time(),
                "finding to decide on",
                FindingWords.kind(finding),
                what,
                finding.reason()));
  }

  private void add(String words, Font font, Color colour) {
    if (!words.isEmpty()) {
      texts.add(new Text(words, font, colour));
    }
  }

  @Override
  public Dimension getPreferredSize() {
    int height = head ? Look.px(16) : Look.px(12);
    for (Text text : texts) {
      FontMetrics metrics = getFontMetrics(text.font());
      height += metrics.getHeight() * wrapped(text, metrics).size();
    }
    return new Dimension(width, height);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D own = Ink.of(graphics);
    if (chosen) {
      own.setColor(Look.faint(Look.accent(), 0.14));
      own.fillRect(0, 0, getWidth(), getHeight());
      own.setColor(Look.accent());
      own.fillRect(0, 0, Look.px(focused ? 4 : 2), getHeight());
    }
    if (open) {
      int x = Look.px(6);
      Ink.outline(
          own, new Line2D.Double(x, Look.px(8), x, getHeight() - Look.px(6)), Look.ink(), true);
    }
    int y = head ? Look.px(10) : Look.px(6);
    for (Text text : texts) {
      FontMetrics metrics = getFontMetrics(text.font());
      own.setFont(text.font());
      own.setColor(text.colour());
      for (String line : wrapped(text, metrics)) {
        int base = y + metrics.getAscent();
        own.drawString(line, Look.px(12), base);
        if (struck) {
          int middle = base - metrics.getAscent() / 3;
          own.drawLine(Look.px(12), middle, Look.px(12) + metrics.stringWidth(line), middle);
        }
        y += metrics.getHeight();
      }
    }
    sign(own);
    own.dispose();
  }

  private void sign(Graphics2D graphics) {
    graphics.setFont(Look.text(0.92));
    graphics.setColor(Look.muted());
    FontMetrics metrics = graphics.getFontMetrics();
    int x = getWidth() - Look.px(12) - metrics.stringWidth(signature);
    graphics.drawString(signature, x, Look.px(6) + metrics.getAscent());
  }

  private List<String> wrapped(Text text, FontMetrics metrics) {
    int room = width - Look.px(24);
    // Beside the first words stands who wrote them, or that nobody has decided.
    boolean signed = !signature.isEmpty() && text == texts.get(0);
    int taken = signed ? getFontMetrics(Look.text(0.92)).stringWidth(signature) + Look.px(12) : 0;
    return Ink.wrapped(text.words(), metrics, room - taken);
  }
}
