package org.rimebook.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.span;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;

/** A bucket that is emptied and charged at hour 24, after which it catches 0.5 mm an hour. */
class BucketCareTest {

  private static final Poured GLYCOL = new Poured(Antifreeze.PROPYLENE_GLYCOL, 0.5, 0, 0, 0.83);

  /** 2 L of half glycol, 1.040 times as heavy as water at 15.6 °C (Lange), and 0.2 L of oil. */
  private static final double CHARGED_MM = 50 * (2 * 1.040 * 0.99901 + 0.2 * 0.83);

  private static double level(double hour) {
    return hour < 24 ? 300 : CHARGED_MM + 0.5 * Math.max(0, hour - 30);
  }

  private static Entry visit(double fromHour, double toHour, double litres, VisitAction... done) {
    return new Entry.ServiceVisit(
        header("v" + fromHour),
        span(fromHour, toHour),
        List.of(done),
        OptionalDouble.of(litres),
        OptionalDouble.of(0.2));
  }

  private static Bucket charged() {
    return Bucket.every(10, 96)
        .level(BucketCareTest::level)
        .noise(0.02)
        .entry(visit(23.5, 24.5, 2, VisitAction.EMPTIED, VisitAction.RECHARGED));
  }

  @Test
  void whatWasPouredInSuitsWhatEachWireShows() {
    List<ChargeCheck> checks = ChargeCheck.of(charged().result().stage(), GLYCOL);
    assertThat(checks).hasSize(1);
    assertThat(checks.get(0).expectedMm()).isCloseTo(CHARGED_MM, within(0.01));
    assertThat(checks.get(0).wires())
        .hasSize(3)
        .allSatisfy(
            wire -> {
              assertThat(wire.beforeMm().orElseThrow()).isCloseTo(300, within(0.1));
              assertThat(checks.get(0).offMm(wire).orElseThrow()).isCloseTo(0, within(0.1));
              assertThat(checks.get(0).suits(wire)).isTrue();
            });
  }

  @Test
  void aWireWithAWrongSheetDoesNotSuit() {
    List<ChargeCheck> checks = ChargeCheck.of(charged().pull(1, 24, 9).result().stage(), GLYCOL);
    assertThat(checks.get(0).wires().stream().map(checks.get(0)::suits))
        .containsExactly(true, false, true);
  }

  @Test
  void withoutEmptyingTheRiseCounts() {
    Bucket topped =
        Bucket.every(10, 60)
            .level(hour -> hour < 24 ? 300 : 300 + 50 * 0.2 * 0.83)
            .entry(visit(23.5, 24.5, 0, VisitAction.OIL_ADDED));
    ChargeCheck check = ChargeCheck.of(topped.result().stage(), GLYCOL).get(0);
    assertThat(check.offMm(check.wires().get(0)).orElseThrow()).isCloseTo(0, within(0.05));
  }

  /** 33 mm caught in 66 h are 0.66 L beside the litre of water that came with the glycol. */
  @Test
  void theBucketHoldsWhatWasPouredInAndCaught() {
    BucketNow now = BucketNow.of(charged().result().stage(), GLYCOL);
    assertThat(now.depthMm()).isCloseTo(CHARGED_MM + 33, within(0.5));
    assertThat(now.antifreezeL()).isCloseTo(1, within(1e-9));
    assertThat(now.waterL()).isCloseTo(1.66, within(0.02));
    assertThat(now.chargedMs()).isEqualTo(Bucket.ms(24.5));
    assertThat(now.atMs()).isEqualTo(Bucket.ms(96));
  }

  @Test
  void withoutAVisitThatEmptiesItTheLitresHaveToBeGiven() {
    SeasonResult season = Bucket.every(10, 96).level(hour -> 150 + 0.5 * hour).result();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BucketNow.of(season.stage(), GLYCOL))
        .withMessageContaining("--antifreeze-l");
    Poured known = new Poured(Antifreeze.PROPYLENE_GLYCOL, 1, 2.5, 0.2, 0.83);
    BucketNow now = BucketNow.of(season.stage(), known);
    assertThat(now.antifreezeL()).isEqualTo(2.5);
    assertThat(now.waterL()).isCloseTo(48 / 50.0, within(0.02));
  }

  @Test
  void ratesComeFromRunsOfTheSeasonsOwnDays() {
    SeasonResult steady =
        Bucket.every(60, 60 * 24).level(hour -> 100 + 3.0 * hour / 24).noise(0.02).result();
    CatchRates rates = CatchRates.of(steady.totals(Resolution.HUNDREDTH));
    assertThat(rates.medianMmPerDay()).isCloseTo(3, within(0.05));
    assertThat(rates.wetMmPerDay()).isCloseTo(3, within(0.1));
    assertThat(rates.runs()).isBetween(29, 33);
  }

  @Test
  void aFewWeeksTellNoRates() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CatchRates.of(charged().totals()))
        .withMessageContaining("--wet-rate");
  }

  @Test
  void aGaugeAtRestIsGood() {
    SeasonResult empty = Bucket.every(1, 2).level(hour -> 0.4).noise(0.02).result();
    InstallationCheck check = InstallationCheck.of(empty.season(), span(0, 1.5), 0);
    assertThat(check.good()).isTrue();
    assertThat(check.wires())
        .allSatisfy(
            wire -> {
              assertThat(wire.depthMm()).isCloseTo(0.4, within(0.02));
              assertThat(wire.noiseMm()).isCloseTo(0.02, within(0.006));
            });
  }

  @Test
  void whatIsWrongAtRestIsNamedWithWhatToDo() {
    SeasonResult wrong =
        Bucket.every(1, 2).level(hour -> 0).noise(0.3).pull(2, -1, 7).pull(0, 0.7, 1.5).result();
    InstallationCheck check = InstallationCheck.of(wrong.season(), span(0, 1.5), 0);
    assertThat(check.points().stream().filter(p -> p.outcome() == InstallationCheck.Outcome.LOOK))
        .extracting(InstallationCheck.Point::what)
        .contains("Depth of wire w2", "Wires agree", "Wire w0 repeats", "Noise of wire w1");
    assertThat(check.wires().get(2).depthMm()).isCloseTo(7, within(0.3));
    assertThat(check.points().get(2).words()).contains("0.0 mm expected", "which lead goes where");
  }

  @Test
  void tooFewReadingsTellNothing() {
    SeasonResult few = Bucket.every(10, 2).level(hour -> 0).result();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> InstallationCheck.of(few.season(), span(0, 0.5), 0))
        .withMessageContaining("wire w0 gave 3 readings");
  }
}
