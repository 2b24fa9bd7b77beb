package org.rimebook.export.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

class WaterMl2Test {

  private static final String WML = "http://www.opengis.net/waterml/2.0";
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final String GML = "http://www.opengis.net/gml/3.2";

  /** A winter with gaps, visits, late catch, missing and accumulated days. */
  private static SeasonResult winter;

  private static Schema schema;
  private static byte[] bytes;

  @BeforeAll
  static void makeWinter() throws InputException, SAXException {
    schema = OgcSchemas.waterMl2();
    winter = SeasonResult.of(Season.open(Path.of("sample-sets", "hard-winter")));
    bytes = StandardFormat.WATERML2.bytes(winter, Resolution.TENTH);
  }

  private static void validate(byte[] xml) throws SAXException, IOException {
    schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(xml)));
  }

  private static Document document() throws SAXException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    } catch (ParserConfigurationException | IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Element> elements(Element within, String namespace, String name) {
    NodeList found = within.getElementsByTagNameNS(namespace, name);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      all.add((Element) found.item(i));
    }
    return all;
  }

  private static List<Element> points(int series) throws SAXException {
    Element all =
        elements(document().getDocumentElement(), WML, "MeasurementTimeseries").get(series);
    return elements(all, WML, "point");
  }

  private static String text(Element within, String name) {
    List<Element> found = elements(within, WML, name);
    return found.isEmpty() ? "" : found.get(0).getTextContent();
  }

  @Test
  void aSeasonWithEverythingIsValidByTheSchemaOfTheStandard() throws SAXException, IOException {
    validate(bytes);
  }

  @Test
  void theSchemaRefusesWhatIsNotWaterMl() {
    String text = new String(bytes, StandardCharsets.UTF_8);
    String wrong =
        text.replaceFirst("<wml2:value>", "<wml2:amount>")
            .replaceFirst("</wml2:value>", "</wml2:amount>");
    assertThatThrownBy(() -> validate(wrong.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(SAXException.class)
        .hasMessageContaining("amount");
  }

  @Test
  void aStationWithoutPlaceAndWithAHostileNameIsStillValid() throws SAXException, IOException {
    SeasonResult result = Bucket.every(60, 48).result();
    validate(StandardFormat.WATERML2.bytes(result, Resolution.HUNDREDTH));
    byte[] name =
        new Xml().open("a", "b", "<&\"\u0001").words("c", "]]> & \u0000 \uD800").close().bytes();
    assertThat(new String(name, StandardCharsets.UTF_8))
        .contains("b=\"&lt;&amp;&quot;\uFFFD\"")
        .contains("<c>]]&gt; &amp; \uFFFD ");
  }

  @Test
  void everyTotalStandsAtTheEndOfItsIntervalWithQualityAndUncertainty() throws SAXException {
    Totals totals = winter.totals(Resolution.TENTH);
    List<List<TotalRow>> tables = List.of(totals.hourly(), totals.daily());
    for (int series = 0; series < 2; series++) {
      List<Element> points = points(series);
      assertThat(points).hasSameSizeAs(tables.get(series));
      for (int i = 0; i < points.size(); i++) {
        TotalRow row = tables.get(series).get(i);
        Element point = points.get(i);
        assertThat(java.time.OffsetDateTime.parse(text(point, "time")).toInstant())
            .isEqualTo(row.interval().to());
        String quality = elements(point, WML, "quality").get(0).getAttributeNS(XLINK, "href");
        assertThat(quality)
            .isEqualTo("http://www.opengis.net/def/waterml/2.0/quality/" + row.quality().code());
        boolean there = row.catchUnits().isPresent();
        assertThat(elements(point, WML, "nilReason")).hasSize(there ? 0 : 1);
        assertThat(elements(point, WML, "accuracy"))
            .hasSize(row.uncertaintyMm().isPresent() ? 1 : 0);
        assertThat(text(point, "value"))
            .isEqualTo(
                there ? Resolution.TENTH.toMm(row.catchUnits().getAsLong()).toPlainString() : "");
      }
    }
  }

  @Test
  void aTotalIsThatOfThePrecedingIntervalInMillimetres() throws SAXException {
    Element defaults =
        elements(document().getDocumentElement(), WML, "DefaultTVPMeasurementMetadata").get(1);
    assertThat(elements(defaults, WML, "interpolationType").get(0).getAttributeNS(XLINK, "href"))
        .isEqualTo("http://www.opengis.net/def/waterml/2.0/interpolationType/TotalPrec");
    assertThat(elements(defaults, WML, "uom").get(0).getAttribute("code")).isEqualTo("mm");
    assertThat(text(defaults, "aggregationDuration")).isEqualTo("P1D");
  }

  @Test
  void whatHasAccumulatedSaysOverHowLong() throws SAXException {
    List<TotalRow> days = winter.totals(Resolution.TENTH).daily();
    List<Element> points = points(1);
    int met = 0;
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).accumulatedSinceMs().isPresent()) {
        long sinceMs = days.get(i).accumulatedSinceMs().getAsLong();
        assertThat(java.time.Duration.parse(text(points.get(i), "aggregationDuration")).toMillis())
            .isEqualTo(days.get(i).interval().toMs() - sinceMs);
        met++;
      }
    }
    assertThat(met).isPositive();
  }

  /** Rules of the standard's xml-rules.sch, which ask for titles and for references that lead. */
  @Test
  void everyReferenceLeadsSomewhereAndHasATitle() throws SAXException {
    Element root = document().getDocumentElement();
    List<Element> all = elements(root, "*", "*");
    all.add(root);
    Set<String> ids =
        all.stream().map(e -> e.getAttributeNS(GML, "id")).collect(Collectors.toSet());
    List<Element> references = all.stream().filter(e -> e.hasAttributeNS(XLINK, "href")).toList();
    assertThat(references).isNotEmpty();
    for (Element reference : references) {
      String href = reference.getAttributeNS(XLINK, "href");
      assertThat(reference.getAttributeNS(XLINK, "title")).as(href).isNotEmpty();
      if (href.startsWith("#")) {
        assertThat(ids).contains(href.substring(1));
      }
    }
  }

  @Test
  void theSameSeasonGivesTheSameBytes() {
    assertThat(StandardFormat.WATERML2.bytes(winter, Resolution.TENTH)).isEqualTo(bytes);
  }
}
