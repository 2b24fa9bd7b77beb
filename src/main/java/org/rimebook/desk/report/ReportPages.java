package org.rimebook.desk.report;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages of a report as pictures. */
final class ReportPages {

  private ReportPages() {}

  /**
   * A page.
   *
   * @param image the picture
   * @param pages how many pages there are
   */
  record Page(BufferedImage image, int pages) {}

  /**
   * Draws a page.
   *
   * @param pdf the report
   * @param number the page, from 0
   * @param widthPx width of an upright page [pixels]
   * @throws IOException when it isn't a PDF
   */
  static Page draw(byte[] pdf, int number, int widthPx) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      RenderingHints hints =
          new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      hints.put(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
      renderer.setRenderingHints(hints);
      float width = document.getPage(number).getMediaBox().getWidth();
      BufferedImage image = renderer.renderImage(number, widthPx / width, ImageType.RGB);
      return new Page(image, document.getNumberOfPages());
    }
  }
}
