package org.rimebook.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.record.FileAccount;
import org.rimebook.record.LineReason;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.record.SetAside;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.season.SignOffState;
import org.rimebook.season.Version;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.AdjustedTotal;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Reason;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/** The summary of a season: totals, where they came from and what was met on the way. */
final class SeasonSummary {

  private static final String FORMAT = "rimebook-season/1";

  private final SeasonResult result;
  private final Season season;
  private final Totals totals;
  private final ObjectNode root = JsonLines.MAPPER.createObjectNode();

  private SeasonSummary(SeasonResult result, Totals totals) {
    this.result = result;
    this.season = result.season();
    this.totals = totals;
  }

  static String json(SeasonResult result, Totals totals) {
    return JsonLines.text(new SeasonSummary(result, totals).json());
  }

  private ObjectNode json() {
    root.put("format", FORMAT);
    root.put("made_by", "rimebook " + Version.number());
    addStation(root.putObject("station"));
    addTotals(root.putObject("totals"));
    addRecord(root.putObject("record"));
    addNotebook(root.putObject("notebook"));
    root.put("station_sha256", season.digests().station());
    addMethod(root.putObject("method"));
    ArrayNode alerts = root.putArray("alerts");
    result.calibrations().alerts().forEach(alerts::add);
    addFindings(root.putArray("findings"));
    ArrayNode notes = root.putArray("notes");
    result.notes().forEach(notes::add);
    return root;
  }

  /** What nobody has decided on; {@code rimebook findings --json} tells more of each. */
  private void addFindings(ArrayNode findings) {
    for (Finding finding : result.findings().open()) {
      ObjectNode node = findings.addObject();
      node.put("id", finding.id());
      node.put("kind", finding.kind().code());
      node.put("doubts_totals", finding.doubted().isPresent());
      node.put("reason", finding.reason());
    }
  }

  private String iso(long epochMs) {
    return StationTime.iso(epochMs, season.sheet().utcOffset());
  }

  private void addStation(ObjectNode node) {
    StationSheet sheet = season.sheet();
    node.put("name", sheet.name());
    sheet.latitudeDeg().ifPresent(v -> node.put("latitude_deg", v));
    sheet.longitudeDeg().ifPresent(v -> node.put("longitude_deg", v));
    sheet.elevationM().ifPresent(v -> node.put("elevation_m", v));
    node.put(
        "utc_offset",
        sheet.utcOffset().getTotalSeconds() == 0 ? "+00:00" : sheet.utcOffset().getId());
    node.put("day_starts_at", sheet.dayStartsAt().toString());
  }

  private void addTotals(ObjectNode node) {
    List<TotalRow> hourly = totals.hourly();
    long from = hourly.get(0).interval().fromMs();
    long to = hourly.get(hourly.size() - 1).interval().toMs();
    node.put("from", iso(from));
    node.put("to", iso(to));
    node.put("resolution_mm", BigDecimal.valueOf(totals.resolution().mm()));
    node.put("catch_mm", (BigDecimal) null);
    node.put("uncertainty_mm", (BigDecimal) null);
    if (totals.seasonUnits().isPresent()) {
      double uncertainty = Math.sqrt(result.series().varianceMm2(from, to));
      node.put("catch_mm", totals.resolution().toMm(totals.seasonUnits().getAsLong()));
      node.put("uncertainty_mm", new BigDecimal(TableCsv.decimal(uncertainty, 3)));
    }
    node.put("completeness_pct", completenessPct(hourly));
    addAdjusted(node);
    addQualities(node.putObject("hours_by_quality"), hourly);
    addQualities(node.putObject("days_by_quality"), totals.daily());
    Set<Reason> met = EnumSet.noneOf(Reason.class);
    hourly.forEach(row -> met.addAll(row.reasons()));
    ObjectNode reasons = node.putObject("reasons");
    met.forEach(reason -> reasons.put(reason.code(), reason.words()));
  }

  /** Share of the season covered by usable readings [%]; its hours count alike. */
  private static BigDecimal completenessPct(List<TotalRow> hourly) {
    double share = hourly.stream().mapToDouble(TotalRow::completeness).sum() / hourly.size();
    return new BigDecimal(TableCsv.decimal(100 * share, 1));
  }

