package org.rimebook.station;

import java.util.Optional;

/**
 * Units a channel may be logged in (UCUM/SI strings) and the one unit each quantity has inside: °C,
 * m/s, V, %, m. Exact conversion factors: international yard (1 mi = 1609.344 m), international
 * nautical mile (1852 m), °F by definition.
 */
public enum Unit {
  DEG_C("degC", 1, 0, "degC"),
  DEG_F("degF", 5.0 / 9.0, -160.0 / 9.0, "degC"),
  KELVIN("K", 1, -273.15, "degC"),
  METRE_PER_SECOND("m/s", 1, 0, "m/s"),
  KILOMETRE_PER_HOUR("km/h", 1 / 3.6, 0, "m/s"),
  KNOT("kn", 1852.0 / 3600.0, 0, "m/s"),
  MILE_PER_HOUR("mph", 1609.344 / 3600.0, 0, "m/s"),
  VOLT("V", 1, 0, "V"),
  MILLIVOLT("mV", 1e-3, 0, "V"),
  PERCENT("%", 1, 0, "%"),
  METRE("m", 1, 0, "m"),
  CENTIMETRE("cm", 1e-2, 0, "m");

  private final String symbol;
  private final double factor;
  private final double offset;
  private final String insideSymbol;

  Unit(String symbol, double factor, double offset, String insideSymbol) {
    this.symbol = symbol;
    this.factor = factor;
    this.offset = offset;
    this.insideSymbol = insideSymbol;
  }

  /** The unit written as in the station sheet. */
  public static Optional<Unit> ofSymbol(String symbol) {
    for (Unit unit : values()) {
      if (unit.symbol.equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The symbol in the station sheet. */
  public String symbol() {
    return symbol;
  }

  /** The symbol of the unit values have inside, after {@link #toInside}. */
  public String insideSymbol() {
    return insideSymbol;
  }

  /** A logged value in the unit used inside; NaN stays NaN. */
  public double toInside(double logged) {
    return logged * factor + offset;
  }
}
