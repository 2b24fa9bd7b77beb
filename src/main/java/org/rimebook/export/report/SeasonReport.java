package org.rimebook.export.report;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.season.EntryEffect;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.totals.Totals;

/** The report of a season: what a reviewer signs. */
public final class SeasonReport {

  /** Its name beside the tables. */
  public static final String FILE = "report.pdf";

  private final ReportData data;
  private final List<ReportSection> more;
  private final boolean hours;

  private SeasonReport(ReportData data, List<ReportSection> more, boolean hours) {
    this.data = data;
    this.more = List.copyOf(more);
    this.hours = hours;
  }

  /**
   * The report of a season; computes what each entry does to the totals.
   *
   * @param result the season, computed throughout
   * @param totals its totals
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static SeasonReport of(SeasonResult result, Totals totals, Progress progress) {
    return of(result, totals, ReportAhead.of(result.stage(), progress), progress);
  }

  /**
   * The report of a season of which something was worked out ahead.
   *
   * @param result the season, computed throughout
   * @param totals its totals
   * @param ahead what was worked out from the same depths
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static SeasonReport of(
      SeasonResult result, Totals totals, ReportAhead ahead, Progress progress) {
    progress.step("what the entries change", 0);
    List<EntryEffect> effects =
        EntryEffect.all(result, totals.resolution(), new ReportAhead.Silent(progress));
    ReportData data = new ReportData(result, totals, effects, ahead::decided);
    return new SeasonReport(data, List.of(), false);
  }

  /** With an appendix of every hour. */
  public SeasonReport withHours() {
    return new SeasonReport(data, more, true);
  }

  /** With a further section after those on the season itself. */
  public SeasonReport with(ReportSection section) {
    List<ReportSection> all = new ArrayList<>(more);
    all.add(section);
    return new SeasonReport(data, all, hours);
  }

  private List<ReportSection> sections() {
    List<ReportSection> all =
        new ArrayList<>(
            List.of(
                new StationSection(data),
                new RecordSection(data),
                new VisitsSection(data),
                new EffectsSection(data),
                new FindingsSection(data),
                new AdjustedSection(data)));
    all.addAll(more);
    all.add(new MethodSection(data));
    all.add(new OriginSection(data));
    all.add(new NotebookSection(data));
    return all;
  }

  /**
   * The report as PDF; the same bytes for the same season, whatever the machine.
   *
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public byte[] pdf(Progress progress) {
    progress.step("first page", 0.45);
    return Paper.pdf(
        "Precipitation report: " + season(),
        season(),
        "report " + hours + " " + data.season().digests(),
        flow -> write(flow, progress));
  }

  private void write(Flow flow, Progress progress) {
    new AnswerPage(data).write(flow);
    flow.newPage();
    List<ReportSection> sections = sections();
    for (int i = 0; i < sections.size(); i++) {
      progress.step(sections.get(i).heading(), 0.5 + 0.4 * i / sections.size());
      flow.need(sections.get(i).roomPt());
      flow.heading1(sections.get(i).heading());
      sections.get(i).write(flow);
    }
    if (hours) {
      HoursSection appendix = new HoursSection(data);
      flow.newPageAcross();
      flow.heading1(appendix.heading());
      appendix.write(flow);
    }
    progress.step("file", 0.95);
  }

  private String season() {
    ReportWords words = data.words();
    return data.sheet().name()
        + ", "
        + words.date(data.span().fromMs())
        + " to "
        + words.date(data.span().toMs());
  }
}
