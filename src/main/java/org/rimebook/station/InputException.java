package org.rimebook.station;

import java.util.List;
import java.util.stream.Collectors;

/** An input that can't be used as it stands, with every problem found in it. */
public final class InputException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * @param problems at least one
   */
  public InputException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** One problem. */
  public InputException(Problem problem) {
    this(List.of(problem));
  }

  /** The problems, in the order they were met. */
  public List<Problem> problems() {
    return problems;
  }
}
