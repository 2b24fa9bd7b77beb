package org.rimebook.desk.model;

import java.util.Optional;
import org.rimebook.station.Unit;

/**
 * What is taken from a column.
 *
 * @param role what it holds
 * @param unit unit it is logged in; present for a channel only
 * @param heightText height of its sensor above ground [m] as entered; may be blank
 */
public record ColumnUse(ColumnRole role, Optional<Unit> unit, String heightText) {

  /** Nothing is taken. */
  static final ColumnUse NONE = ColumnUse.of(ColumnRole.UNUSED);

  /** A role, in its usual unit. */
  public static ColumnUse of(ColumnRole role) {
    return new ColumnUse(role, role.units().stream().findFirst(), "");
  }

  /** Logged in another unit. */
  public ColumnUse in(Unit other) {
    return new ColumnUse(role, Optional.of(other), heightText);
  }

  /** With the sensor at another height. */
  public ColumnUse at(String height) {
    return new ColumnUse(role, unit, height);
  }

  /** What is wrong with the height, in words; empty when nothing is. */
  public Optional<String> heightFault() {
    boolean fine =
        heightText.isBlank() || Numbers.read(heightText).orElse(-1) > 0 || !takesHeight();
    return fine ? Optional.empty() : Optional.of("Write metres above ground, like 10");
  }

  /** Whether the height of the sensor matters. */
  public boolean takesHeight() {
    return role == ColumnRole.WIND_SPEED;
  }
}
