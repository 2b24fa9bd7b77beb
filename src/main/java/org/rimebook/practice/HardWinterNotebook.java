package org.rimebook.practice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Entry.Header;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;

/** What the people at the hard winter's gauge wrote down. */
final class HardWinterNotebook {

  private HardWinterNotebook() {}

  static List<Entry> entries() {
    return Stream.concat(beforeTheFirstVisit().stream(), fromTheFirstVisitOn().stream()).toList();
  }

  private static List<Entry> beforeTheFirstVisit() {
    return List.of(
        new Entry.Remark(
            header("hw-01", "2024-10-15T09:00:00-07:00", "Charged, 2.6 L and 0.2 L of oil."),
            Optional.empty()),
        new Entry.BadInterval(
            header("hw-02", "2024-12-19T08:10:00-07:00", "Wrong day, I think?"),
            HardWinter.GAP_INSIDE_DAY,
            Set.of(),
            BadReason.POWER),
        new Entry.Withdrawal(
            header("hw-03", "2024-12-19T08:14:00-07:00", "Nothing was logged, nothing is bad."),
            "hw-02"),
        new Entry.LateCatch(
            header("hw-04", "2025-01-13T07:40:00-07:00", "Capped; slid in on the 10th at noon."),
            HardWinter.CLOCK.span("2025-01-08T03:00", "2025-01-10T13:00")),
        new Entry.BadInterval(
            header("hw-05", "2025-01-13T07:45:00-07:00", "Hill jumps about, then nothing."),
            HardWinter.WIRE_FAILED,
            Set.of(HardWinter.FAILING_WIRE),
            BadReason.WIRE_FAULT));
  }

  private static List<Entry> fromTheFirstVisitOn() {
    return List.of(
        visit(
            "hw-06",
            HardWinter.FIRST_VISIT,
            HardWinter.FIRST_CHARGE_L,
            List.of(
                VisitAction.EMPTIED,
                VisitAction.RECHARGED,
                VisitAction.ANTIFREEZE_ADDED,
                VisitAction.OIL_ADDED,
                VisitAction.WIRE_REPLACED)),
        new Entry.Remark(
            header("hw-07", "2025-02-03T16:30:00-07:00", "Anemometer iced over."),
            Optional.of(HardWinter.ANEMOMETER_ICED)),
        visit(
            "hw-08",
            HardWinter.SECOND_VISIT,
            HardWinter.SECOND_CHARGE_L,
            List.of(
                VisitAction.EMPTIED,
                VisitAction.RECHARGED,
                VisitAction.ANTIFREEZE_ADDED,
                VisitAction.OIL_ADDED,
                VisitAction.INSPECTED)),
        new Entry.Estimate(
            header("hw-09", "2025-03-05T18:20:00-07:00", "Battery was flat since the evening."),
            HardWinter.EMPTIED_UNSEEN,
            6.4,
            "contents weighed when emptied, less the last level logged"),
        new Entry.DrySpell(
            header("hw-10", "2025-04-16T09:00:00-06:00", "High pressure; the oil film is gone."),
            HardWinter.DRY));
  }

  private static Header header(String id, String at, String note) {
    return new Header(id, at, "rw", note);
  }

  private static Entry visit(
      String id, Interval interval, double antifreezeL, List<VisitAction> actions) {
    String at = TruthTables.time(interval.to().plusSeconds(3 * 3600), HardWinter.CLOCK.offset());
    return new Entry.ServiceVisit(
        header(id, at, "Bucket weighed, emptied, charged."),
        interval,
        actions,
        OptionalDouble.of(antifreezeL),
        OptionalDouble.of(HardWinter.OIL_L));
  }

  static PracticeSeason.Note note() {
    return new PracticeSeason.Note(
        "Hard winter: Quern Hollow, 2024-25",
        "A winter in which everything goes wrong once, with the notebook that puts it right.",
        List.of(
            "Sampling is 10 min up to the first visit and 5 min after it.",
            "Power failure over a day boundary with catch: 2024-11-20 20:00 to 2024-11-21 14:00.",
            "Power failure over a day boundary without: 2024-12-03 22:00 to 2024-12-04 16:00.",
            "Power failure inside a day with catch: 2024-12-18, 11:00 to 15:30.",
            "Snow bridges the orifice from 2025-01-08 03:00 and slides in from 2025-01-10 12:00"
                + " on, within 40 min.",
            "Wire hill jumps about from 2025-01-12 05:00, is silent from 13:00, and is replaced on"
                + " 2025-01-22 at 11:10; it has a second calibration from then on.",
            "Visits on 2025-01-22, 10:30 to 11:45, and 2025-03-05, 10:00 to 11:30: emptied and"
                + " charged. The second falls in a power failure (2025-03-04 18:00 to 2025-03-05"
                + " 11:40); the record can't tell what fell before it.",
            "The anemometer is iced over from 2025-02-01 18:00 to 2025-02-03 09:00.",
            "Power failure on 2025-02-10 from 02:00; from 06:00 to 18:00 the logger runs with its"
                + " clock set back to 2000-01-01.",
            "2024-11-05, 09:00 to 15:00, stands twice in its file; the files of 2024-12 and 2025-02"
                + " start with the last rows of the month before.",
            "The files of 2025-01 and 2025-04 end inside a line; the first of these readings"
                + " stands whole in 2025-02, the second is lost.",
            "Evaporation from 2025-03-16 on, size 0.2 mm/d.",
            "Single spikes, about one wire-reading in 12 days each."));
  }
}
