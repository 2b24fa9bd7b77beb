package org.rimebook.accumulation;

import java.util.List;

/** Finds rulings by time in an ordered list that doesn't overlap. */
final class RulingSearch {

  private RulingSearch() {}

  /** Index of the first ruling that ends after an instant; the size when none does. */
  static int firstEndingAfter(List<Ruling> rulings, long epochMs) {
    int low = 0;
    int high = rulings.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rulings.get(middle).interval().toMs() > epochMs) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
