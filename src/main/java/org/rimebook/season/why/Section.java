package org.rimebook.season.why;

import java.util.Arrays;
import java.util.List;

/**
 * Lines about one thing.
 *
 * @param label what they are about, a word or two
 * @param lines the lines, at least one
 */
public record Section(String label, List<Line> lines) {

  public Section {
    lines = List.copyOf(lines);
  }

  static Section of(String label, Line... lines) {
    return new Section(label, Arrays.asList(lines));
  }
}
