package org.rimebook.export.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.rimebook.export.figure.PdfBytes;
import org.rimebook.season.Version;

/** A document on paper: tagged, with bookmarks, and the same bytes for the same content. */
public final class Paper {

  private Paper() {}

  /**
   * A document as PDF.
   *
   * @param title its title
   * @param foot what stands at the foot of each page
   * @param identity what tells it from other documents
   * @param content writes it
   */
  public static byte[] pdf(String title, String foot, String identity, Consumer<Flow> content) {
    try (PDDocument document = new PDDocument()) {
      describe(document, title);
      Sheets sheets = new Sheets(document);
      content.accept(new Flow(sheets, new Bookmarks(document)));
      sheets.finish(foot, "rimebook " + Version.number());
      return PdfBytes.of(document, identity);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
  }

  private static void describe(PDDocument document, String title) {
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(title);
    about.setProducer("Rimebook " + Version.number());
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
    shown.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(shown);
  }
}
