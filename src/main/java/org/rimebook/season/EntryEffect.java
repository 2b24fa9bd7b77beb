package org.rimebook.season;

import java.util.List;
import java.util.OptionalLong;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/**
 * What one entry does to the season's total: the total as it is, and as it would be if only this
 * entry weren't there. The latter is {@linkplain SeasonResult#revised computed where the entry
 * changes something}, with what was learnt from the whole season held.
 *
 * @param entry an entry in force that may change totals
 * @param withUnits the season with it, in whole units of the resolution
 * @param withoutUnits the season without it, in whole units of the resolution
 */
public record EntryEffect(Entry entry, OptionalLong withUnits, OptionalLong withoutUnits) {

  /** By how much the entry raises the total, in whole units; empty when either isn't known. */
  public OptionalLong units() {
    return withUnits.isPresent() && withoutUnits.isPresent()
        ? OptionalLong.of(withUnits.getAsLong() - withoutUnits.getAsLong())
        : OptionalLong.empty();
  }

  /**
   * The effects of all entries in force that may change totals, in the order written.
   *
   * @param result the season
   * @param resolution resolution of the totals
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static List<EntryEffect> all(
      SeasonResult result, Resolution resolution, Progress progress) {
    OptionalLong with = result.seasonUnits(resolution);
    List<Entry> entries =
        result.season().notebook().inForce().stream().filter(EntryEffect::mayChange).toList();
    return entries.parallelStream()
        .map(
            entry -> {
              progress.step("totals without each entry", 0);
              Notebook less = without(result.season().notebook(), entry);
              return new EntryEffect(entry, with, result.revised(less).seasonUnits(resolution));
            })
        .toList();
  }

  private static boolean mayChange(Entry entry) {
    return entry instanceof Entry.Spanning;
  }

  private static Notebook without(Notebook notebook, Entry entry) {
    return new Notebook(
        notebook.history().stream().filter(other -> other != entry).toList(), notebook.notes());
  }
}