  /** The hours that could be adjusted, beside what was caught in the same hours. */
  private void addAdjusted(ObjectNode node) {
    Optional<AdjustedTotal> adjusted = totals.adjusted();
    node.put("adjusted_mm", (BigDecimal) null);
    node.put("adjusted_uncertainty_mm", (BigDecimal) null);
    node.put("adjusted_from_catch_mm", (BigDecimal) null);
    if (adjusted.isPresent()) {
      double uncertainty = adjusted.get().uncertaintyMm(totals.resolution(), result.series());
      node.put("adjusted_mm", totals.resolution().toMm(adjusted.get().units()));
      node.put("adjusted_uncertainty_mm", new BigDecimal(TableCsv.decimal(uncertainty, 3)));
      node.put("adjusted_from_catch_mm", totals.resolution().toMm(adjusted.get().catchUnits()));
    }
  }

  private static void addQualities(ObjectNode node, List<TotalRow> rows) {
    Map<Quality, Integer> count = new EnumMap<>(Quality.class);
    rows.forEach(row -> count.merge(row.quality(), 1, Integer::sum));
    for (Quality quality : Quality.values()) {
      node.put(quality.code(), count.getOrDefault(quality, 0));
    }
  }

  private void addRecord(ObjectNode node) {
    SeasonRecord record = season.record();
    node.put("sha256", season.digests().record());
    node.put("first_reading", iso(record.stampMs(0)));
    node.put("last_reading", iso(record.stampMs(record.size() - 1)));
    node.put("readings", record.size());
    ArrayNode sampling = node.putArray("sampling");
    for (SamplingRun run : record.sampling()) {
      ObjectNode item = sampling.addObject();
      item.put("from", iso(record.stampMs(run.firstRow())));
      item.put("to", iso(record.stampMs(run.lastRow())));
      item.put("interval_s", run.intervalMs() / 1000.0);
    }
    ArrayNode files = node.putArray("files");
    List<String> digests = record.provenance().digest().files();
    for (FileAccount file : record.provenance().files()) {
      ObjectNode item = files.addObject();
      int index = files.size() - 1;
      item.put("file", file.file());
      item.put("sha256", index < digests.size() ? digests.get(index) : "");
      addFile(item, file);
    }
  }

  private static void addFile(ObjectNode node, FileAccount file) {
    node.put("read_as", file.dialect());
    node.put("lines", file.lines());
    node.put("used", file.used());
    Map<LineReason, Long> aside = new EnumMap<>(LineReason.class);
    for (SetAside run : file.setAside()) {
      aside.merge(run.reason(), run.lines(), Long::sum);
    }
    ObjectNode reasons = node.putObject("set_aside");
    aside.forEach((reason, lines) -> reasons.put(reason.words(), lines));
    node.put("fields_missing", file.missingFields());
    node.put("fields_unreadable", file.unreadableCount());
  }

  private void addNotebook(ObjectNode node) {
    node.put("sha256", season.digests().notebook());
    node.put("entries", season.notebook().history().size());
    node.put("entries_in_force", season.notebook().inForce().size());
    node.put("sign_off", SignOffState.of(season).code());
    long unknown =
        season.notebook().history().stream().filter(e -> e instanceof Entry.Unknown).count();
    node.put("entries_of_unknown_kind", unknown);
    ObjectNode digests = node.putObject("entry_sha256");
    EntryDigests.of(season.notebook()).forEach(digests::put);
  }

  private void addMethod(ObjectNode node) {
    node.put("depth", "P = A(f-f0) + B(f-f0)^2 per wire; wires combined by increments");
    node.put(
        "catch",
        "switching Kalman smoother (Kim 1994) of the level between a dry and five wet states");
    result
        .estimate()
        .learnt()
        .ifPresent(learnt -> LearntSummary.add(node.putObject("learnt"), learnt));
    node.put(
        "undercatch",
        "Kochendorfer et al. 2017, HESS 21, 3525-3542, eq. 3, gauge-height wind, by half hours;"
            + " uncertainty after Smith et al. 2020, HESS 24, 4025-4043");
    node.put("rounding", "cumulative: hours add up to days and days to the season");
  }
}
