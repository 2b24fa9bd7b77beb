package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.record.Column;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;

/** Makes a record that differs in something from another. */
final class RecordCopy {

  private final SeasonRecord like;
  private final int wires;
  private final int channels;

  RecordCopy(SeasonRecord like, StationSheet sheet) {
    this.like = like;
    this.wires = sheet.wires().size();
    this.channels = sheet.channels().size();
  }

  /** With other runs of sampling. */
  SeasonRecord with(List<SamplingRun> sampling) {
    return of(frequencies(), channels(), sampling);
  }

  /** With other readings. */
  SeasonRecord with(List<Column> frequencies, List<Column> beside) {
    return of(frequencies, beside, like.sampling());
  }

  List<Column> frequencies() {
    List<Column> columns = new ArrayList<>();
    for (int wire = 0; wire < wires; wire++) {
      columns.add(like.frequency(wire));
    }
    return columns;
  }

  List<Column> channels() {
    List<Column> columns = new ArrayList<>();
    for (int channel = 0; channel < channels; channel++) {
      columns.add(like.channel(channel));
    }
    return columns;
  }

  private SeasonRecord of(
      List<Column> frequencies, List<Column> beside, List<SamplingRun> sampling) {
    long[] stamps = new long[like.size()];
    for (int row = 0; row < stamps.length; row++) {
      stamps[row] = like.stampMs(row);
    }
    return new SeasonRecord(stamps, frequencies, beside, sampling, like.provenance());
  }
}
