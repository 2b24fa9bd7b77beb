package org.rimebook.export.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

class FigureFileTest {

  private static final SeasonResult RESULT =
      Bucket.every(10, 24 * 40)
          .level(Bucket.rain(100, 130, 0.5, 400, 420, 1))
          .weather(hour -> -4 + 3 * Math.sin(hour / 4), 6)
          .noise(0.02)
          .silent(500, 520)
          .result();

  private static SeasonFigure figure(FigureStrip... strips) {
    FigureSpec spec = new FigureSpec(Bucket.span(0, 24 * 40), List.of(strips), 160, 120);
    return SeasonFigure.of(RESULT, RESULT.totals(Resolution.TENTH), spec);
  }

  private static Document svg(SeasonFigure figure)
      throws ParserConfigurationException, IOException, SAXException {
    byte[] bytes = FigureFile.bytes(figure, FigureFormat.SVG, 0);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
  }

  @ParameterizedTest
  @EnumSource
  void theWordsOfEveryStripStandInTheSvgWithTheirUnit(FigureStrip strip)
      throws ParserConfigurationException, IOException, SAXException {
    Document svg = svg(figure(strip));
    assertThat(svg.getDocumentElement().getTextContent())
        .contains(strip.axis())
        .contains("Station time (UTC−07:00), 2025");
    assertThat(strip.axis()).matches(".*\\((mm|Hz|°C|m/s|%|V)\\)");
  }

  @Test
  void theSvgHasTheSizeAskedForAndNoPixels()
      throws ParserConfigurationException, IOException, SAXException {
    Element root = svg(figure(FigureStrip.DEPTH, FigureStrip.CATCH)).getDocumentElement();
    assertThat(root.getAttribute("width")).endsWith("pt");
    assertThat(Double.parseDouble(root.getAttribute("width").replace("pt", "")) / 72 * 25.4)
        .isBetween(159.9, 160.1);
    assertThat(root.getElementsByTagName("image").getLength()).isZero();
    NodeList paths = root.getElementsByTagName("path");
    assertThat(paths.getLength()).isGreaterThan(3);
  }

  @Test
  void thePngHasThePixelsAndTheDotsAnInchAskedFor() throws IOException {
    byte[] bytes = FigureFile.bytes(figure(FigureStrip.DEPTH), FigureFormat.PNG, 254);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat(image.getWidth()).isEqualTo(1600);
    assertThat(image.getHeight()).isEqualTo(1200);
    ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      reader.setInput(in);
      Element size =
          (Element)
              ((Element) reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0"))
                  .getElementsByTagName("pHYs")
                  .item(0);
      assertThat(size.getAttribute("pixelsPerUnitXAxis")).isEqualTo("10000");
      assertThat(size.getAttribute("unitSpecifier")).isEqualTo("meter");
    } finally {
      reader.dispose();
    }
  }

  @Test
  void thePdfIsOnePageOfTheSizeAskedForWithWordsThatCanBeRead() throws IOException {
    byte[] bytes = FigureFile.bytes(figure(FigureStrip.FREQUENCY), FigureFormat.PDF, 0);
    try (PDDocument document = Loader.loadPDF(bytes)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(453f, 454f);
      assertThat(new PDFTextStripper().getText(document)).contains("Frequency (Hz)", "w0", "w2");
    }
  }

  @ParameterizedTest
  @EnumSource
  void theSameFigureIsTheSameBytesWhereverItIsDrawn(FigureFormat format) {
    byte[] here = FigureFile.bytes(figure(FigureStrip.values()), format, 72);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertThat(FigureFile.bytes(figure(FigureStrip.values()), format, 72)).isEqualTo(here);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
