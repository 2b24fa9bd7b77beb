package org.rimebook.command;

import static org.rimebook.station.Words.text;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.rimebook.export.StationTime;
import org.rimebook.station.Interval;

/** Lines for a terminal: a label in the margin, words beside it, times in station time. */
final class LabelledLines {

  private final ZoneOffset offset;
  private final List<String> lines = new ArrayList<>();

  LabelledLines(ZoneOffset offset) {
    this.offset = offset;
  }

  List<String> lines() {
    return lines;
  }

  void title(String words) {
    lines.add(words);
  }

  void add(String label, String words) {
    lines.add(text("%-10s%s", label, words).stripTrailing());
  }

  String span(long fromMs, long toMs) {
    return StationTime.iso(fromMs, offset) + " to " + StationTime.iso(toMs, offset);
  }

  String span(Interval interval) {
    return span(interval.fromMs(), interval.toMs());
  }
}
