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
    Sums sums = new Sums();
    int leftOut = 0;
    for (int row = span.from(); row < span.to(); row++) {
      double departureMm = points.departureMm(row);
      if (Double.isNaN(departureMm)) {
        continue;
      }
      if (points.used(row)) {
        sums.add(row, departureMm);
      } else {
        leftOut++;
      }
    }
    return sums.spread(leftOut);
  }

  /** About the first departure, so that squares don't lose digits. */
  private static final class Sums {
    private int used;
    private double firstMm;
    private double sumMm;
    private double squaresMm2;
    private double leastMm = Double.POSITIVE_INFINITY;
    private double mostMm = Double.NEGATIVE_INFINITY;
    private int leastRow = -1;
    private int mostRow = -1;

    void add(int row, double departureMm) {
      if (used++ == 0) {
        firstMm = departureMm;
      }
      double about = departureMm - firstMm;
      sumMm += about;
      squaresMm2 += about * about;
      if (departureMm < leastMm) {
        leastMm = departureMm;
        leastRow = row;
      }
      if (departureMm > mostMm) {
        mostMm = departureMm;
        mostRow = row;
      }
    }

    /** The one furthest from the mean is the least or the most. */
    Spread spread(int leftOut) {
      double about = sumMm / used;
      double meanMm = firstMm + about;
      double sdMm = Math.sqrt(Math.max(0, squaresMm2 / used - about * about));
      int furthest = meanMm - leastMm > mostMm - meanMm ? leastRow : mostRow;
      return new Spread(
          used, leftOut, used == 0 ? Double.NaN : meanMm, used == 0 ? Double.NaN : sdMm, furthest);
    }
  }
}
