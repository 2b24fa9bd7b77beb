package org.rimebook.export;

import java.time.ZoneOffset;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;
import org.rimebook.notebook.EntryWriter;
import org.rimebook.station.Interval;
import org.rimebook.station.JsonText;
import org.rimebook.station.StationSheet;

/** Findings as JSON, so that another program can show them, or write what settles them. */
public final class FindingsJson {

  private final ZoneOffset offset;

  private FindingsJson(ZoneOffset offset) {
    this.offset = offset;
  }

  /**
   * What is left to decide in a season: one object with the station, how many findings there are
   * and the findings, each with the notebook entry it proposes, which lacks only id, time and
   * initials.
   *
   * @param sheet the station sheet
   * @param findings the findings
   */
  public static String text(StationSheet sheet, Findings findings) {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("format", "rimebook-findings/1");
    object.put("station", sheet.name());
    object.put("open", findings.open().size());
    object.put("findings", new FindingsJson(sheet.utcOffset()).list(findings.open()));
    return JsonText.laidOut(object);
  }

  private List<Map<String, Object>> list(Collection<Finding> findings) {
    return findings.stream().map(this::object).toList();
  }

  private Map<String, Object> object(Finding finding) {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("id", finding.id());
    object.put("kind", finding.kind().code());
    span(object, "", finding.span());
    object.put("wires", finding.wires());
    object.put("words", finding.kind().words());
    object.put("reason", finding.reason());
    object.put("strength", Math.round(finding.strength() * 100) / 100.0);
    finding.doubted().ifPresent(doubted -> span(object, "doubted_", doubted));
    object.put("proposal", EntryWriter.members(finding.proposal(), offset));
    return object;
  }

  private void span(Map<String, Object> object, String prefix, Interval span) {
    object.put(prefix + "from", StationTime.iso(span.fromMs(), offset));
    object.put(prefix + "to", StationTime.iso(span.toMs(), offset));
  }
}
