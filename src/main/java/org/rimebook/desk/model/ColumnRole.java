package org.rimebook.desk.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rimebook.station.Channel;
import org.rimebook.station.Unit;

/** What a column of a logger file may hold. */
public enum ColumnRole {
  UNUSED("not used", ""),
  TIME("time", ""),
  WIRE("a wire", ""),
  AIR_TEMPERATURE("air temperature", Channel.AIR_TEMPERATURE),
  WIND_SPEED("wind speed", Channel.WIND_SPEED),
  HUMIDITY("relative humidity", "relative_humidity"),
  SNOW_DEPTH("depth of snow", Channel.SNOW_DEPTH),
  SUPPLY_VOLTAGE("supply voltage", Channel.SUPPLY_VOLTAGE);

  private final String words;
  private final String quantity;

  ColumnRole(String words, String quantity) {
    this.words = words;
    this.quantity = quantity;
  }

  /** The role of a quantity; empty when there is none for it. */
  static Optional<ColumnRole> ofQuantity(String quantity) {
    return Stream.of(values())
        .filter(role -> role.isChannel() && role.quantity.equals(quantity))
        .findFirst();
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }

  /** Whether it is a quantity beside the wires. */
  public boolean isChannel() {
    return !quantity.isEmpty();
  }

  /** The quantity as the station sheet names it; empty text unless it is a channel. */
  String quantity() {
    return quantity;
  }

  /** Units such a column may be logged in, the usual first; none unless it is a channel. */
  public List<Unit> units() {
    if (!isChannel()) {
      return List.of();
    }
    String inside = Channel.insideUnit(quantity).orElse(Unit.PERCENT.insideSymbol());
    return Stream.of(Unit.values()).filter(unit -> unit.insideSymbol().equals(inside)).toList();
  }
}
