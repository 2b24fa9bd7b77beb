package org.rimebook.notebook;

import java.util.Optional;
import org.rimebook.station.Interval;

/** Entries made from others by changing one part. */
public final class EntryCopy {

  private EntryCopy() {}

  /** The same entry with another header. */
  public static Entry with(Entry entry, Entry.Header header) {
    if (entry instanceof Entry.ServiceVisit e) {
      return new Entry.ServiceVisit(header, e.interval(), e.actions(), e.antifreezeL(), e.oilL());
    } else if (entry instanceof Entry.BadInterval e) {
      return new Entry.BadInterval(header, e.interval(), e.wires(), e.reason());
    } else if (entry instanceof Entry.LateCatch e) {
      return new Entry.LateCatch(header, e.interval());
    } else if (entry instanceof Entry.DrySpell e) {
      return new Entry.DrySpell(header, e.interval());
    } else if (entry instanceof Entry.Estimate e) {
      return new Entry.Estimate(header, e.interval(), e.totalMm(), e.source());
    } else if (entry instanceof Entry.Remark e) {
      return new Entry.Remark(header, e.about());
    } else if (entry instanceof Entry.Dismissal e) {
      return new Entry.Dismissal(header, e.finding());
    } else if (entry instanceof Entry.Withdrawal e) {
      return new Entry.Withdrawal(header, e.entry());
    } else if (entry instanceof Entry.SignOff e) {
      return new Entry.SignOff(header, e.recordSha256(), e.stationSha256(), e.entries());
    }
    throw new IllegalArgumentException("an entry of unknown kind can't be rewritten");
  }

  /** The same entry about another span; unchanged when it is about none. */
  public static Entry with(Entry entry, Interval span) {
    Entry.Header header = entry.header();
    if (entry instanceof Entry.ServiceVisit e) {
      return new Entry.ServiceVisit(header, span, e.actions(), e.antifreezeL(), e.oilL());
    } else if (entry instanceof Entry.BadInterval e) {
      return new Entry.BadInterval(header, span, e.wires(), e.reason());
    } else if (entry instanceof Entry.LateCatch) {
      return new Entry.LateCatch(header, span);
    } else if (entry instanceof Entry.DrySpell) {
      return new Entry.DrySpell(header, span);
    } else if (entry instanceof Entry.Estimate e) {
      return new Entry.Estimate(header, span, e.totalMm(), e.source());
    } else if (entry instanceof Entry.Remark e && e.about().isPresent()) {
      return new Entry.Remark(header, Optional.of(span));
    }
    return entry;
  }
}
