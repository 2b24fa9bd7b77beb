package org.rimebook.export.figure;

import static org.rimebook.station.Words.text;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.rimebook.station.Interval;

/** A time axis in station time. Its ticks are made here: the library's ask the machine's zone. */
final class TimeAxis extends NumberAxis {

  private static final long serialVersionUID = 1;
  private static final long HOUR_MS = 3_600_000;
  private static final int[] HOURS = {1, 2, 3, 6, 12, 24, 48, 120, 240};
  private static final int[] MONTHS = {1, 2, 3, 6, 12, 24, 60, 120};
  private static final double ROOM_PT = 44;

  /** A label nearer to an end would be cut off. */
  private static final double END_PT = 16;

  private static final String[] NAMES = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };

  private final ZoneOffset offset;
  private final long endMs;
  private final List<NumberTick> marks = new ArrayList<>();

  /**
   * @param span what it covers
   * @param offset station time
   * @param widthPt its length [pt]
   */
  TimeAxis(Interval span, ZoneOffset offset, double widthPt) {
    super("");
    this.offset = offset;
    setRange(span.fromMs(), span.toMs());
    setLabel(words(span));
    FigureLook.dress(this);
    endMs = (long) (span.lengthMs() * END_PT / widthPt);
    double msPerLabel = span.lengthMs() * ROOM_PT / widthPt;
    for (int hours : HOURS) {
      if (hours * HOUR_MS >= msPerLabel) {
        byHours(span, hours);
        return;
      }
    }
    for (int months : MONTHS) {
      if (months * 28L * 24 * HOUR_MS >= msPerLabel || months == MONTHS[MONTHS.length - 1]) {
        byMonths(span, months);
        return;
      }
    }
  }

  private String words(Interval span) {
    String zone = offset.getTotalSeconds() == 0 ? "" : offset.getId().replace('-', '−');
    int first = time(span.fromMs()).getYear();
    int last = time(span.toMs() - 1).getYear();
    String years = first == last ? "" + first : first + "–" + last;
    return text("Station time (UTC%s), %s", zone, years);
  }

  private OffsetDateTime time(long epochMs) {
    return Instant.ofEpochMilli(epochMs).atOffset(offset);
  }

  private void byHours(Interval span, int hours) {
    OffsetDateTime day = time(span.fromMs()).truncatedTo(ChronoUnit.DAYS).withDayOfMonth(1);
    while (day.toInstant().toEpochMilli() < span.toMs()) {
      OffsetDateTime at = day;
      OffsetDateTime next = day.plusMonths(1);
      // Ticks of several days start anew each month, and leave its end to the next.
      OffsetDateTime end = hours > 24 ? next.minusHours(hours / 2) : next;
      while (at.isBefore(end)) {
        if (inside(span, at)) {
          mark(span, at, at.getHour() == 0 ? dayName(at) : text("%02d:00", at.getHour()));
        }
        at = at.plusHours(hours);
      }
      day = next;
    }
  }

  private static String dayName(OffsetDateTime at) {
    return at.getDayOfMonth() + " " + NAMES[at.getMonthValue() - 1];
  }

  private void byMonths(Interval span, int months) {
    OffsetDateTime at = time(span.fromMs()).truncatedTo(ChronoUnit.DAYS).withDayOfYear(1);
    while (at.toInstant().toEpochMilli() <= span.toMs()) {
      if (inside(span, at)) {
        mark(span, at, NAMES[at.getMonthValue() - 1] + " " + at.getYear());
      }
      at = at.plusMonths(months);
    }
  }

  private void mark(Interval span, OffsetDateTime at, String words) {
    long ms = at.toInstant().toEpochMilli();
    boolean atAnEnd = Math.min(ms - span.fromMs(), span.toMs() - ms) < endMs;
    String label = atAnEnd ? "" : words;
    marks.add(new NumberTick(ms, label, TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0));
  }

  private static boolean inside(Interval span, OffsetDateTime at) {
    long ms = at.toInstant().toEpochMilli();
    return ms >= span.fromMs() && ms <= span.toMs();
  }

  @Override
  @SuppressWarnings("rawtypes")
  public List refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    return marks;
  }

  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }

  /** The axis in words, for tests and for those who don't see it. */
  @Override
  public String toString() {
    return getLabel().toLowerCase(Locale.ROOT);
  }
}
