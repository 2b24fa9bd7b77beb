package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Changes of the sampling interval. Totals stand; what is seen in a minute may differ. */
final class SamplingChangeCheck implements Check {

  /** Runs shorter than this are nothing somebody set; own choice. */
  private static final int FEWEST_ROWS = 30;

  private static final long LEAST_MS = 6 * 3_600_000;

  /** Intervals that differ by less are one; own choice. */
  private static final double ALIKE = 0.2;

  private static final double WEAK = 0.3;
  private static final double SECOND_MS = 1000;

  @Override
  public FindingKind kind() {
    return FindingKind.SAMPLING_CHANGE;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "Runs of 30 readings and 6 h or more on another sampling interval than the run before"
        + " (own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    SeasonRecord record = scene.record();
    List<Finding> findings = new ArrayList<>();
    SamplingRun last = null;
    for (SamplingRun run : record.sampling()) {
      if (counts(record, run)) {
        if (last != null && differ(last, run)) {
          findings.add(finding(record, last, run));
        }
        last = run;
      }
    }
    return findings;
  }

  private static boolean counts(SeasonRecord record, SamplingRun run) {
    return run.lastRow() - run.firstRow() + 1 >= FEWEST_ROWS
        && record.stampMs(run.lastRow()) - record.stampMs(run.firstRow()) >= LEAST_MS;
  }

  private static boolean differ(SamplingRun one, SamplingRun other) {
    long apart = Math.abs(one.intervalMs() - other.intervalMs());
    return apart > ALIKE * Math.min(one.intervalMs(), other.intervalMs());
  }

  private Finding finding(SeasonRecord record, SamplingRun before, SamplingRun run) {
    Interval span = new Interval(record.stampMs(run.firstRow()), record.stampMs(run.lastRow()));
    String reason =
        Words.text(
            "Readings come every %s from here on, every %s before.",
            every(run.intervalMs()), every(before.intervalMs()));
    return Finding.harmless(
        kind(), Finding.Subject.bucket(span), reason, WEAK, Proposals.remark(span, reason));
  }

  private static String every(long ms) {
    return ms < 120_000 ? Words.text("%.0f s", ms / SECOND_MS) : Wording.duration(ms);
  }
}
