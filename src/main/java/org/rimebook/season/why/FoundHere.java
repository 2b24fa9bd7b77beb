package org.rimebook.season.why;

import java.util.List;
import org.rimebook.findings.Findings;
import org.rimebook.station.Interval;

/** What looks wrong in the time a total is about, and nobody has decided on. */
final class FoundHere {

  private FoundHere() {}

  /** Without lines where nothing was found. */
  static Section section(Findings findings, Interval held) {
    List<Line> lines =
        findings.open().stream()
            .filter(
                finding ->
                    finding.span().overlaps(held)
                        || finding.doubted().filter(held::overlaps).isPresent())
            .<Line>map(Line.OfFinding::new)
            .toList();
    return new Section("findings", lines);
  }
}
