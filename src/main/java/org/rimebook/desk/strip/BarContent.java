package org.rimebook.desk.strip;

import java.awt.Graphics2D;
import java.util.BitSet;
import java.util.List;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.series.CatchBars;
import org.rimebook.station.Interval;

/** Hourly or daily totals as bars whose shape tells their quality. */
final class BarContent implements Content {

  private final CatchBars bars;
  private final int decimals;
  private Interval visible = new Interval(0, 1);
  private int columns;
  private int first;
  private int end;

  /**
   * @param bars the totals
   * @param decimals decimals of a total
   */
  BarContent(CatchBars bars, int decimals) {
    this.bars = bars;
    this.decimals = decimals;
  }

  @Override
  public void look(Interval stretch, int width) {
    visible = stretch;
    columns = width;
    first = bars.firstEndingAfter(stretch.fromMs());
    end = Math.max(first, bars.firstStartingAt(stretch.toMs()));
  }

  @Override
  public Extent inView() {
    double most = 0;
    for (int bar = first; bar < end; bar++) {
      most = Math.max(most, bars.isMissing(bar) ? 0 : bars.catchMm(bar) + bars.uncertaintyMm(bar));
    }
    return new Extent(0, Math.max(0.5, 1.12 * most));
  }

  @Override
  public BitSet covered() {
    BitSet covered = new BitSet();
    for (int bar = first; bar < end; bar++) {
      if (!bars.isMissing(bar)) {
        int from = column(bars.sinceMs(bar));
        covered.set(from, Math.max(from, column(bars.toMs(bar)) + 1));
      }
    }
    return covered;
  }

  private int column(long epochMs) {
    long column = Math.floorDiv((epochMs - visible.fromMs()) * columns, visible.lengthMs());
    return (int) Math.max(0, Math.min(columns, column));
  }

  @Override
  public void draw(Graphics2D graphics, Canvas canvas, Emphasis emphasis) {
    if (end == first) {
      return;
    }
    BarPainter painter = new BarPainter(graphics, canvas);
    double wide = canvas.x(bars.toMs(first)) - canvas.x(bars.fromMs(first));
    for (int bar = first; bar < end; bar++) {
      if (wide >= canvas.thick(4)) {
        painter.shaped(bars, bar);
      } else {
        painter.thin(bars, bar);
      }
    }
  }

  @Override
  public List<Label> ends() {
    return List.of();
  }

  @Override
  public List<Reading> at(long epochMs) {
    int bar = bars.firstEndingAfter(epochMs);
    if (bar >= bars.size() || bars.fromMs(bar) > epochMs) {
      return List.of(new Reading("", -1, "no total"));
    }
    if (bars.isMissing(bar)) {
      return List.of(new Reading("", -1, "no total"));
    }
    String words =
        Numbers.fixed(bars.catchMm(bar), decimals)
            + plusMinus(bar)
            + " mm, "
            + bars.quality(bar).code();
    return List.of(new Reading("", -1, words));
  }

  /** The uncertainty; nothing for totals of others that come without one. */
  private String plusMinus(int bar) {
    double uncertaintyMm = bars.uncertaintyMm(bar);
    return uncertaintyMm > 0 ? " \u00b1 " + Numbers.fixed(uncertaintyMm, decimals) : "";
  }
}
