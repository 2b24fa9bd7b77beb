package org.rimebook.findings;

import java.util.List;
import org.rimebook.fixture.Bucket;

/** What is found of a kind in a gauge whose level a test prescribes. */
final class Raised {

  private Raised() {}

  static List<Finding> in(Bucket gauge, FindingKind kind) {
    return gauge.result().findings().open().stream().filter(f -> f.kind() == kind).toList();
  }
}
