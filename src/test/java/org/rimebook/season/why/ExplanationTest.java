package org.rimebook.season.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

class ExplanationTest {

  private static final Entry BAD =
      new Entry.BadInterval(
          Bucket.header("a"), Bucket.span(20, 30), java.util.Set.of("w1"), BadReason.NOISE);

  private static Bucket bucket() {
    return Bucket.every(10, 60).level(Bucket.rain(20, 22, 2)).noise(0.02).entry(BAD);
  }

  private static Explanation hour(SeasonResult result, int index) {
    List<TotalRow> rows = result.totals(Resolution.HUNDREDTH).hourly();
    return Explanation.of(result, rows, rows.get(index), Resolution.HUNDREDTH);
  }

  private static List<Line> lines(Explanation explanation, String label) {
    return explanation.sections().stream()
        .filter(section -> section.label().equals(label))
        .flatMap(section -> section.lines().stream())
        .toList();
  }

  @Test
  void anEntryThatTouchesTheTotalIsNamedWithItsSpan() {
    assertThat(lines(hour(bucket().result(), 21), "entries"))
        .containsExactly(new Line.OfEntry(BAD, Bucket.span(20, 30)));
    assertThat(lines(hour(bucket().result(), 40), "entries"))
        .containsExactly(new Line.Words("none touches it"));
  }

  @Test
  void aFindingThatTouchesTheTimeOfTheTotalIsNamedWithItsSpanAndReason() {
    SeasonResult result = bucket().silent(30, 34).result();
    assertThat(result.findings().open())
        .anySatisfy(finding -> assertThat(finding.span().overlaps(Bucket.span(31, 32))).isTrue());
    assertThat(lines(hour(result, 31), "findings"))
        .isNotEmpty()
        .allSatisfy(
            line ->
                assertThat(((Line.OfFinding) line).finding().span().overlaps(Bucket.span(31, 32)))
                    .isTrue());
    assertThat(lines(hour(result, 10), "findings")).isEmpty();
  }

  @Test
  void everyWireTellsItsReadings() {
    List<Line> wires = lines(hour(bucket().result(), 21), "wires");
    assertThat(wires)
        .extracting(line -> ((Line.OfWire) line).wire())
        .containsExactly("w0", "w1", "w2");
    assertThat(((Line.OfWire) wires.get(1)).words())
        .isEqualTo("0 readings used, left out: 6 bad-interval");
    assertThat(((Line.OfWire) wires.get(0)).words())
        .contains("6 readings used, none left out", "from their mean");
  }

  @Test
  void thePiecesAddUpToTheCatchOfTheHour() {
    SeasonResult result = bucket().result();
    double sum =
        lines(hour(result, 21), "pieces").stream()
            .mapToDouble(line -> ((Line.OfPiece) line).catchMm())
            .sum();
    assertThat(sum).isBetween(1.7, 2.3);
  }

  @Test
  void theAdjustmentNamesItsPaperOrWhatLacks() {
    Explanation windy = hour(bucket().weather(hour -> -5, 4).result(), 21);
    assertThat(windy.adjusted().lines().toString())
        .contains("for what the wind carried past", "Kochendorfer et al. 2017");
    assertThat(hour(bucket().result(), 21).adjusted().lines())
        .containsExactly(new Line.Words("not adjusted for wind: the station measures no wind"));
  }

  @Test
  void explainingTwiceGivesEqualValues() {
    SeasonResult result = bucket().result();
    assertThat(hour(result, 21)).isEqualTo(hour(result, 21)).isNotEqualTo(hour(result, 22));
  }
}
