package org.rimebook.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Gauge;
import org.rimebook.station.WindShield;

class OutlookTest {

  private static final long DAY_MS = 86_400_000;
  private static final CatchRates RATES = new CatchRates(2, 4, 30, 100);
  private static final Plan PLAN = new Plan(-17, 3, 60);

  private static Gauge gauge(OptionalDouble capacityMm) {
    return new Gauge(200, capacityMm, OptionalDouble.empty(), WindShield.UNSHIELDED);
  }

  private static Outlook of(BucketNow now, Plan plan, OptionalDouble capacityMm) {
    return Outlook.of(now, RATES, Antifreeze.METHANOL, plan, gauge(capacityMm));
  }

  /** 3 L of methanol and 3 L of water. */
  private static BucketNow half() {
    return new BucketNow(0, 300, 3, 3, 0);
  }

  @Test
  void overflowComesWhenTheRoomIsFilled() {
    Outlook outlook = of(half(), PLAN, OptionalDouble.of(600));
    assertThat(outlook.overflow().medianMs()).hasValue(150 * DAY_MS);
    assertThat(outlook.overflow().wetMs()).hasValue(75 * DAY_MS);
  }

  /** 30 % methanol freezes at -20 °C (Lange): 3 L stand 7 L of water, 4 L more, 200 mm. */
  @Test
  void freezingComesWhenCatchHasThinnedTheMixtureToTheTable() {
    Outlook outlook = of(half(), PLAN, OptionalDouble.of(600));
    assertThat(outlook.freeze().medianMs().orElseThrow() / (double) DAY_MS)
        .isCloseTo(100, within(1e-6));
    assertThat(outlook.latestVisitMs().orElseThrow() / (double) DAY_MS).isCloseTo(50, within(1e-6));
  }

  /** 60 days at 4 mm are 240 mm, 4.8 L of water, which 30 % of methanol keeps: 2.057 L. */
  @Test
  void theNextChargeLastsAsLongAsPlanned() {
    Outlook.NextCharge next = of(half(), PLAN, OptionalDouble.of(600)).next();
    assertThat(next.days()).isEqualTo(60);
    assertThat(next.antifreezeL().orElseThrow()).isCloseTo(4.8 * 0.3 / 0.7, within(1e-9));
    assertThat(next.why()).isEmpty();
  }

  @Test
  void aChargeThatWouldOverflowIsPlannedForFewerDays() {
    Outlook.NextCharge next = of(half(), new Plan(-17, 3, 365), OptionalDouble.of(600)).next();
    assertThat(next.days()).isLessThan(365);
    double filledMm = next.catchMm() + Water.depthMm(0.791 * next.antifreezeL().orElseThrow(), 200);
    assertThat(filledMm).isBetween(590.0, 600.0);
    assertThat(next.why()).contains("365 days", "600 mm");
  }

  @Test
  void whatTheTableDoesNotTellIsSaidInWords() {
    Outlook outlook = of(half(), new Plan(-40, 3, 60), OptionalDouble.empty());
    assertThat(outlook.freeze().why()).contains("ends at -30.0 °C");
    assertThat(outlook.overflow().why()).contains("capacity_mm");
    assertThat(outlook.latestVisitMs()).isEmpty();
    assertThat(outlook.next().antifreezeL()).isEmpty();
    assertThat(outlook.freezing().why()).contains("50 %");
  }

  @Test
  void aBucketTooThinAlreadyIsDueAtOnce() {
    Outlook outlook = of(new BucketNow(5, 300, 1, 9, 0), PLAN, OptionalDouble.of(600));
    assertThat(outlook.latestVisitMs()).hasValue(5);
  }

  @Test
  void aRateOfNothingIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> CatchRates.given(0));
    assertThatIllegalArgumentException().isThrownBy(() -> CatchRates.given(Double.NaN));
  }
}
