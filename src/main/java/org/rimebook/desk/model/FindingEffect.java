package org.rimebook.desk.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.totals.Totals;

/**
 * What a proposed entry would change, as far as totals were worked out with it.
 *
 * @param days how many days it touches
 * @param before their catch without it, in units of the resolution
 * @param after their catch with it
 * @param totals the totals with it
 */
record FindingEffect(int days, Sum before, Sum after, Totals totals) {

  /**
   * Catch of some days.
   *
   * @param units the catch in units of the resolution
   * @param missing how many of the days have no total
   */
  record Sum(long units, int missing) {}

  /**
   * What the draft of a workspace changes, in words; empty while that isn't worked out.
   *
   * @param without the season as it was computed last without a draft
   */
  static String words(Workspace workspace, Optional<Computed> without) {
    Optional<Computed> with =
        workspace.computed().get().filter(c -> c.state() == Computed.State.FORESEEN);
    Optional<Opened> opened = workspace.opened().get();
    Optional<Entry> draft = workspace.draft().get().filter(entry -> entry.span().isPresent());
    if (with.isEmpty() || without.isEmpty() || opened.isEmpty() || draft.isEmpty()) {
      return "";
    }
    Totals after = with.get().totals();
    Totals before = without.get().totals();
    boolean same =
        after.resolution() == before.resolution()
            && entries(without.get()).equals(opened.get().season().notebook().history())
            && entries(with.get()).contains(draft.get());
    return same ? of(before, after, draft.get().span().orElseThrow()).words() : "";
  }

  private static List<Entry> entries(Computed computed) {
    return computed.result().season().notebook().history();
  }

  /** What it changes in the days a span touches. */
  static FindingEffect of(Totals without, Totals with, Interval span) {
    int days = (int) with.daily().stream().filter(day -> day.interval().overlaps(span)).count();
    return new FindingEffect(days, sum(without, span), sum(with, span), with);
  }

  private static Sum sum(Totals totals, Interval span) {
    List<Long> units =
        totals.daily().stream()
            .filter(day -> day.interval().overlaps(span))
            .map(day -> day.catchUnits().orElse(-1))
            .toList();
    return new Sum(
        units.stream().filter(u -> u >= 0).mapToLong(Long::longValue).sum(),
        (int) units.stream().filter(u -> u < 0).count());
  }

  /** In words, for example "With it: total of these 3 days 12.3 → 10.1 mm". */
  String words() {
    String which = days == 1 ? "total of the day " : "total of these " + days + " days ";
    return before.equals(after)
        ? "With it: " + which + "stays " + words(after)
        : "With it: " + which + words(before) + " \u2192 " + words(after);
  }

  private String words(Sum sum) {
    if (sum.missing() >= days) {
      return "missing";
    }
    BigDecimal mm = totals.resolution().toMm(sum.units());
    return mm.toPlainString()
        + " mm"
        + (sum.missing() == 0 ? "" : " (" + sum.missing() + " missing)");
  }
}
