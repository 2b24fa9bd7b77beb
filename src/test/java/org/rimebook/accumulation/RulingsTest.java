package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.span;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;

class RulingsTest {

  private static List<Ruling> rulings(Entry... entries) {
    return Rulings.of(new Notebook(List.of(entries), List.of()));
  }

  private static Entry visit(double from, double to) {
    return new Entry.ServiceVisit(
        header("v"), span(from, to), List.of(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  @Test
  void aStrongerEntryCutsAWeakerOneInTwo() {
    assertThat(rulings(new Entry.LateCatch(header("l"), span(0, 10)), visit(4, 5)))
        .containsExactly(
            new Ruling(Ruling.Kind.LATE, span(0, 4), 0),
            new Ruling(Ruling.Kind.VISIT, span(4, 5), 0),
            new Ruling(Ruling.Kind.LATE, span(5, 10), 0));
  }

  @Test
  void aWeakerEntryWhollyUnderAStrongerOneIsGone() {
    assertThat(
            rulings(
                new Entry.DrySpell(header("d"), span(2, 3)),
                new Entry.Estimate(header("e"), span(1, 4), 2.5, "neighbour")))
        .containsExactly(new Ruling(Ruling.Kind.ESTIMATE, span(1, 4), 2.5));
  }

  @Test
  void ofTwoOverlappingEstimatesTheLaterWrittenHoldsWhole() {
    assertThat(
            rulings(
                new Entry.Estimate(header("e1"), span(0, 4), 1, "first guess"),
                new Entry.Estimate(header("e2"), span(3, 6), 2, "second guess")))
        .containsExactly(new Ruling(Ruling.Kind.ESTIMATE, span(3, 6), 2));
  }

  @Test
  void entriesThatSayNothingOfTimeMakeNoRuling() {
    assertThat(
            rulings(
                new Entry.Remark(header("r"), java.util.Optional.of(span(0, 1))),
                new Entry.DrySpell(header("d"), span(2, 3)),
                new Entry.Withdrawal(header("w"), "d")))
        .isEmpty();
  }
}
