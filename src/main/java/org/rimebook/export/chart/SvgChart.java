package org.rimebook.export.chart;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A chart as SVG: lines and words, the same bytes on every machine. */
public final class SvgChart {

  private static final String SPACE = "http://www.w3.org/2000/svg";
  private static final String FONTS = "Inter, Helvetica, Arial, sans-serif";
  private static final int PRECISION = 3;

  private SvgChart() {}

  /**
   * The text of the file.
   *
   * @param chart the chart, dressed by {@link ChartLook}
   * @param widthPx width [px]
   * @param heightPx height [px]
   */
  public static String text(JFreeChart chart, int widthPx, int heightPx) {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setComment("");
    context.setPrecision(PRECISION);
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    chart.draw(graphics, new Rectangle2D.Double(0, 0, widthPx, heightPx));
    Element root = graphics.getRoot();
    root.setAttribute("width", String.valueOf(widthPx));
    root.setAttribute("height", String.valueOf(heightPx));
    root.setAttribute("viewBox", "0 0 " + widthPx + " " + heightPx);
    family(root);
    StringWriter out = new StringWriter();
    try {
      graphics.stream(root, out, true, false);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
    // Readers of today's SVG need no document type, and some would fetch it.
    return out.toString()
        .replace("\r\n", "\n")
        .replaceFirst("(?s)<!DOCTYPE.*?>\\s*", "")
        .replaceFirst("<!---->", "");
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("Java has an XML of its own", e);
    }
  }

  /** Names typefaces that look alike, for machines without the type of the charts. */
  private static void family(Element element) {
    if (!element.getAttribute("font-family").isEmpty()) {
      element.setAttribute("font-family", FONTS);
    }
    for (int i = 0; i < element.getChildNodes().getLength(); i++) {
      if (element.getChildNodes().item(i) instanceof Element child) {
        family(child);
      }
    }
  }
}
