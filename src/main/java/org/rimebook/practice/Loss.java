package org.rimebook.practice;

/** Water that leaves the bucket unseen. */
interface Loss {

  /** Loss over the step that ends with a reading [mm]. */
  double lossMm(Surroundings around, int index);
}
