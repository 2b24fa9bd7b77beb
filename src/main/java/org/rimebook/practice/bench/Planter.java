package org.rimebook.practice.bench;

/** Puts faults into a winter. */
public interface Planter {

  /** A planter that leaves a winter as it is. */
  Planter NONE = planting -> {};

  /** Puts its faults into a winter. */
  void plant(Planting planting);
}
