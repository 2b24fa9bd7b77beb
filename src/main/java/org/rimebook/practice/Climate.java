package org.rimebook.practice;

/**
 * What the weather is like at an invented place.
 *
 * @param meanDegC mean air temperature of the year [°C]
 * @param seasonalSwingDegC half the range from coldest (mid January) to warmest month [°C]
 * @param diurnalSwingDegC half the range of a clear day [°C]
 * @param synopticSdDegC standard deviation of the swings from one air mass to the next [°C]
 * @param windMeanMs mean wind speed at sensor height [m/s]
 */
public record Climate(
    double meanDegC,
    double seasonalSwingDegC,
    double diurnalSwingDegC,
    double synopticSdDegC,
    double windMeanMs) {}
