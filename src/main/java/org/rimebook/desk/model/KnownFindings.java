package org.rimebook.desk.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Settled;
import org.rimebook.notebook.Notebook;
import org.rimebook.season.SeasonResult;

/**
 * What was found in a season, with what has been decided on since: an undoing brings that back at
 * once.
 */
final class KnownFindings {

  private final Map<String, Finding> known = new LinkedHashMap<>();

  /** Takes what is found in a season computed throughout. */
  void take(SeasonResult result) {
    Settled settled = new Settled(result.season().notebook());
    known.values().removeIf(finding -> settled.by(finding).isEmpty());
    add(result.findings().open());
  }

  void add(List<Finding> findings) {
    findings.forEach(finding -> known.put(finding.id(), finding));
  }

  void clear() {
    known.clear();
  }

  /** What a notebook leaves open. */
  List<Finding> open(Notebook notebook) {
    return new Settled(notebook).open(List.copyOf(known.values()));
  }

  /** A finding as it was found last; it may be a little longer or shorter than before. */
  Optional<Finding> again(Finding finding) {
    return Optional.ofNullable(known.get(finding.id()))
        .or(
            () ->
                known.values().stream()
                    .filter(now -> now.kind() == finding.kind())
                    .filter(now -> now.wires().equals(finding.wires()))
                    .filter(now -> now.span().overlaps(finding.span()))
                    .findFirst());
  }
}
