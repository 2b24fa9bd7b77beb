package org.rimebook.findings;

import java.util.List;

/** One way to look at a season. A pure function; it never edits anything. */
public interface Check {

  /** What it finds. */
  FindingKind kind();

  /** How it finds it and where the method comes from, in words for a reader of the season. */
  String method();

  /**
   * What it finds, in the order of time.
   *
   * @param scene the season as far as it is sorted out
   */
  List<Finding> look(Scene scene);

  /**
   * Whether nothing else hangs on what it finds: it never proposes more than a remark, and no other
   * check asks whether it found something.
   */
  default boolean aside() {
    return false;
  }
}
