package org.rimebook.desk.scatter;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickUnit;
import org.jfree.chart.axis.TickUnitSource;

/** Ticks at 1, 2 or 5 times a power of ten, all of an axis with the same decimals. */
final class Ticks implements TickUnitSource {

  private static final int[] STEPS = {1, 2, 5};
  private static final int LEAST_POWER = -6;

  @Override
  public TickUnit getLargerTickUnit(TickUnit unit) {
    return getCeilingTickUnit(unit.getSize() * 1.001);
  }

  @Override
  public TickUnit getCeilingTickUnit(TickUnit unit) {
    return getCeilingTickUnit(unit.getSize());
  }

  @Override
  public TickUnit getCeilingTickUnit(double size) {
    int power = LEAST_POWER;
    while (true) {
      for (int step : STEPS) {
        double candidate = power < 0 ? step / power(-power) : step * power(power);
        if (candidate >= size * (1 - 1e-9)) {
          return new NumberTickUnit(candidate, format(-power));
        }
      }
      power++;
    }
  }

  private static double power(int exponent) {
    return StrictMath.pow(10, exponent);
  }

  private static DecimalFormat format(int decimals) {
    DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
    format.setMinimumFractionDigits(Math.max(0, decimals));
    return format;
  }
}
