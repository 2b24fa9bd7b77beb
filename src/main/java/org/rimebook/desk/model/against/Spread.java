package org.rimebook.desk.model.against;

/**
 * How far points depart from where they should be.
 *
 * @param used points of readings that are used
 * @param leftOut points of readings that are left out
 * @param meanMm mean departure of those used [mm]; NaN when there are none
 * @param sdMm their standard deviation [mm]; NaN when there are none
 * @param furthestRow row of the record of the one used that lies furthest from the mean; −1 when
 *     there is none
 */
public record Spread(int used, int leftOut, double meanMm, double sdMm, int furthestRow) {

  /** The spread of the points in some rows. */
  public static Spread of(Points points, RowSpan span) {
    int used = 0;
    int leftOut = 0;
    double sum = 0;
    for (int row = span.from(); row < span.to(); row++) {
      double departureMm = points.departureMm(row);
      if (Double.isNaN(departureMm)) {
        continue;
      }
      if (points.used(row)) {
        used++;
        sum += departureMm;
      } else {
        leftOut++;
      }
    }
    return about(points, span, sum / used, new int[] {used, leftOut});
  }

  private static Spread about(Points points, RowSpan span, double mean, int[] counts) {
    double squares = 0;
    double most = -1;
    int furthest = -1;
    for (int row = span.from(); row < span.to(); row++) {
      double distance = Math.abs(points.departureMm(row) - mean);
      if (!points.used(row) || Double.isNaN(distance)) {
        continue;
      }
      squares += distance * distance;
      if (distance > most) {
        most = distance;
        furthest = row;
      }
    }
    return new Spread(counts[0], counts[1], mean, Math.sqrt(squares / counts[0]), furthest);
  }
}
