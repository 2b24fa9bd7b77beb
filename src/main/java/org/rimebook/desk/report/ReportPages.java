package org.rimebook.desk.report;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.rimebook.station.Progress;

/** Pages of a paper as pictures. */
public final class ReportPages {

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
      return new Page(draw(document, number, widthPx), document.getNumberOfPages());
    }
  }

  /**
   * Draws all pages.
   *
   * @param pdf a paper of a few pages
   * @param widthPx width of an upright page [pixels]
   * @param progress throws when the drawing is cancelled
   * @throws IOException when it isn't a PDF
   */
  public static List<BufferedImage> all(byte[] pdf, int widthPx, Progress progress)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<BufferedImage> pages = new ArrayList<>();
      for (int number = 0; number < document.getNumberOfPages(); number++) {
        progress.step("page", number / (double) document.getNumberOfPages());
        pages.add(draw(document, number, widthPx));
      }
      return pages;
    }
  }

  private static BufferedImage draw(PDDocument document, int number, int widthPx)
      throws IOException {
    PDFRenderer renderer = new PDFRenderer(document);
    RenderingHints hints =
        new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    hints.put(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
    renderer.setRenderingHints(hints);
    float width = document.getPage(number).getMediaBox().getWidth();
    return renderer.renderImage(number, widthPx / width, ImageType.RGB);
  }
}
