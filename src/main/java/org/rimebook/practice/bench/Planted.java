package org.rimebook.practice.bench;

import java.util.List;
import org.rimebook.findings.FindingKind;
import org.rimebook.station.Interval;

/**
 * A fault that was put into a winter.
 *
 * @param kind what a check should call it
 * @param span where it is
 * @param wires names of the wires it is about; empty = the bucket as a whole
 * @param due whether it has to be found; one that is too small may be found or not
 */
public record Planted(FindingKind kind, Interval span, List<String> wires, boolean due) {

  public Planted {
    wires = List.copyOf(wires);
  }
}
