package org.rimebook.export.report;

import org.rimebook.export.FurtherFile;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/** The report as a file beside the tables. */
public final class ReportFile implements FurtherFile {

  @Override
  public String fileName() {
    return SeasonReport.FILE;
  }

  @Override
  public byte[] bytes(SeasonResult result, Resolution resolution) {
    return SeasonReport.of(result, result.totals(resolution), Progress.NONE).pdf(Progress.NONE);
  }
}
