package org.rimebook.desk.model;

import java.util.List;
import java.util.Optional;
import org.rimebook.findings.Finding;

/**
 * What is left to decide.
 *
 * @param looked whether the season has been looked at; if not, nothing is known of it yet
 * @param open the findings nobody has decided on, in the order they are walked
 * @param reviewed the one under review, one of them
 */
public record FindingsLeft(boolean looked, List<Finding> open, Optional<Finding> reviewed) {

  /** Nothing is known. */
  public static final FindingsLeft UNKNOWN = new FindingsLeft(false, List.of(), Optional.empty());

  public FindingsLeft {
    open = List.copyOf(open);
  }

  /** Whether a finding is the one under review. */
  public boolean reviews(Finding finding) {
    return reviewed.filter(finding::equals).isPresent();
  }

  /** Where the walk is, for example "3 of 11"; empty while none is under review. */
  public String position() {
    return reviewed.map(now -> (open.indexOf(now) + 1) + " of " + open.size()).orElse("");
  }

  /** How many are left, in words. */
  public String count() {
    if (!looked) {
      return "Looking for what is wrong\u2026";
    }
    return switch (open.size()) {
      case 0 -> "Nothing is left to decide";
      case 1 -> "1 finding left";
      default -> open.size() + " findings left";
    };
  }

  FindingsLeft reviewing(Optional<Finding> finding) {
    return new FindingsLeft(looked, open, finding);
  }
}
