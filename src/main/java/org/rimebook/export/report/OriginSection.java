package org.rimebook.export.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rimebook.record.FileAccount;
import org.rimebook.record.LineReason;
import org.rimebook.record.SetAside;
import org.rimebook.season.Season;
import org.rimebook.season.Version;

/** What the report was made from, line by line accounted for, with digests to check it by. */
final class OriginSection implements ReportSection {

  private final ReportData data;

  OriginSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Record and digests";
  }

  @Override
  public void write(Flow flow) {
    Season.Digests digests = data.season().digests();
    flow.paragraph(
        "Made by rimebook "
            + Version.number()
            + ". The same folder gives the same report, byte for byte, with this version.");
    flow.table(
        new Table.Builder()
            .words("SHA-256 of")
            .words("digest")
            .row("record", digests.record())
            .row(Season.STATION_FILE, digests.station())
            .row(Season.NOTEBOOK_FILE, digests.notebook())
            .done());
    flow.heading2("Logger files");
    Table.Builder files =
        new Table.Builder()
            .words("File")
            .figures("Lines")
            .figures("Used")
            .words("Not used")
            .figures("Fields missing")
            .figures("Fields unreadable");
    for (FileAccount file : data.season().record().provenance().files()) {
      files.row(
          file.file(),
          Long.toString(file.lines()),
          Long.toString(file.used()),
          aside(file),
          Long.toString(file.missingFields()),
          Long.toString(file.unreadableCount()));
    }
    flow.table(files.done());
    List<String> notes = data.result().notes();
    if (!notes.isEmpty()) {
      flow.heading2("Met on the way");
      notes.forEach(flow::small);
    }
  }

  private static String aside(FileAccount file) {
    Map<LineReason, Long> lines = new EnumMap<>(LineReason.class);
    for (SetAside run : file.setAside()) {
      lines.merge(run.reason(), run.lines(), Long::sum);
    }
    return lines.entrySet().stream()
        .map(reason -> reason.getValue() + " " + reason.getKey().words())
        .collect(Collectors.joining(", "));
  }
}
