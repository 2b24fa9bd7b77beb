package org.rimebook.export.figure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rimebook.station.Channel;

/** What one strip of a figure shows. */
public enum FigureStrip {
  /** Frequency of each wire. */
  FREQUENCY("frequency", "Frequency (Hz)", 2),
  /** Depth of each wire and of the bucket. */
  DEPTH("depth", "Depth (mm)", 3),
  /** Catch since the start of the figure. */
  CATCH("catch", "Accumulated catch (mm)", 3),
  /** Catch and adjusted catch of the hours that could be adjusted. */
  ADJUSTED("adjusted", "Accumulated, hours with wind and temperature (mm)", 3),
  /** Hourly totals. */
  HOURLY("hourly", "Hourly catch (mm)", 2),
  /** Daily totals. */
  DAILY("daily", "Daily catch (mm)", 2),
  /** Daily totals of another station. */
  NEIGHBOUR("neighbour", "Neighbour's daily catch (mm)", 2),
  /** Air temperature. */
  TEMPERATURE("temperature", "Air temperature (°C)", 1.3),
  /** Wind speed. */
  WIND("wind", "Wind speed (m/s)", 1.3),
  /** Relative humidity. */
  HUMIDITY("humidity", "Relative humidity (%)", 1.3),
  /** Supply voltage. */
  SUPPLY("supply", "Supply voltage (V)", 1.3);

  /** Strips that one word asks for together. */
  public static final String WEATHER = "weather";

  private final String code;
  private final String axis;
  private final double weight;

  FigureStrip(String code, String axis, double weight) {
    this.code = code;
    this.axis = axis;
    this.weight = weight;
  }

  /** The word it is asked for by. */
  public String code() {
    return code;
  }

  /** What stands at its axis: the quantity and its unit. */
  public String axis() {
    return axis;
  }

  /** Its height relative to other strips. */
  double weight() {
    return weight;
  }

  /** The quantity of the station sheet it shows, when it shows one of the weather or the supply. */
  public Optional<String> quantity() {
    return Optional.ofNullable(
        switch (this) {
          case TEMPERATURE -> Channel.AIR_TEMPERATURE;
          case WIND -> Channel.WIND_SPEED;
          case HUMIDITY -> Channel.RELATIVE_HUMIDITY;
          case SUPPLY -> Channel.SUPPLY_VOLTAGE;
          default -> null;
        });
  }

  /** The strips of a season by itself that a word asks for; none when no strip is called so. */
  public static List<FigureStrip> named(String word) {
    return word.equals(WEATHER)
        ? weather()
        : own().filter(strip -> strip.code.equals(word)).toList();
  }

  /** The strips of a season by itself. */
  private static Stream<FigureStrip> own() {
    return Stream.of(values()).filter(strip -> strip != NEIGHBOUR);
  }

  /** The strips of the weather. */
  public static List<FigureStrip> weather() {
    return List.of(TEMPERATURE, WIND);
  }

  /** Every word a strip is asked for by. */
  public static List<String> words() {
    return Stream.concat(own().map(FigureStrip::code), Stream.of(WEATHER)).toList();
  }
}
