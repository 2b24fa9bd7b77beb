package org.rimebook.practice.published;

/**
 * Pairwise comparison of the wires every five minutes, on the median depth of each.
 *
 * <p>Source: Baker, Buckner, Collins & Phillips 2005, NOAA Technical Note NCDC USCRN-05-1. Its
 * rules as far as they are known: a wire counts when its depth moved by at least 0.3 mm from the
 * depth before; two wires agree when their increments differ by at most 0.3 mm; when all pairs of
 * three agree the increment is the median, when two pairs do it is that of the wire common to both,
 * which is the median again; an increment above 25 mm makes the five minutes missing.
 *
 * <p>Ours, where they are silent. The depth before is each wire's depth when an increment was last
 * accepted, so that light precipitation adds up. When only one pair agrees, be it of two wires or
 * of three, the increment is that pair's mean. A wire that counts alone is believed when no other
 * has a reading, and waits otherwise. Three that count and of which none agree wait too, an hour at
 * most; then, or when an increment is too large, nothing is recorded and all depths start anew.
 * Negative increments move the depths and aren't catch. A wire without a reading when depths start
 * anew joins with its next one. The rule on the spread of frequency within the hour needs
 * frequencies and is left out. A gauge with more than three wires is judged by its first three.
 */
public final class ThreeWirePairwise implements CatchMethod {

  private static final int MOST_WIRES = 3;

  @Override
  public String name() {
    return "three-wire pairwise";
  }

  @Override
  public double[] hourlyCatchMm(WireLevels levels, HourGrid grid) {
    WireLevels medians = FiveMinuteMedians.of(levels);
    double[] hourly = new double[grid.hours()];
    double[] depthMm = new double[Math.min(MOST_WIRES, medians.wires())];
    PairwiseReference reference = new PairwiseReference(depthMm.length);
    for (int row = 0; row < medians.size(); row++) {
      for (int wire = 0; wire < depthMm.length; wire++) {
        depthMm[wire] = medians.depthMm(wire, row);
      }
      grid.add(hourly, medians.stampMs(row), Math.max(0, reference.take(depthMm)));
    }
    return hourly;
  }
}
