package org.rimebook.station;

import java.util.OptionalDouble;

/**
 * The gauge itself.
 *
 * @param orificeAreaCm2 area of the orifice [cm²]
 * @param capacityMm depth at which the bucket is full [mm]
 * @param rimHeightM height of the orifice above ground [m]
 * @param windShield what stands around it
 */
public record Gauge(
    double orificeAreaCm2,
    OptionalDouble capacityMm,
    OptionalDouble rimHeightM,
    WindShield windShield) {}
