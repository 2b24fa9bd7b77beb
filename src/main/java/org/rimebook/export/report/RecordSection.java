package org.rimebook.export.report;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.export.figure.FigureSpec;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;

/** The readings of the whole season as they were logged. */
final class RecordSection implements ReportSection {

  private static final double PT_PER_MM = 72 / 25.4;
  private static final double FIGURE_PT = 420;
  private static final double WITHOUT_WEATHER_PT = 280;

  private final ReportData data;

  RecordSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Readings";
  }

  @Override
  public double roomPt() {
    return heightPt() + 90;
  }

  private double heightPt() {
    return strips().size() > 2 ? FIGURE_PT : WITHOUT_WEATHER_PT;
  }

  @Override
  public void write(Flow flow) {
    SeasonRecord record = data.season().record();
    flow.paragraph(
        counted(record.size(), "reading")
            + " from "
            + data.words().time(record.stampMs(0))
            + " to "
            + data.words().time(record.stampMs(record.size() - 1))
            + ", "
            + sampling(record.sampling())
            + ".");
    List<FigureStrip> strips = strips();
    FigureSpec spec =
        new FigureSpec(data.span(), strips, flow.width() / PT_PER_MM, heightPt() / PT_PER_MM);
    flow.figure(
        SeasonFigure.of(data.result(), data.totals(), spec),
        "Charts over time: "
            + String.join("; ", strips.stream().map(FigureStrip::axis).toList())
            + ".",
        "Readings that are used, thinned to what the page can show. A break is time without"
            + " readings, or a service visit.");
  }

  private List<FigureStrip> strips() {
    List<FigureStrip> strips = new ArrayList<>(List.of(FigureStrip.FREQUENCY, FigureStrip.DEPTH));
    for (FigureStrip weather : FigureStrip.weather()) {
      if (weather.quantity().flatMap(data.sheet()::channel).isPresent()) {
        strips.add(weather);
      }
    }
    return strips;
  }

  private static String sampling(List<SamplingRun> runs) {
    List<Long> intervals = runs.stream().map(SamplingRun::intervalMs).distinct().toList();
    return intervals.size() == 1
        ? text("one every %s s", seconds(intervals.get(0)))
        : "one every "
            + String.join(" or ", intervals.stream().limit(4).map(RecordSection::seconds).toList())
            + " s";
  }

  private static String seconds(long ms) {
    return ms % 1000 == 0 ? Long.toString(ms / 1000) : text("%.3f", ms / 1000.0);
  }
}
