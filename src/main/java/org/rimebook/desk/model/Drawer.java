package org.rimebook.desk.model;

/** What slides in under the strips. */
public enum Drawer {
  CLOSED,
  /** The totals table. */
  TOTALS,
  /** Raw against derived. */
  AGAINST,
  /** Two notebooks of one season. */
  COMPARE
}
