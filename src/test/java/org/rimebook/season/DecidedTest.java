package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.findings.Findings;
import org.rimebook.findings.Scene;
import org.rimebook.findings.Settled;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.InputException;
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
    List<Decided> decided = Decided.in(silent().entry(dismissal).result().stage(), Progress.NONE);
    assertThat(decided).containsExactly(new Decided(gap, dismissal));
  }

  @Test
  void withoutEntriesNothingIsDecided() {
    assertThat(Decided.in(silent().result().stage(), Progress.NONE)).isEmpty();
  }

  /** Checks that can't tell are left out on the way; the others find what they find with them. */
  @ParameterizedTest
  @ValueSource(strings = {"hard-winter", "windy-ridge", "quiet-valley"})
  void whatIsDecidedIsAllThatIsFoundInTheRecordAloneAndAnEntrySettles(String sample)
      throws InputException {
    SeasonDepths depths =
        SeasonDepths.of(Season.open(Path.of("sample-sets", sample)), Progress.NONE);
    Settled settled = new Settled(depths.season().notebook());
    Scene bare = Scene.of(depths.facts(), Notebook.EMPTY);
    List<Finding> all =
        Findings.in(bare, Progress.NONE).open().stream()
            .filter(finding -> settled.by(finding).isPresent())
            .toList();
    assertThat(Decided.in(depths, Progress.NONE)).extracting(Decided::finding).isEqualTo(all);
  }
}
