package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Interval;

class SettledTest {

  private static final Finding LATE =
      doubting(
          FindingKind.CAPPING,
          Finding.Subject.bucket(Bucket.span(10, 20)),
          Proposals.late(Bucket.span(10, 20), ""));

  private static final Finding DRIFT =
      doubting(
          FindingKind.DRIFTING_WIRE,
          Finding.Subject.wire(Bucket.span(10, 20), "w1"),
          Proposals.bad(Bucket.span(10, 20), List.of("w1"), BadReason.WIRE_FAULT, ""));

  private static Finding doubting(FindingKind kind, Finding.Subject subject, Entry proposal) {
    return Finding.doubting(kind, subject, "because", 0.5, proposal);
  }

  private static boolean settles(Entry entry, Finding finding) {
    return new Settled(new Notebook(List.of(entry), List.of())).open(List.of(finding)).isEmpty();
  }

  private static Entry late(double from, double to) {
    return new Entry.LateCatch(Bucket.header("l"), Bucket.span(from, to));
  }

  private static Entry bad(Set<String> wires) {
    return new Entry.BadInterval(
        Bucket.header("b"), Bucket.span(10, 20), wires, BadReason.WIRE_FAULT);
  }

  private static Entry dismissal(String id) {
    return new Entry.Dismissal(Bucket.header("d"), id);
  }

  @Test
  void theProposedKindOverMostOfTheSpanSettles() {
    assertThat(settles(late(9, 16), LATE)).isTrue();
    assertThat(settles(late(9, 14), LATE)).isFalse();
  }

  @Test
  void anotherKindDoesNotSettle() {
    assertThat(settles(new Entry.DrySpell(Bucket.header("x"), Bucket.span(9, 21)), LATE)).isFalse();
  }

  @Test
  void anEntryAboutAnotherWireDoesNotSettle() {
    assertThat(settles(bad(Set.of("w0")), DRIFT)).isFalse();
    assertThat(settles(bad(Set.of("w0", "w1")), DRIFT)).isTrue();
    assertThat(settles(bad(Set.of()), DRIFT)).isTrue();
  }

  @Test
  void aRemarkSettlesNothing() {
    Entry remark = Proposals.remark(Bucket.span(10, 20), "seen");
    Finding finding =
        doubting(FindingKind.EVAPORATION, Finding.Subject.bucket(Bucket.span(10, 20)), remark);
    assertThat(settles(remark, finding)).isFalse();
    assertThat(settles(dismissal(finding.id()), finding)).isTrue();
  }

  @Test
  void aDismissalHoldsWhenTheFindingComesBackALittleLonger() {
    Entry dismissed = dismissal(LATE.id());
    assertThat(settles(dismissed, over(8, 21))).isTrue();
    assertThat(settles(dismissed, over(18, 40))).isFalse();
  }

  private static Finding over(double from, double to) {
    Interval span = Bucket.span(from, to);
    return doubting(FindingKind.CAPPING, Finding.Subject.bucket(span), Proposals.late(span, ""));
  }

  @Test
  void aDismissalOfOneKindOrWireLeavesOthers() {
    assertThat(settles(dismissal(LATE.id()), DRIFT)).isFalse();
    assertThat(settles(dismissal(DRIFT.id().replace("w1", "w2")), DRIFT)).isFalse();
    assertThat(settles(dismissal(DRIFT.id()), DRIFT)).isTrue();
  }

  @Test
  void aDismissalOfTwoWiresDismissesEachButNotTheBucket() {
    String both = DRIFT.id().replace("w1", "w0+w1");
    Finding bucket =
        doubting(FindingKind.DRIFTING_WIRE, Finding.Subject.bucket(DRIFT.span()), DRIFT.proposal());
    assertThat(settles(dismissal(both), DRIFT)).isTrue();
    assertThat(settles(dismissal(DRIFT.id().replace("w1", "w0+w2")), DRIFT)).isFalse();
    assertThat(settles(dismissal(both), bucket)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/",
        "capping",
        "capping/x/y",
        "capping/2025-01-10T17:00:00Z/2025-01-10T07:00:00Z",
        "capping/2025-01-10T17:00:00Z",
        "///"
      })
  void aDismissalOfNothingKnownSettlesNothing(String id) {
    assertThat(settles(dismissal(id), LATE)).isFalse();
  }

  @Test
  void aWithdrawnEntryDoesNotCount() {
    Notebook notebook =
        new Notebook(
            List.of(late(10, 20), new Entry.Withdrawal(Bucket.header("w"), "l")), List.of());
    assertThat(new Settled(notebook).open(List.of(LATE))).containsExactly(LATE);
  }
}
