package org.rimebook.practice;

/**
 * What storms are like at an invented place.
 *
 * @param stormsPerWeek storms that start in a mean week
 * @param meanHours mean length of a storm [h]
 * @param meanMmPerHour mean intensity of rain [mm/h]; snow falls at 0.6 of it
 * @param drizzleShare share of storms that are drizzle of 0.05 mm/h, 0 to 1
 */
public record StormClimate(
    double stormsPerWeek, double meanHours, double meanMmPerHour, double drizzleShare) {}
