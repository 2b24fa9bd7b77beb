package org.rimebook.export.figure;

import static org.rimebook.station.Words.text;

import java.io.IOException;
import java.io.StringWriter;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A figure as SVG: lines and words. */
final class SvgText {

  private static final String SPACE = "http://www.w3.org/2000/svg";
  private static final String FONTS = "Roboto, Helvetica, Arial, sans-serif";
  private static final int PRECISION = 3;

  private SvgText() {}

  static String of(SeasonFigure figure) throws IOException {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setComment("");
    context.setPrecision(PRECISION);
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    figure.draw(g);
    Element root = g.getRoot();
    root.setAttribute("width", text("%.3fpt", figure.widthPt()));
    root.setAttribute("height", text("%.3fpt", figure.heightPt()));
    root.setAttribute("viewBox", text("0 0 %.3f %.3f", figure.widthPt(), figure.heightPt()));
    family(root);
    StringWriter out = new StringWriter();
    g.stream(root, out, true, false);
    return out.toString().replace("\r\n", "\n");
  }

  private static Document document() {
    try {
      DOMImplementation dom =
          DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation();
      return dom.createDocument(SPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("Java has an XML of its own", e);
    }
  }

  /** Names typefaces that look alike, for machines without the type of the figures. */
  private static void family(Element element) {
    String family = element.getAttribute("font-family");
    if (!family.isEmpty()) {
      boolean medium = family.contains("Medium");
      element.setAttribute("font-family", FONTS);
      element.setAttribute("font-weight", medium ? "500" : "400");
    }
    for (int i = 0; i < element.getChildNodes().getLength(); i++) {
      if (element.getChildNodes().item(i) instanceof Element child) {
        family(child);
      }
    }
  }
}
