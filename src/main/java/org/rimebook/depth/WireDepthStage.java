package org.rimebook.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * From logged frequencies to depths: each wire by its dated calibration, with the readings left out
 * that entries of the notebook name, that lie outside the wire's physical range, or that are
 * isolated spikes. An entry covers the readings stamped in its half-open interval: a frequency is a
 * short measurement at the stamp.
 */
public final class WireDepthStage {

  private final SeasonRecord record;
  private final StationSheet sheet;
  private final List<WireScreening> wires = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private WireDepthStage(SeasonRecord record, StationSheet sheet) {
    this.record = record;
    this.sheet = sheet;
    double hertzPerUnit = hertzPerUnit(sheet.layout());
    for (int wire = 0; wire < sheet.wires().size(); wire++) {
      CalibrationSpans spans = CalibrationSpans.of(sheet.wires().get(wire), record);
      wires.add(new WireScreening(record.frequency(wire), hertzPerUnit, spans));
    }
  }

  /**
   * Depths of a season.
   *
   * @param record the readings
   * @param sheet the station sheet, its calibrations accepted by {@link CalibrationCheck}
   * @param notebook its service visits and bad intervals in force are honoured
   */
  public static WireDepths of(SeasonRecord record, StationSheet sheet, Notebook notebook) {
    WireDepthStage stage = new WireDepthStage(record, sheet);
    List<Entry> entries = notebook.inForce();
    // Visits before bad intervals, so that the reason doesn't depend on the order of entries.
    entries.forEach(stage::leaveOutVisit);
    entries.forEach(stage::leaveOutBadInterval);
    DepthRange range = DepthRange.of(sheet.gauge());
    Sampling sampling = new Sampling(record);
    for (WireScreening wire : stage.wires) {
      wire.leaveOutOfRange(range);
      wire.leaveOutSpikes(record, sampling);
    }
    return new WireDepths(
        stage.wires.stream().map(WireScreening::depthMm).toArray(double[][]::new),
        stage.wires.stream().map(WireScreening::screening).toArray(byte[][]::new),
        stage.notes);
  }

  /** What one unit of a wire's column stands for [Hz]. */
  private static double hertzPerUnit(RecordLayout layout) {
    return layout.frequencyKind() == RecordLayout.FrequencyKind.COUNTS
        ? 1 / layout.gateS().orElseThrow()
        : 1;
  }

  private void leaveOutVisit(Entry entry) {
    if (entry instanceof Entry.ServiceVisit visit) {
      wires.forEach(w -> leaveOut(w, visit.interval(), Screening.SERVICE_VISIT));
    }
  }

  private void leaveOutBadInterval(Entry entry) {
    if (!(entry instanceof Entry.BadInterval bad)) {
      return;
    }
    Set<String> unknown = new TreeSet<>(bad.wires());
    for (int i = 0; i < wires.size(); i++) {
      Wire wire = sheet.wires().get(i);
      if (bad.wires().isEmpty() || bad.wires().contains(wire.name())) {
        leaveOut(wires.get(i), bad.interval(), Screening.BAD_INTERVAL);
      }
      unknown.remove(wire.name());
    }
    for (String name : unknown) {
      notes.add(
          "bad interval "
              + bad.header().id()
              + " names the wire \""
              + name
              + "\", which the station sheet doesn't have: it leaves out nothing there");
    }
  }

  private void leaveOut(WireScreening wire, Interval interval, Screening reason) {
    wire.leaveOut(
        record.firstRowAtOrAfter(interval.fromMs()),
        record.firstRowAtOrAfter(interval.toMs()),
        reason);
  }
}
