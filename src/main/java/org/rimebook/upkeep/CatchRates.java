package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/**
 * How fast the bucket fills: sums of a season's own daily totals over runs of days, each run
 * starting a day after the last.
 *
 * @param medianMmPerDay rate exceeded in half of the runs [mm/d]
 * @param wetMmPerDay rate exceeded in a tenth of them [mm/d]
 * @param runDays length of a run [d]
 * @param runs number of runs; 0 when the rate was given
 */
public record CatchRates(double medianMmPerDay, double wetMmPerDay, int runDays, int runs) {

  /** Length of a run, and days that tell of a season at least; own choice. */
  private static final int RUN_DAYS = 30;

  private static final int LEAST_DAYS = 42;

  private static final double WET_PERCENT = 90;

  /**
   * One rate, given.
   *
   * @param mmPerDay rate [mm/d], above 0
   * @throws IllegalArgumentException when it isn't
   */
  public static CatchRates given(double mmPerDay) {
    if (!(mmPerDay > 0)) {
      throw new IllegalArgumentException("a rate is above 0 mm a day, not " + mmPerDay);
    }
    return new CatchRates(mmPerDay, mmPerDay, 1, 0);
  }

  /**
   * The rates of a season.
   *
   * @throws IllegalArgumentException in words when the season tells too little
   */
  public static CatchRates of(Totals totals) {
    List<TotalRow> days = known(totals.daily());
    if (days.size() < LEAST_DAYS) {
      throw new IllegalArgumentException(
          text(
              "rates need %d days of totals, and the season has %d; give a rate instead (on the command"
                  + " line, --wet-rate)",
              LEAST_DAYS, days.size()));
    }
    double[] sums = new double[days.size() - RUN_DAYS + 1];
    for (int from = 0; from < sums.length; from++) {
      for (int day = from; day < from + RUN_DAYS; day++) {
        sums[from] += days.get(day).catchUnits().orElse(0) * totals.resolution().mm();
      }
    }
    Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
    percentile.setData(Arrays.copyOf(sums, sums.length));
    return new CatchRates(
        percentile.evaluate(50) / RUN_DAYS,
        percentile.evaluate(WET_PERCENT) / RUN_DAYS,
        RUN_DAYS,
        sums.length);
  }

  /** Days that have a total, or whose catch a later one holds. */
  private static List<TotalRow> known(List<TotalRow> daily) {
    List<TotalRow> known = new ArrayList<>();
    long heldFromMs = Long.MAX_VALUE;
    for (int i = daily.size() - 1; i >= 0; i--) {
      TotalRow day = daily.get(i);
      heldFromMs = Math.min(heldFromMs, day.accumulatedSinceMs().orElse(Long.MAX_VALUE));
      boolean held = day.interval().toMs() > heldFromMs;
      if (day.catchUnits().isPresent() || held) {
        known.add(0, day);
      }
      if (day.interval().fromMs() <= heldFromMs) {
        heldFromMs = Long.MAX_VALUE;
      }
    }
    return known;
  }
}
