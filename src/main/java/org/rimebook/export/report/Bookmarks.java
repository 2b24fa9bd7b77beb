package org.rimebook.export.report;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** The bookmarks of a document, in two levels. */
final class Bookmarks {

  private final PDDocumentOutline outline = new PDDocumentOutline();
  private PDOutlineItem last;

  Bookmarks(PDDocument document) {
    document.getDocumentCatalog().setDocumentOutline(outline);
  }

  void add(int level, String words, PDPage page, double top) {
    PDPageXYZDestination place = new PDPageXYZDestination();
    place.setPage(page);
    place.setTop((int) Math.ceil(top));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(words);
    item.setDestination(place);
    if (level == 1 || last == null) {
      outline.addLast(item);
      last = item;
    } else {
      last.addLast(item);
    }
  }
}
