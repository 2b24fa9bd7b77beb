package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Sources of chance by name: one season seed gives every effect its own stream, so that adding an
 * effect leaves the draws of the others as they were.
 */
public final class Chance {

  private static final long FNV_BASIS = 0xcbf29ce484222325L;
  private static final long FNV_PRIME = 0x100000001b3L;

  private Chance() {}

  /** The stream of that name. Commons Math draws without platform mathematics. */
  public static RandomGenerator of(long seed, String stream) {
    long hash = FNV_BASIS ^ seed;
    for (int i = 0; i < stream.length(); i++) {
      hash = (hash ^ stream.charAt(i)) * FNV_PRIME;
    }
    int[] words = {(int) (seed >>> 32), (int) seed, (int) (hash >>> 32), (int) hash};
    return new Well19937c(words);
  }
}
