package org.rimebook.export.standard;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.stream.Collectors;
import org.rimebook.export.StationTime;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.season.Version;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Reason;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/**
 * The hourly and daily catch as OGC WaterML 2.0 (10-126r4): a collection of one monitoring point
 * and two observations with measurement time series. A point's time is the end of its hour or day,
 * and its value the total of the interval before it ({@code TotalPrec}).
 */
final class WaterMl2 {

  private static final String OGC = "http://www.opengis.net/def/";
  private static final String TOTAL_PRECEDING = OGC + "waterml/2.0/interpolationType/TotalPrec";
  private static final String MISSING = OGC + "nil/OGC/0/missing";
  private static final String UNKNOWN = OGC + "nil/OGC/0/unknown";
  private static final String HREF = "xlink:href";
  private static final String TITLE = "xlink:title";
  private static final String ID = "gml:id";
  private static final String POINT = "station";

  private final Season season;
  private final StationSheet sheet;
  private final Totals totals;
  private final Xml xml = new Xml();

  WaterMl2(SeasonResult result, Totals totals) {
    this.season = result.season();
    this.sheet = season.sheet();
    this.totals = totals;
  }

  byte[] bytes() {
    xml.open(
        "wml2:Collection",
        "xmlns:wml2",
        "http://www.opengis.net/waterml/2.0",
        "xmlns:gml",
        "http://www.opengis.net/gml/3.2",
        "xmlns:om",
        "http://www.opengis.net/om/2.0",
        "xmlns:sam",
        "http://www.opengis.net/sampling/2.0",
        "xmlns:sams",
        "http://www.opengis.net/samplingSpatial/2.0",
        "xmlns:swe",
        "http://www.opengis.net/swe/2.0",
        "xmlns:xlink",
        "http://www.w3.org/1999/xlink",
        "xmlns:xsi",
        "http://www.w3.org/2001/XMLSchema-instance",
        ID,
        "totals");
    xml.words("gml:description", "Precipitation totals of " + sheet.name());
    document();
    station();
    observation("hourly", "PT1H", totals.hourly());
    observation("daily", "P1D", totals.daily());
    return xml.close().bytes();
  }

  private String iso(long epochMs) {
    return StationTime.iso(epochMs, sheet.utcOffset());
  }

  /** Nothing here may depend on when it is written, so the document is as old as its inputs. */
  private String inputsAsOf() {
    long latest = totals.hourly().get(totals.hourly().size() - 1).interval().toMs();
    for (Entry entry : season.notebook().history()) {
      latest = Math.max(latest, instant(entry.header().at(), latest));
    }
    return iso(latest);
  }

  private static long instant(String at, long otherwise) {
    try {
      return OffsetDateTime.parse(at).toInstant().toEpochMilli();
    } catch (DateTimeParseException e) {
      return otherwise;
    }
  }

  private void document() {
    xml.open("wml2:metadata").open("wml2:DocumentMetadata", ID, "document");
    xml.words("wml2:generationDate", inputsAsOf());
    xml.empty("wml2:version", HREF, "http://www.opengis.net/waterml/2.0", TITLE, "WaterML 2.0");
    xml.words("wml2:generationSystem", "rimebook " + Version.number());
    xml.close().close();
  }

  private void station() {
    xml.open("wml2:samplingFeatureMember").open("wml2:MonitoringPoint", ID, POINT);
    if (sheet.elevationM().isPresent()) {
      xml.words("gml:description", "Elevation " + plain(sheet.elevationM().getAsDouble()) + " m");
    }
    xml.words("gml:name", sheet.name());
    xml.empty("sam:sampledFeature", HREF, UNKNOWN, TITLE, "not stated");
    if (sheet.latitudeDeg().isPresent() && sheet.longitudeDeg().isPresent()) {
      xml.open("sams:shape");
      xml.open("gml:Point", ID, "place", "srsName", OGC + "crs/EPSG/0/4326");
      xml.words(
          "gml:pos",
          plain(sheet.latitudeDeg().getAsDouble())
              + " "
              + plain(sheet.longitudeDeg().getAsDouble()));
      xml.close().close();
    } else {
      xml.empty("sams:shape", "nilReason", "unknown");
    }
    xml.open("wml2:timeZone").open("wml2:TimeZone");
    ZoneOffset offset = sheet.utcOffset();
    xml.words("wml2:zoneOffset", offset.getTotalSeconds() == 0 ? "+00:00" : offset.getId());
    xml.close().close().close().close();
  }

