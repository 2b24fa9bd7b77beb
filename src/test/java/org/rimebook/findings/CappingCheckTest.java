package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.rain;
import static org.rimebook.fixture.Bucket.span;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

class CappingCheckTest {

  /** Snow on the ground grows from one depth to another [m] between two hours. */
  private static DoubleUnaryOperator snow(double from, double to, double fromM, double toM) {
    return hour -> fromM + (toM - fromM) * Math.max(0, Math.min(1, (hour - from) / (to - from)));
  }

  private static DoubleUnaryOperator steady(double value) {
    return hour -> value;
  }

  /** Six hours of snow, then 6 mm in half an hour at hour 60. */
  private static Bucket slid() {
    return Bucket.every(10, 120).level(rain(24, 30, 1, 60, 60.5, 12)).noise(0.03);
  }

  private static Bucket capped() {
    return slid().weather(steady(-6), steady(2), snow(32, 46, 0.3, 0.42));
  }

  @Test
  void whatSlidInAfterSnowHadGrownIsLateCatch() {
    assertThat(Raised.in(capped(), FindingKind.CAPPING))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(29), ms(34));
              assertThat(finding.span().toMs()).isBetween(ms(60.3), ms(61));
              assertThat(finding.wires()).isEmpty();
              assertThat(finding.doubted()).contains(finding.span());
              assertThat(finding.reason()).contains("grew by 12 cm", "rose by 6.0 mm");
              assertThat(finding.proposal())
                  .isInstanceOfSatisfying(
                      Entry.LateCatch.class,
                      late -> assertThat(late.interval()).isEqualTo(finding.span()));
            });
  }

  @Test
  void acceptingItKeepsTheTotal() {
    Finding finding = Raised.in(capped(), FindingKind.CAPPING).get(0);
    Bucket accepted = capped().entry(new Entry.LateCatch(header("a"), finding.span()));
    assertThat(accepted.totals().seasonUnits().orElseThrow()).isBetween(1185L, 1215L);
  }

  @Test
  void snowThatGrowsWhileTheLevelRisesIsAShower() {
    Bucket shower = slid().weather(steady(-6), steady(2), snow(60, 61, 0.3, 0.36));
    assertThat(Raised.in(shower, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void withoutSnowDepthAShowerIsAShower() {
    assertThat(Raised.in(slid(), FindingKind.CAPPING)).isEmpty();
    assertThat(Raised.in(slid().weather(hour -> -6, 2), FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void moreThanColdAirBringsSlidIn() {
    Bucket cold =
        Bucket.every(10, 120).level(rain(24, 30, 1, 60, 60.5, 40)).noise(0.03).weather(h -> -14, 2);
    assertThat(Raised.in(cold, FindingKind.CAPPING))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(29), ms(32));
              assertThat(finding.reason()).contains("20.0 mm", "-14.0 °C");
            });
    Bucket warm =
        Bucket.every(10, 120).level(rain(24, 30, 1, 60, 60.5, 40)).noise(0.03).weather(h -> 9, 2);
    assertThat(Raised.in(warm, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void muchThatSlidInAtOnceByDayWasntPouredIn() {
    DoubleUnaryOperator level = hour -> rain(24, 30, 1).applyAsDouble(hour) + (hour < 60 ? 0 : 60);
    Bucket at = Bucket.every(10, 120).level(level).noise(0.03);
    Bucket slid = at.weather(steady(-1), steady(2), snow(32, 46, 0.3, 0.9));
    assertThat(Raised.in(slid, FindingKind.UNMARKED_VISIT)).isEmpty();
    assertThat(Raised.in(slid, FindingKind.CAPPING)).hasSize(1);
    Bucket poured = at.weather(steady(-1), steady(2), steady(0.3));
    assertThat(Raised.in(poured, FindingKind.UNMARKED_VISIT)).hasSize(1);
  }

  @Test
  void snowCaughtUntilTheLevelStoodStillWasntHeldUpAfterIt() {
    Bucket warming =
        Bucket.every(10, 120)
            .level(rain(24, 30.4, 3, 34, 35, 6))
            .noise(0.03)
            .weather(steady(0.5), steady(2), snow(24, 30.4, 0.1, 0.3));
    assertThat(Raised.in(warming, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void snowThatTheGaugeCaughtAsItFellHoldsNothingUp() {
    Bucket caught =
        Bucket.every(10, 120)
            .level(rain(32, 46, 0.8, 60, 60.5, 12))
            .noise(0.03)
            .weather(steady(-6), steady(2), snow(32, 46, 0.3, 0.42));
    assertThat(Raised.in(caught, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void whatIsMarkedAsLateCatchIsNotRaisedAgain() {
    Bucket marked = capped().entry(new Entry.LateCatch(header("a"), span(55, 62)));
    assertThat(Raised.in(marked, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void aVisitIsNoCap() {
    Bucket visited =
        capped()
            .entry(
                new Entry.ServiceVisit(
                    header("v"),
                    span(59.9, 60.7),
                    List.of(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
    assertThat(Raised.in(visited, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void whereSnowDepthTellsOfAShowerTheColdIsNoProofOfACap() {
    Bucket shower =
        Bucket.every(10, 120)
            .level(rain(24, 30, 1, 60, 60.5, 40))
            .noise(0.03)
            .weather(steady(-14), steady(2), snow(60, 61, 0.3, 0.5));
    assertThat(Raised.in(shower, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void snowThatFallsOnWhileTheCapLetsGoHidesNothing() {
    Bucket falling =
        slid()
            .weather(
                steady(-1),
                steady(2),
                hour ->
                    snow(32, 46, 0.3, 0.36).applyAsDouble(hour)
                        + snow(59, 62, 0, 0.02).applyAsDouble(hour));
    assertThat(Raised.in(falling, FindingKind.CAPPING)).hasSize(1);
  }

  @Test
  void aSensorThatWandersByACentimetreInDaysHasSeenNoSnow() {
    Bucket wandering = slid().weather(steady(3), steady(2), snow(31, 59, 0.3, 0.32));
    assertThat(Raised.in(wandering, FindingKind.CAPPING)).isEmpty();
    Bucket cold = slid().weather(steady(-1), steady(2), snow(31, 59, 0.3, 0.32));
    assertThat(Raised.in(cold, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void inFrostALittleSnowBeforeIsEnoughWhenNoneComesWithTheRise() {
    Bucket few = Bucket.every(10, 120).level(rain(24, 30, 1, 60, 60.5, 7.2)).noise(0.03);
    Bucket frost = few.weather(steady(-8), steady(2), snow(32, 40, 0.3, 0.312));
    assertThat(Raised.in(frost, FindingKind.CAPPING)).hasSize(1);
    Bucket thaw = few.weather(steady(1), steady(2), snow(32, 40, 0.3, 0.312));
    assertThat(Raised.in(thaw, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void aRiseNoWeatherBringsIsNotAlsoACap() {
    Bucket poured =
        Bucket.every(1, 72).level(rain(60.0, 60.05, 1500)).noise(0.03).weather(h -> -14, 2);
    assertThat(Raised.in(poured, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void noCapOutlastsADayOfThaw() {
    Bucket thawed =
        slid().weather(h -> h > 48 && h < 56 ? 4 : -1, steady(2), snow(32, 40, 0.3, 0.36));
    assertThat(Raised.in(thawed, FindingKind.CAPPING)).isEmpty();
  }

  /** A rise by some millimetres within half an hour at hour 60. */
  private static Bucket small(double mm) {
    return Bucket.every(10, 120).level(rain(10, 20, 0.5, 60, 60.5, 2 * mm)).noise(0.03);
  }

  /** A sensor whose readings of the depth are a centimetre off [m]. */
  private static DoubleUnaryOperator read(DoubleUnaryOperator depthM) {
    return hour -> depthM.applyAsDouble(hour) + 0.01 * Math.sin(1000 * hour);
  }

  /** Snow as deep as what the gauge caught from hour 10 to 20, which is 5 mm [m]. */
  private static DoubleUnaryOperator caught() {
    return snow(10, 20, 0.3, 0.35);
  }

  private static DoubleUnaryOperator with(DoubleUnaryOperator more) {
    return read(hour -> caught().applyAsDouble(hour) + more.applyAsDouble(hour));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.2, 1.5, 2, 2.5})
  void aMillimetreOrTwoThatSlidInInFrostIsFound(double mm) {
    Bucket cap =
        small(mm).weather(steady(-6), steady(2), with(snow(34, 37, 0, mm / 100)), steady(75));
    assertThat(Raised.in(cap, FindingKind.CAPPING))
        .singleElement()
        .satisfies(finding -> assertThat(finding.span().fromMs()).isBetween(ms(19), ms(36)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.2, 1.5, 2, 2.5})
  void asLittleThatFellJustThenIsAShower(double mm) {
    Bucket frost = small(mm).weather(steady(-6), steady(2), with(snow(60, 60.5, 0, mm / 100)));
    assertThat(Raised.in(frost, FindingKind.CAPPING)).isEmpty();
    Bucket thaw =
        small(mm).weather(h -> h < 50 ? -2 : 2.5, steady(2), with(snow(50, 60, 0, -0.01)));
    assertThat(Raised.in(thaw, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void dampAirWithTheRiseSpeaksForAShower() {
    DoubleUnaryOperator depth = with(snow(40, 46, 0, 0.012));
    DoubleUnaryOperator thaw = h -> h < 56 ? -2 : 1.2;
    DoubleUnaryOperator early = h -> h > 10 && h < 20 || h > 39 && h < 47 ? 94 : 71;
    DoubleUnaryOperator late = h -> h > 10 && h < 20 || h > 59 && h < 61.5 ? 94 : 71;
    Bucket held = small(1.5).weather(thaw, steady(2), depth, early);
    assertThat(Raised.in(held, FindingKind.CAPPING)).hasSize(1);
    Bucket fell = small(1.5).weather(thaw, steady(2), depth, late);
    assertThat(Raised.in(fell, FindingKind.CAPPING)).isEmpty();
  }

  @Test
  void inColdAStormGoesOnAndACapIsGone() {
    Bucket storm =
        Bucket.every(10, 120)
            .level(rain(24, 30, 1, 60, 61, 10, 61, 66, 3))
            .noise(0.03)
            .weather(steady(-14), steady(2));
    assertThat(Raised.in(storm, FindingKind.CAPPING)).isEmpty();
  }
}
