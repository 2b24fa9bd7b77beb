package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.totals.Quality;

class GapCheckTest {

  private static List<Finding> gaps(Bucket bucket) {
    return bucket.result().findings().open().stream()
        .filter(finding -> finding.kind() == FindingKind.GAP)
        .toList();
  }

  @Test
  void aGapIsFoundFromTheFirstReadingMissingToTheNextOneThere() {
    Bucket bucket = Bucket.every(1, 72).noise(0.02).silent(30, 35.5);
    assertThat(gaps(bucket))
        .singleElement()
        .satisfies(
            gap -> {
              assertThat(gap.span()).isEqualTo(Bucket.span(30 + 1 / 60.0, 35.5));
              assertThat(gap.reason()).startsWith("No readings for 5 h 29 min. The level ");
            });
  }

  @Test
  void whatTheBucketGainedInAGapIsTold() {
    Bucket bucket = Bucket.every(1, 72).level(Bucket.rain(31, 33, 1.6)).silent(30, 35);
    assertThat(gaps(bucket))
        .singleElement()
        .extracting(Finding::reason)
        .asString()
        .contains("The level rose by 3.20 mm across it");
  }

  @Test
  void aGapLeavesTheTotalsAsTheyAre() {
    Bucket bucket = Bucket.every(1, 72).level(Bucket.rain(31, 33, 1.6)).silent(30, 35);
    assertThat(gaps(bucket)).allSatisfy(gap -> assertThat(gap.doubted()).isEmpty());
    assertThat(bucket.totals().hourly()).noneMatch(row -> row.quality() == Quality.SUSPECT);
  }

  @Test
  void aFewReadingsLostAreNoGap() {
    assertThat(gaps(Bucket.every(1, 72).silent(30, 30.2))).isEmpty();
    assertThat(gaps(Bucket.every(30, 72).silent(30, 31.4))).isEmpty();
  }

  @Test
  void aGapSomebodyHasExplainedIsNotRaised() {
    Bucket bucket = Bucket.every(1, 72).silent(30, 35);
    Entry visit =
        new Entry.ServiceVisit(
            Bucket.header("a"),
            Bucket.span(29.5, 35.5),
            List.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    assertThat(gaps(bucket.entry(visit))).isEmpty();
  }

  @Test
  void acceptingWhatIsProposedSettlesIt() {
    Finding gap = gaps(Bucket.every(1, 72).silent(30, 35)).get(0);
    assertThat(gap.proposal())
        .isEqualTo(
            new Entry.BadInterval(
                new Entry.Header("", "", "", "No readings."),
                gap.span(),
                Set.of(),
                BadReason.LOGGER));
    assertThat(gaps(Bucket.every(1, 72).silent(30, 35).entry(gap.proposal()))).isEmpty();
  }

  @Test
  void dismissingItSettlesIt() {
    Finding gap = gaps(Bucket.every(1, 72).silent(30, 35)).get(0);
    Entry dismissal = new Entry.Dismissal(Bucket.header("d"), gap.id());
    assertThat(gaps(Bucket.every(1, 72).silent(30, 35).entry(dismissal))).isEmpty();
  }
}
