package org.rimebook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class NotebookComparisonTest {

  private static final List<String> WIRES = List.of("north", "south");

  private static Entry.Header header(String id, String note) {
    return new Entry.Header(id, "2025-02-01T12:00:00-07:00", id, note);
  }

  private static Entry bad(String id, Interval span, BadReason reason, String... wires) {
    return new Entry.BadInterval(header(id, "said by " + id), span, Set.of(wires), reason);
  }

  private static Interval span(long from, long to) {
    return new Interval(from, to);
  }

  private static List<EntryDifference> compare(List<Entry> mine, List<Entry> theirs) {
    return NotebookComparison.of(
        new Notebook(mine, List.of()), new Notebook(theirs, List.of()), WIRES);
  }

  @Test
  void entriesThatSayTheSameAreEqualThoughIdsWritersAndNotesDiffer() {
    assertThat(
            compare(
                List.of(bad("a", span(1, 5), BadReason.NOISE, "north")),
                List.of(bad("b", span(1, 5), BadReason.NOISE, "north"))))
        .isEmpty();
  }

  @Test
  void allWiresListedAreAllWires() {
    assertThat(
            compare(
                List.of(bad("a", span(1, 5), BadReason.NOISE)),
                List.of(bad("b", span(1, 5), BadReason.NOISE, "north", "south"))))
        .isEmpty();
  }

  @Test
  void theSameTimeJudgedOtherwiseIsOnePair() {
    Entry mine = bad("a", span(1, 5), BadReason.NOISE, "north");
    Entry reason = bad("b", span(1, 5), BadReason.POWER, "north");
    Entry kind = new Entry.LateCatch(header("c", ""), span(1, 5));
    EntryDifference.Kind otherwise = EntryDifference.Kind.OTHER_MEANING;
    for (Entry theirs : List.of(reason, kind)) {
      assertThat(compare(List.of(mine), List.of(theirs)))
          .containsExactly(new EntryDifference(otherwise, Optional.of(mine), Optional.of(theirs)));
    }
  }

  @Test
  void theSameKindWithOtherEdgesIsOnePair() {
    Entry mine = bad("a", span(1, 5), BadReason.NOISE);
    Entry theirs = bad("b", span(2, 6), BadReason.NOISE);
    assertThat(compare(List.of(mine), List.of(theirs)))
        .containsExactly(
            new EntryDifference(
                EntryDifference.Kind.OTHER_SPAN, Optional.of(mine), Optional.of(theirs)));
  }

  @Test
  void whatOnlyOneHasComesInOrderOfTimeAndWithoutATimeLast() {
    Entry finding = new Entry.Dismissal(header("d", ""), "spike-1");
    Entry late = new Entry.LateCatch(header("l", ""), span(10, 20));
    Entry dry = new Entry.DrySpell(header("y", ""), span(1, 5));
    assertThat(compare(List.of(finding, late), List.of(dry)))
        .extracting(EntryDifference::kind)
        .containsExactly(
            EntryDifference.Kind.ONLY_THEIRS,
            EntryDifference.Kind.ONLY_MINE,
            EntryDifference.Kind.ONLY_MINE);
  }

  @Test
  void anEntryThereTwiceAndHereOnceDiffersOnce() {
    Entry a = bad("a", span(1, 5), BadReason.NOISE);
    assertThat(compare(List.of(a), List.of(a, bad("b", span(1, 5), BadReason.NOISE)))).hasSize(1);
  }

  @Test
  void withdrawnEntriesAndSignOffsDontCount() {
    Entry a = bad("a", span(1, 5), BadReason.NOISE);
    Entry gone = new Entry.Withdrawal(header("w", ""), "a");
    Entry signed = new Entry.SignOff(header("s", ""), "r", "s", List.of());
    assertThat(compare(List.of(a, gone, signed), List.of())).isEmpty();
  }
}
