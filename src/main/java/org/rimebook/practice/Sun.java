package org.rimebook.practice;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/**
 * Where the sun stands, from the declination −23.44° cos(360°(day + 10)/365) and the hour angle of
 * station time; good to about a degree, which is all shade and warmth need (common practice).
 *
 * @param elevationSine sine of the elevation; negative at night
 * @param azimuthDeg degrees clockwise from north, 0 to 360
 */
record Sun(double elevationSine, double azimuthDeg) {

  private static final double OBLIQUITY_DEG = 23.44;
  private static final double FULL_CIRCLE_DEG = 360;

  static Sun at(long epochMs, double latitudeDeg, ZoneOffset offset) {
    OffsetDateTime time = Instant.ofEpochMilli(epochMs).atOffset(offset);
    double turn = 2 * StrictMath.PI * (time.getDayOfYear() + 10) / 365;
    double declination = -StrictMath.toRadians(OBLIQUITY_DEG) * StrictMath.cos(turn);
    double hours = time.toLocalTime().toSecondOfDay() / 3600.0;
    double hourAngle = StrictMath.toRadians(15 * (hours - 12));
    double latitude = StrictMath.toRadians(latitudeDeg);
    double sine =
        StrictMath.sin(latitude) * StrictMath.sin(declination)
            + StrictMath.cos(latitude) * StrictMath.cos(declination) * StrictMath.cos(hourAngle);
    double east = -StrictMath.cos(declination) * StrictMath.sin(hourAngle);
    double north =
        StrictMath.cos(latitude) * StrictMath.sin(declination)
            - StrictMath.sin(latitude) * StrictMath.cos(declination) * StrictMath.cos(hourAngle);
    double azimuthDeg = StrictMath.toDegrees(StrictMath.atan2(east, north));
    return new Sun(sine, azimuthDeg < 0 ? azimuthDeg + FULL_CIRCLE_DEG : azimuthDeg);
  }
}
