package org.rimebook.desk.model;

import java.util.Optional;

/**
 * How one strip stands in the stack.
 *
 * @param kind what it shows
 * @param shown whether it is on screen
 * @param share its share of the height, relative to the other strips shown
 * @param fits whether its y-axis fits what is in view; otherwise it stays
 * @param axis the values a y-axis that stays spans; empty when it fits, and until that is known
 */
public record StripSetting(
    Kind kind, boolean shown, double share, boolean fits, Optional<Extent> axis) {

  /** With a y-axis of which no more is known. */
  public StripSetting(Kind kind, boolean shown, double share, boolean fits) {
    this(kind, shown, share, fits, Optional.empty());
  }

  /** What a strip shows. */
  public enum Kind {
    /** Frequency of each wire [Hz]. */
    FREQUENCY("frequency", "Frequency"),
    /** Depth of each wire and of the bucket [mm]. */
    DEPTH("depth", "Depth"),
    /** Catch [mm]. */
    CATCH("catch", "Catch"),
    /** Daily catch of a neighbouring station [mm]. */
    NEIGHBOUR("neighbour", "Neighbour's catch"),
    /** Air temperature [°C]. */
    TEMPERATURE("temperature", "Air temperature"),
    /** Wind speed [m/s]. */
    WIND("wind", "Wind speed"),
    /** Relative humidity [%]. */
    HUMIDITY("humidity", "Relative humidity"),
    /** Supply voltage [V]. */
    SUPPLY("supply", "Supply voltage");

    private final String code;
    private final String words;

    Kind(String code, String words) {
      this.code = code;
      this.words = words;
    }

    /** The word it is remembered by. */
    public String code() {
      return code;
    }

    /** Its name on screen. */
    public String words() {
      return words;
    }
  }

  /** On or off screen. */
  public StripSetting shown(boolean on) {
    return new StripSetting(kind, on, share, fits, axis);
  }

  /** With another share of the height. */
  public StripSetting sharing(double part) {
    return new StripSetting(kind, shown, part, fits, axis);
  }

  /** With a y-axis that stays over some values. */
  public StripSetting staying(Extent values) {
    return new StripSetting(kind, shown, share, false, Optional.of(values));
  }

  /** With a y-axis that fits, or stays as it will be found. */
  public StripSetting fitting(boolean fit) {
    return new StripSetting(kind, shown, share, fit);
  }
}
