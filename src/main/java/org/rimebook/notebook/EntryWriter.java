package org.rimebook.notebook;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.rimebook.station.Interval;
import org.rimebook.station.JsonText;

/** Writes an entry as one line of the notebook; reading the line gives the entry back. */
public final class EntryWriter {

  private final ZoneOffset offset;
  private final Map<String, Object> members = new LinkedHashMap<>();

  private EntryWriter(ZoneOffset offset) {
    this.offset = offset;
  }

  /**
   * The line, without a line end.
   *
   * @param entry the entry
   * @param offset the station's offset, in which times are written
   */
  public static String line(Entry entry, ZoneOffset offset) {
    EntryWriter writer = new EntryWriter(offset);
    writer.common(entry);
    writer.particular(entry);
    return JsonText.oneLine(writer.members);
  }

  /**
   * The members of an entry that nobody has written yet: all but id, time and initials.
   *
   * @param entry the entry
   * @param offset the station's offset, in which times are written
   */
  public static Map<String, Object> members(Entry entry, ZoneOffset offset) {
    EntryWriter writer = new EntryWriter(offset);
    writer.matter(entry);
    writer.particular(entry);
    return writer.members;
  }

  private void common(Entry entry) {
    members.put("id", entry.header().id());
    members.put("at", entry.header().at());
    members.put("by", entry.header().by());
    matter(entry);
  }

  private void matter(Entry entry) {
    members.put("kind", entry.kind());
    entry.span().ifPresent(this::span);
    if (!entry.header().note().isEmpty()) {
      members.put("note", entry.header().note());
    }
  }

  private void span(Interval span) {
    members.put("from", time(span.from()));
    members.put("to", time(span.to()));
  }

  private String time(Instant instant) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(instant.atOffset(offset));
  }

  private void particular(Entry entry) {
    if (entry instanceof Entry.ServiceVisit visit) {
      members.put("actions", visit.actions().stream().map(VisitAction::code).toList());
      litres("antifreeze_l", visit.antifreezeL());
      litres("oil_l", visit.oilL());
    } else if (entry instanceof Entry.BadInterval bad) {
      List<String> wires = bad.wires().stream().sorted().toList();
      if (!wires.isEmpty()) {
        members.put("wires", wires);
      }
      members.put("reason", bad.reason().code());
    } else if (entry instanceof Entry.Estimate estimate) {
      members.put("total_mm", estimate.totalMm());
      members.put("source", estimate.source());
    } else if (entry instanceof Entry.Dismissal dismissal) {
      members.put("finding", dismissal.finding());
    } else if (entry instanceof Entry.Withdrawal withdrawal) {
      members.put("entry", withdrawal.entry());
    } else if (entry instanceof Entry.SignOff signOff) {
      members.put("record_sha256", signOff.recordSha256());
      members.put("station_sha256", signOff.stationSha256());
      members.put("entries", signOff.entries());
    }
  }

  private void litres(String name, OptionalDouble litres) {
    if (litres.isPresent()) {
      members.put(name, litres.getAsDouble());
    }
  }
}
