package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.span;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;

class LaneSpanTest {

  private static Entry dry(String id, double from, double to) {
    return new Entry.DrySpell(header(id), span(from, to));
  }

  private static List<LaneSpan> spans(long shortestMs, Entry... entries) {
    return LaneSpan.of(new Notebook(List.of(entries), List.of()), List.of(), List.of(), shortestMs);
  }

  @Test
  void entriesThatOverlapStandInRowsAndOthersInTheFirst() {
    assertThat(spans(0, dry("a", 0, 2), dry("b", 1, 3), dry("c", 2, 4), dry("d", 5, 6)))
        .extracting(LaneSpan::row)
        .containsExactly(0, 1, 0, 0);
  }

  @Test
  void entriesTooShortToSeeTakeUpRoom() {
    assertThat(spans(3_600_000, dry("a", 0, 0.1), dry("b", 0.5, 0.6)))
        .extracting(LaneSpan::row)
        .containsExactly(0, 1);
  }

  @Test
  void moreThanTheMostRowsShareTheLast() {
    assertThat(
            spans(
                0, dry("a", 0, 9), dry("b", 1, 9), dry("c", 2, 9), dry("d", 3, 9), dry("e", 4, 9)))
        .extracting(LaneSpan::row)
        .containsExactly(0, 1, 2, 3, 3);
  }

  @Test
  void withdrawnEntriesAndEntriesAboutNoTimeAreNotThere() {
    Entry withdrawal = new Entry.Withdrawal(header("w"), "a");
    Entry remark = new Entry.Remark(header("r"), Optional.empty());
    assertThat(spans(0, dry("a", 0, 1), withdrawal, remark)).isEmpty();
  }

  @Test
  void aDraftStandsInPlaceOfItsEntry() {
    Notebook notebook = new Notebook(List.of(dry("a", 0, 1)), List.of());
    assertThat(LaneSpan.of(notebook, List.of(dry("a", 0, 3)), List.of(), 0))
        .singleElement()
        .satisfies(s -> assertThat(s.interval()).isEqualTo(span(0, 3)))
        .satisfies(s -> assertThat(s.drafted()).isTrue());
  }

  @Test
  void onlyWhatLeavesReadingsOutIsHatched() {
    assertThat(spans(0, KeptSeason.noise(0, 1), dry("a", 2, 3)))
        .extracting(LaneSpan::leavesOut)
        .containsExactly(true, false);
  }

  @Test
  void aFindingStandsAmongTheEntriesUnderItsOwnName() {
    Finding gap =
        Finding.harmless(
            FindingKind.GAP, Finding.Subject.bucket(span(1, 3)), "silent", 0.5, dry("", 1, 2));
    assertThat(
            LaneSpan.of(
                new Notebook(List.of(dry("a", 0, 2)), List.of()), List.of(), List.of(gap), 0))
        .extracting(LaneSpan::word, LaneSpan::row, LaneSpan::interval)
        .containsExactly(tuple("Dry spell", 0, span(0, 2)), tuple("No readings", 1, span(1, 3)));
  }
}
