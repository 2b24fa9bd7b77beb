package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Progress;

class DecidedTest {

  private static Bucket silent() {
    return Bucket.every(10, 24 * 6).noise(0.02).silent(50, 62);
  }

  @Test
  void aDismissedFindingIsKnownTogetherWithItsDismissal() {
    Finding gap =
        silent().result().findings().open().stream()
            .filter(finding -> finding.kind() == FindingKind.GAP)
            .findFirst()
            .orElseThrow();
    Entry dismissal = new Entry.Dismissal(Bucket.header("no"), gap.id());
    List<Decided> decided = Decided.in(silent().entry(dismissal).result(), Progress.NONE);
    assertThat(decided).containsExactly(new Decided(gap, dismissal));
  }

  @Test
  void withoutEntriesNothingIsDecided() {
    assertThat(Decided.in(silent().result(), Progress.NONE)).isEmpty();
  }
}
