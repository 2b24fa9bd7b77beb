package org.rimebook.desk.model.against;

/** The readings of a record as points of a plot, one a row. */
public interface Points {

  /** Along x; NaN where the row has no point. */
  double x(int row);

  /** Along y; NaN where the row has no point. */
  double y(int row);

  /** Whether the readings the point is made of are used. */
  boolean used(int row);

  /** What the point departs by from where it should be [mm]; NaN where the row has no point. */
  double departureMm(int row);
}
