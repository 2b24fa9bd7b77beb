package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;

class SunMarkTest {

  private static final double FOUR_DAYS = 96;

  /** Wire 1 reads more from noon to six in the afternoon. */
  private static Bucket sunny(Bucket bucket, int day, double byMm) {
    return bucket.pull(1, 24 * day + 12, byMm).pull(1, 24 * day + 18, -byMm);
  }

  private static SunMark mark(Bucket bucket, Interval within) {
    SeasonResult result = bucket.result();
    return SunMark.of(
        within, result.season().record(), Bucket.OFFSET, result.depths(), result.series());
  }

  private static Bucket season() {
    return Bucket.every(30, FOUR_DAYS).entry(dry(0, FOUR_DAYS));
  }

  private static Entry dry(double from, double to) {
    return new Entry.DrySpell(Bucket.header("dry"), Bucket.span(from, to));
  }

  /**
   * Worked by hand. Pulled by 0.9 mm for six hours, wire 1 departs from the mean of three by 0.6 mm
   * then, and by 0.15 mm in the mean of the day; the others by −0.3 mm and −0.075 mm. On a second
   * day pulled by 0.3 mm all is a third of that.
   */
  @Test
  void aWireWarmedInTheAfternoonDepartsThen() {
    Bucket bucket = sunny(sunny(season(), 0, 0.9), 1, 0.3);

    SunMark mark = mark(bucket, Bucket.span(0, 48));

    assertThat(mark.days()).containsExactly(Bucket.span(0, 24), Bucket.span(24, 48));
    assertThat(mark.meanMm(1, 12)).isCloseTo((0.45 + 0.15) / 2, within(1e-6));
    assertThat(mark.meanMm(1, 17)).isCloseTo(0.30, within(1e-6));
    assertThat(mark.meanMm(1, 11)).isCloseTo((-0.15 - 0.05) / 2, within(1e-6));
    assertThat(mark.meanMm(0, 12)).isCloseTo((-0.225 - 0.075) / 2, within(1e-6));
    assertThat(mark.rangeMm(1)).isCloseTo(0.4, within(1e-6));
    assertThat(mark.rangeMm(0)).isCloseTo(0.2, within(1e-6));
  }

  /**
   * Worked by hand: of 0.45 and 0.15 the standard deviation is 0.3/√2, the error of the mean 0.15.
   */
  @Test
  void theErrorOfTheMeanIsByHowDaysDiffer() {
    Bucket bucket = sunny(sunny(season(), 0, 0.9), 1, 0.3);

    SunMark two = mark(bucket, Bucket.span(0, 48));
    SunMark one = mark(bucket, Bucket.span(0, 47));

    assertThat(two.standardErrorMm(1, 12)).hasValueCloseTo(0.15, within(1e-6));
    assertThat(one.days()).hasSize(1);
    assertThat(one.standardErrorMm(1, 12)).isEmpty();
  }

  @Test
  void aSteadyDifferenceBetweenWiresIsNoMarkOfTheSun() {
    SunMark mark = mark(season().pull(2, 0, 3), Bucket.span(0, FOUR_DAYS));

    assertThat(mark.days()).hasSize(4);
    assertThat(mark.rangeMm(2)).isCloseTo(0, within(1e-6));
  }

  @Test
  void aDayWithCatchIsLeftOut() {
    Bucket bucket = Bucket.every(30, FOUR_DAYS).level(Bucket.rain(30, 36, 2));

    SunMark mark = mark(bucket, Bucket.span(0, FOUR_DAYS));

    assertThat(mark.days())
        .doesNotContain(Bucket.span(24, 48))
        .contains(Bucket.span(0, 24), Bucket.span(72, 96));
  }

  @Test
  void aDayWithAnHourOfAWireLeftOutIsLeftOut() {
    Entry bad =
        new Entry.BadInterval(
            Bucket.header("bad"), Bucket.span(50, 52), Set.of("w0"), BadReason.INTERFERENCE);

    SunMark mark = mark(season().entry(bad), Bucket.span(0, FOUR_DAYS));

    assertThat(mark.days()).hasSize(3).doesNotContain(Bucket.span(48, 72));
  }

  @Test
  void aDayWithAVisitIsLeftOut() {
    Bucket bucket =
        Bucket.every(30, FOUR_DAYS)
            .entry(dry(0, 25))
            .entry(
                new Entry.ServiceVisit(
                    Bucket.header("visit"),
                    Bucket.span(30, 30.2),
                    List.of(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()))
            .entry(new Entry.DrySpell(Bucket.header("after"), Bucket.span(31, FOUR_DAYS)));

    SunMark mark = mark(bucket, Bucket.span(0, FOUR_DAYS));

    assertThat(mark.days())
        .contains(Bucket.span(0, 24), Bucket.span(72, 96))
        .doesNotContain(Bucket.span(24, 48));
  }

  @Test
  void withoutADryDayThereIsNoMark() {
    SunMark mark = mark(season(), Bucket.span(3, 20));

    assertThat(mark.days()).isEmpty();
    assertThat(mark.meanMm(0, 0)).isNaN();
  }
}
