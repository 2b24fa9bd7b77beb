package org.rimebook.export.figure;

import java.util.List;
import org.rimebook.station.Interval;

/**
 * What a figure shows and how large it is.
 *
 * @param span the stretch of time
 * @param strips the strips from top to bottom, at least one
 * @param widthMm width [mm]
 * @param heightMm height [mm]
 */
public record FigureSpec(Interval span, List<FigureStrip> strips, double widthMm, double heightMm) {

  /** Least and most a side can measure [mm]. */
  public static final double LEAST_MM = 30;

  /** Most a side can measure [mm]. */
  public static final double MOST_MM = 2000;

  private static final double PT_PER_MM = 72 / 25.4;

  public FigureSpec {
    strips = List.copyOf(strips);
    if (strips.isEmpty() || span.lengthMs() <= 0) {
      throw new IllegalArgumentException("a figure shows at least one strip over some time");
    }
    if (!fits(widthMm) || !fits(heightMm)) {
      throw new IllegalArgumentException(
          "a side of a figure measures " + LEAST_MM + " to " + MOST_MM + " mm");
    }
  }

  /** Whether a side may measure that much [mm]. */
  public static boolean fits(double sideMm) {
    return sideMm >= LEAST_MM && sideMm <= MOST_MM;
  }

  /** Width [pt]. */
  public double widthPt() {
    return widthMm * PT_PER_MM;
  }

  /** Height [pt]. */
  public double heightPt() {
    return heightMm * PT_PER_MM;
  }
}
