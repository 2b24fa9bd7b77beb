package org.rimebook.desk.strip;

import java.awt.Color;
import java.util.Set;
import org.rimebook.desk.look.Look;

/**
 * Which wires are drawn strongly.
 *
 * @param chosen names of the wires chosen; empty = all
 */
record Emphasis(Set<String> chosen) {

  private static final double BEHIND = 0.35;

  /** Whether a wire is to be drawn over the others. */
  boolean isChosen(String wire) {
    return chosen.contains(wire);
  }

  /** A wire's colour: its own, or nearer to the paper when others are chosen. */
  Color of(String name, int wire) {
    if (wire < 0) {
      return name.isEmpty() ? Look.weather() : Look.ink();
    }
    Color own = Look.wire(wire);
    return chosen.isEmpty() || chosen.contains(name) ? own : mixed(own, Look.paper(), BEHIND);
  }

  /** A colour between two, so much of the first; opaque, as that draws fastest. */
  static Color mixed(Color some, Color rest, double share) {
    return new Color(
        (int) Math.round(some.getRed() * share + rest.getRed() * (1 - share)),
        (int) Math.round(some.getGreen() * share + rest.getGreen() * (1 - share)),
        (int) Math.round(some.getBlue() * share + rest.getBlue() * (1 - share)));
  }
}
