package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.rimebook.station.Gauge;

/**
 * When the bucket overflows or freezes, and what to bring before it does. Straight on at the
 * season's own rates; evaporation and what the antifreeze loses aren't counted.
 *
 * @param now what is in the bucket
 * @param freezing its freezing point now [°C]
 * @param overflow when it is full
 * @param freeze when it may freeze in the coldest that is expected
 * @param latestVisitMs the earlier of the two at the wet rate [ms since epoch]; empty when neither
 *     comes
 * @param next what the next charge needs
 */
public record Outlook(
    BucketNow now,
    Known freezing,
    When overflow,
    When freeze,
    OptionalLong latestVisitMs,
    NextCharge next) {

  private static final double DAY_MS = 86_400_000;

  /** Nobody plans further ahead. */
  private static final double FURTHEST_DAYS = 3_650;

  /**
   * When something happens.
   *
   * @param medianMs at the median rate [ms since epoch]; empty when it doesn't within ten years
   * @param wetMs at the wet rate
   * @param why why nothing can be told, in words; empty when it can
   */
  public record When(OptionalLong medianMs, OptionalLong wetMs, String why) {}

  /**
   * Litres for the time after the next visit.
   *
   * @param days how long they last [d], no more than was planned for
   * @param antifreezeL pure antifreeze [L]
   * @param catchMm what is expected at the wet rate [mm]
   * @param why why they aren't told, or why they last less than was planned; may be empty
   */
  public record NextCharge(int days, OptionalDouble antifreezeL, double catchMm, String why) {}

  /**
   * The outlook.
   *
   * @param now what is in the bucket
   * @param rates how fast it fills
   * @param antifreeze what keeps it from freezing
   * @param plan what is planned by
   * @param gauge the gauge
   */
  public static Outlook of(
      BucketNow now, CatchRates rates, Antifreeze antifreeze, Plan plan, Gauge gauge) {
    When overflow =
        gauge.capacityMm().isEmpty()
            ? new When(
                OptionalLong.empty(),
                OptionalLong.empty(),
                "the station sheet has no capacity_mm, so when it is full isn't known")
            : when(now, rates, gauge.capacityMm().getAsDouble() - now.depthMm());
    Known mostL = antifreeze.mostWaterL(now.antifreezeL(), plan.limitDegC());
    When freeze =
        mostL.value().isEmpty()
            ? new When(OptionalLong.empty(), OptionalLong.empty(), mostL.why())
            : when(
                now,
                rates,
                Water.depthMm(mostL.value().getAsDouble() - now.waterL(), gauge.orificeAreaCm2()));
    OptionalLong latest =
        LongStream.concat(overflow.wetMs().stream(), freeze.wetMs().stream()).min();
    return new Outlook(
        now,
        antifreeze.freezingDegC(now.antifreezeL(), now.waterL()),
        overflow,
        freeze,
        latest,
        next(rates, antifreeze, plan, gauge));
  }

  /** When some more has been caught [mm]; at once when that is nothing. */
  private static When when(BucketNow now, CatchRates rates, double moreMm) {
    return new When(
        after(now, rates.medianMmPerDay(), moreMm), after(now, rates.wetMmPerDay(), moreMm), "");
  }

  private static OptionalLong after(BucketNow now, double mmPerDay, double moreMm) {
    double days = moreMm <= 0 ? 0 : moreMm / mmPerDay;
    return days <= FURTHEST_DAYS
        ? OptionalLong.of(now.atMs() + Math.round(days * DAY_MS))
        : OptionalLong.empty();
  }

  private static NextCharge next(CatchRates rates, Antifreeze antifreeze, Plan plan, Gauge gauge) {
    int days = plan.days();
    NextCharge whole = charge(rates, antifreeze, plan, gauge, days);
    double capacityMm = gauge.capacityMm().orElse(Double.POSITIVE_INFINITY);
    while (days > 1
        && whole.antifreezeL().isPresent()
        && filledMm(whole, antifreeze, gauge) > capacityMm) {
      days--;
      whole = charge(rates, antifreeze, plan, gauge, days);
    }
    return days == plan.days()
        ? whole
        : new NextCharge(
            days,
            whole.antifreezeL(),
            whole.catchMm(),
            text(
                "%d days would fill the bucket beyond %.0f mm, antifreeze included",
                plan.days(), capacityMm));
  }

  private static NextCharge charge(
      CatchRates rates, Antifreeze antifreeze, Plan plan, Gauge gauge, int days) {
    double catchMm = rates.wetMmPerDay() * days;
    Known litres =
        antifreeze.neededL(Water.massKg(catchMm, gauge.orificeAreaCm2()), plan.limitDegC());
    return new NextCharge(days, litres.value(), catchMm, litres.why());
  }

  private static double filledMm(NextCharge charge, Antifreeze antifreeze, Gauge gauge) {
    double kg = charge.antifreezeL().orElse(0) * antifreeze.kgPerL(1);
    return charge.catchMm() + Water.depthMm(kg, gauge.orificeAreaCm2());
  }
}
