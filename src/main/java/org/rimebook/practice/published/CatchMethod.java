package org.rimebook.practice.published;

/**
 * A way from the depths of the wires to hourly catch. Readings that are missing are skipped; what
 * came in while there were none belongs to the hour of the first reading after.
 */
public interface CatchMethod {

  /** What the method is called in a table. */
  String name();

  /**
   * Catch of each hour.
   *
   * @param levels the depths
   * @param grid the hours; readings outside them count for none
   * @return catch by hour [mm], finite, one for each hour of the grid; zeros without readings
   */
  double[] hourlyCatchMm(WireLevels levels, HourGrid grid);
}
