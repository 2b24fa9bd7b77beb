package org.rimebook.export.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The pages of a document in order, and how far down the last one is filled. */
final class Sheets {

  private static final double SIDE_PT = 54;
  private static final double TOP_PT = 50;
  private static final double FOOT_PT = 60;
  private static final double FOOTER_PT = 34;

  private final PDDocument document;
  private final Ink ink;
  private final Tags tags;
  private final List<PDPage> pages = new ArrayList<>();
  private boolean across;
  private double y;

  Sheets(PDDocument document) {
    this.document = document;
    this.tags = new Tags(document);
    this.ink = new Ink(document);
    next();
  }

  Ink ink() {
    return ink;
  }

  Tags tags() {
    return tags;
  }

  PDPage page() {
    return pages.get(pages.size() - 1);
  }

  /** Width text can take [pt]. */
  double width() {
    return page().getMediaBox().getWidth() - 2 * SIDE_PT;
  }

  /** The left edge of text [pt]. */
  double left() {
    return SIDE_PT;
  }

  /** Where the next line starts, from below [pt]. */
  double top() {
    return y;
  }

  /** What is left of the page [pt]. */
  double room() {
    return y - FOOT_PT;
  }

  /** What a whole page has [pt]. */
  double wholePage() {
    return page().getMediaBox().getHeight() - TOP_PT - FOOT_PT;
  }

  /** Whether nothing stands on the page yet. */
  boolean fresh() {
    return room() >= wholePage();
  }

  /** Goes down the page. */
  void down(double pt) {
    y -= pt;
  }

  /** Starts a page unless that much is left of this one. */
  void need(double pt) {
    if (room() < pt && !fresh()) {
      next();
    }
  }

  /** Starts a page. */
  void next() {
    PDRectangle size = PDRectangle.A4;
    PDPage page = new PDPage(across ? new PDRectangle(size.getHeight(), size.getWidth()) : size);
    document.addPage(page);
    pages.add(page);
    ink.on(page);
    y = page.getMediaBox().getHeight() - TOP_PT;
  }

  /** Pages from the next on lie across, or stand upright again. */
  void across(boolean lying) {
    across = lying;
  }

  /** Begins content of an element here. */
  void begin(PDStructureElement element) {
    ink.begin(element.getStructureType(), tags.mark(page(), element));
  }

  /** Writes lines of one element, over pages where they must; the cursor ends under them. */
  void lines(PDStructureElement element, Style style, List<String> lines) {
    begin(element);
    for (String line : lines) {
      if (room() < style.leadingPt() && !fresh()) {
        ink.end();
        next();
        begin(element);
      }
      ink.text(style, left(), y - style.ascentPt(), line);
      y -= style.leadingPt();
    }
    ink.end();
  }

  /** Adds an element for a block of text at the top level. */
  PDStructureElement paragraph() {
    return tags.add(tags.document(), StandardStructureTypes.P);
  }

  /** Writes the footer of every page, and ends. */
  void finish(String season, String made) throws IOException {
    for (int i = 0; i < pages.size(); i++) {
      PDPage page = pages.get(i);
      ink.on(page);
      double right = page.getMediaBox().getWidth() - SIDE_PT;
      String number = "page " + (i + 1) + " of " + pages.size();
      ink.rule(SIDE_PT, FOOTER_PT + 11, right - SIDE_PT, 0.4);
      ink.beginArtifact();
      ink.text(Style.SMALL, SIDE_PT, FOOTER_PT, fitted(season, right - SIDE_PT - 190));
      ink.text(Style.SMALL, right - 170, FOOTER_PT, made);
      ink.text(Style.SMALL, right - ink.width(Style.SMALL, number), FOOTER_PT, number);
      ink.end();
    }
    ink.close();
    tags.finish();
  }

  private String fitted(String words, double width) {
    List<String> lines = ink.lines(Style.SMALL, words, width);
    return lines.size() == 1 ? lines.get(0) : lines.get(0) + "…";
  }
}