  private void observation(String name, String step, List<TotalRow> rows) {
    Interval first = rows.get(0).interval();
    Interval last = rows.get(rows.size() - 1).interval();
    xml.open("wml2:observationMember").open("om:OM_Observation", ID, name);
    xml.empty(
        "om:type",
        HREF,
        OGC + "observationType/waterml/2.0/MeasurementTimeseriesTVPObservation",
        TITLE,
        "Measurement time series");
    xml.open("om:phenomenonTime").open("gml:TimePeriod", ID, name + "-period");
    xml.words("gml:beginPosition", iso(first.fromMs()));
    xml.words("gml:endPosition", iso(last.toMs()));
    xml.close().close();
    xml.open("om:resultTime").open("gml:TimeInstant", ID, name + "-result");
    xml.words("gml:timePosition", inputsAsOf()).close().close();
    process(name, step);
    xml.empty(
        "om:observedProperty",
        HREF,
        "https://cfconventions.org/standard-names.html#" + Cf.CATCH,
        TITLE,
        "Precipitation caught by the gauge, as depth of water (CF: " + Cf.CATCH + ")");
    xml.empty("om:featureOfInterest", HREF, "#" + POINT, TITLE, sheet.name());
    xml.open("om:result").open("wml2:MeasurementTimeseries", ID, name + "-series");
    metadata(name, step);
    rows.forEach(this::point);
    xml.close().close().close().close();
  }

  private void process(String name, String step) {
    xml.open("om:procedure").open("wml2:ObservationProcess", ID, name + "-process");
    xml.empty(
        "wml2:processType", HREF, OGC + "waterml/2.0/processType/Algorithm", TITLE, "Algorithm");
    xml.words("wml2:aggregationDuration", step);
    xml.words(
        "wml2:comment",
        "Catch of a vibrating-wire precipitation gauge, totals by rimebook "
            + Version.number()
            + "; record SHA-256 "
            + season.digests().record());
    xml.close().close();
  }

  private void metadata(String name, String step) {
    xml.open("wml2:metadata").open("wml2:MeasurementTimeseriesMetadata");
    xml.empty("wml2:temporalExtent", HREF, "#" + name + "-period", TITLE, "period");
    xml.words("wml2:cumulative", "false").close().close();
    xml.open("wml2:defaultPointMetadata").open("wml2:DefaultTVPMeasurementMetadata");
    quality(Quality.GOOD);
    xml.empty("wml2:uom", "code", "mm");
    xml.empty(
        "wml2:interpolationType", HREF, TOTAL_PRECEDING, TITLE, "Total in preceding interval");
    xml.words("wml2:aggregationDuration", step).close().close();
  }

  private void quality(Quality quality) {
    QualityTerm term = QualityTerm.of(quality);
    xml.empty("wml2:quality", HREF, term.ogcUri(), TITLE, term.word());
  }

  private void point(TotalRow row) {
    xml.open("wml2:point").open("wml2:MeasurementTVP");
    xml.words("wml2:time", iso(row.interval().toMs()));
    if (row.catchUnits().isPresent()) {
      BigDecimal mm = totals.resolution().toMm(row.catchUnits().getAsLong());
      xml.words("wml2:value", mm.toPlainString());
    } else {
      xml.empty("wml2:value", "xsi:nil", "true");
    }
    xml.open("wml2:metadata").open("wml2:TVPMeasurementMetadata");
    quality(row.quality());
    if (row.catchUnits().isEmpty()) {
      xml.empty("wml2:nilReason", HREF, MISSING, TITLE, "missing");
    }
    if (!row.reasons().isEmpty()) {
      xml.words(
          "wml2:comment",
          row.reasons().stream().map(Reason::code).collect(Collectors.joining("; ")));
    }
    quantity(
        "wml2:qualifier",
        "Share of the interval covered by usable readings",
        "%",
        decimal(100 * row.completeness(), 1));
    if (row.uncertaintyMm().isPresent()) {
      quantity(
          "wml2:accuracy",
          "Standard uncertainty (k = 1)",
          "mm",
          decimal(row.uncertaintyMm().getAsDouble(), 3));
    }
    if (row.accumulatedSinceMs().isPresent()) {
      long sinceMs = row.accumulatedSinceMs().getAsLong();
      Duration length = Duration.between(Instant.ofEpochMilli(sinceMs), row.interval().to());
      xml.words("wml2:aggregationDuration", length.toString());
    }
    xml.close().close().close().close();
  }

  private void quantity(String element, String label, String unit, String value) {
    xml.open(element).open("swe:Quantity");
    xml.words("swe:label", label).empty("swe:uom", "code", unit).words("swe:value", value);
    xml.close().close();
  }

  private static String decimal(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
