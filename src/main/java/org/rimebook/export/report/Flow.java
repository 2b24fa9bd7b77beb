package org.rimebook.export.report;

import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.rimebook.export.figure.SeasonFigure;

/**
 * Writes headings, paragraphs, tables and figures one under the other, onto as many pages as they
 * take. Each is tagged as what it is.
 */
public final class Flow {

  private static final double AFTER_PT = 5;
  private static final double CAPTION_PT = 30;
  private static final int KEPT_LINES = 6;
  private static final double BLANK_PT = 34;
  private static final double BLANK_APART_PT = 14;

  private final Sheets sheets;
  private final Bookmarks bookmarks;

  Flow(Sheets sheets, Bookmarks bookmarks) {
    this.sheets = sheets;
    this.bookmarks = bookmarks;
  }

  /** A heading of the first level, with a bookmark. */
  public void heading1(String words) {
    sheets.need(110);
    sheets.down(sheets.fresh() ? 0 : 16);
    bookmarks.add(1, words, sheets.page(), sheets.top());
    block(StandardStructureTypes.H1, Style.HEADING_1, words, AFTER_PT);
  }

  /** A heading of the second level, with a bookmark. */
  public void heading2(String words) {
    sheets.need(80);
    sheets.down(sheets.fresh() ? 0 : 7);
    bookmarks.add(2, words, sheets.page(), sheets.top());
    block(StandardStructureTypes.H2, Style.HEADING_2, words, 3);
  }

  /** A paragraph. */
  public void paragraph(String words) {
    block(StandardStructureTypes.P, Style.BODY, words, AFTER_PT);
  }

  /** Something to be done, with a box to tick. */
  public void step(String words, boolean done) {
    block(StandardStructureTypes.P, Style.BODY, (done ? "[ x ]  " : "[    ]  ") + words, 2);
  }

  /** A paragraph in small type. */
  public void small(String words) {
    block(StandardStructureTypes.P, Style.SMALL, words, AFTER_PT);
  }

  /** A paragraph set in some style. */
  void set(Style style, String words) {
    block(StandardStructureTypes.P, style, words, 2);
  }

  /** The title of a document. */
  public void title(String words) {
    bookmarks.add(1, words, sheets.page(), sheets.top());
    block(StandardStructureTypes.H1, Style.TITLE, words, AFTER_PT);
  }

  private void block(String type, Style style, String words, double after) {
    List<String> lines = sheets.ink().lines(style, words, sheets.width());
    int together = lines.size() <= KEPT_LINES ? lines.size() : 2;
    sheets.need(together * style.leadingPt());
    PDStructureElement element = sheets.tags().add(sheets.tags().document(), type);
    Tags.keep(element, words);
    sheets.lines(element, style, lines);
    sheets.down(after);
  }

  /** A table; one without rows is left out. */
  public void table(Table table) {
    if (!table.rows().isEmpty()) {
      new TableWriter(sheets, table).write();
    }
  }

  /**
   * A figure, which is never split.
   *
   * @param figure no wider than {@link #width}
   * @param alternate what it shows, in words for those who don't see it
   * @param caption what stands under it
   */
  public void figure(SeasonFigure figure, String alternate, String caption) {
    sheets.need(figure.heightPt() + CAPTION_PT);
    PDStructureElement element =
        sheets.tags().add(sheets.tags().document(), StandardStructureTypes.Figure);
    element.setAlternateDescription(alternate);
    double foot = sheets.top() - figure.heightPt();
    sheets.begin(element);
    sheets.ink().figure(figure, sheets.left(), foot);
    sheets.ink().end();
    sheets.down(figure.heightPt() + 2);
    block(StandardStructureTypes.CAPTION, Style.SMALL, caption, AFTER_PT);
  }

  /** Blanks to be filled in by hand, side by side, each with its label under it. */
  public void blanks(List<String> labels) {
    sheets.need(BLANK_PT);
    double each = (width() - BLANK_APART_PT * (labels.size() - 1)) / labels.size();
    PDStructureElement element = sheets.paragraph();
    double y = sheets.top() - BLANK_PT + Style.SMALL.leadingPt();
    for (int i = 0; i < labels.size(); i++) {
      double x = sheets.left() + i * (each + BLANK_APART_PT);
      sheets.ink().rule(x, y, each, 0.5);
      sheets.begin(element);
      sheets.ink().text(Style.SMALL, x, y - Style.SMALL.ascentPt(), labels.get(i));
      sheets.ink().end();
    }
    sheets.down(BLANK_PT);
  }

  /** Width of text, tables and figures [pt]. */
  public double width() {
    return sheets.width();
  }

  /** What is left of the page [pt]. */
  public double room() {
    return sheets.room();
  }

  /** Starts a page unless that much is left of this one [pt]. */
  public void need(double pt) {
    sheets.need(pt);
  }

  /** Starts a page. */
  public void newPage() {
    if (!sheets.fresh()) {
      sheets.next();
    }
  }

  /** Starts a page that lies across; those after it do too. */
  public void newPageAcross() {
    sheets.across(true);
    sheets.next();
  }

  /** Starts an upright page; those after it are too. */
  public void newPageUpright() {
    sheets.across(false);
    sheets.next();
  }
}
