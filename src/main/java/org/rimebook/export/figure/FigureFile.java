package org.rimebook.export.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.rimebook.season.Version;

/** Figures as files: the same bytes for the same figure. */
public final class FigureFile {

  /** Dots an inch unless told otherwise. */
  public static final int DPI = 300;

  private static final double PT_PER_INCH = 72;

  private FigureFile() {}

  /**
   * A figure as the bytes of a file.
   *
   * @param figure the figure
   * @param format what it is written as
   * @param dpi dots an inch; only for pixels
   */
  public static byte[] bytes(SeasonFigure figure, FigureFormat format, int dpi) {
    try {
      return switch (format) {
        case SVG -> SvgText.of(figure).getBytes(StandardCharsets.UTF_8);
        case PDF -> pdf(figure);
        case PNG -> png(figure, dpi);
      };
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
  }

  /** A figure as SVG. */
  public static byte[] svg(SeasonFigure figure) {
    return bytes(figure, FigureFormat.SVG, DPI);
  }

  private static byte[] pdf(SeasonFigure figure) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page =
          new PDPage(new PDRectangle((float) figure.widthPt(), (float) figure.heightPt()));
      document.addPage(page);
      PdfType type = new PdfType(document);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.drawForm(type.form(figure));
      }
      document.getDocumentInformation().setProducer("Rimebook " + Version.number());
      return PdfBytes.of(document, figure.identity());
    }
  }

  private static byte[] png(SeasonFigure figure, int dpi) throws IOException {
    double scale = dpi / PT_PER_INCH;
    BufferedImage image =
        new BufferedImage(
            pixels(figure.widthPt(), dpi),
            pixels(figure.heightPt(), dpi),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setPaint(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.scale(scale, scale);
    figure.draw(g);
    g.dispose();
    return PngBytes.of(image, dpi);
  }

  private static int pixels(double sidePt, int dpi) {
    return (int) Math.round(sidePt / PT_PER_INCH * dpi);
  }
}
