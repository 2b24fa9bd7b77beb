package org.rimebook.desk.model;

import static org.rimebook.station.Words.counted;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;
import org.rimebook.totals.TotalRow;

/** What somebody signs for, and the signing. */
public final class SignOffModel {

  private static final int SHORT = 12;

  private final Workspace workspace;
  private final SeasonKeeper keeper;

  /**
   * @param workspace what is signed for
   * @param keeper writes the entry
   */
  public SignOffModel(Workspace workspace, SeasonKeeper keeper) {
    this.workspace = workspace;
    this.keeper = keeper;
  }

  /**
   * One thing that is signed for.
   *
   * @param label what it is
   * @param words how it stands
   */
  public record Item(String label, String words) {}

  /** Why nobody can sign now, and what to do; empty when one can. */
  public Optional<String> obstacle() {
    if (workspace.opened().get().isEmpty()) {
      return Optional.of("Open a season first");
    }
    Optional<Computed.State> state = workspace.computed().get().map(Computed::state);
    if (state.equals(Optional.of(Computed.State.SETTLED))) {
      return Optional.empty();
    }
    return Optional.of(
        state.equals(Optional.of(Computed.State.FORESEEN))
            ? "An entry is being made: finish it or give it up first"
            : "The totals are still being computed: wait until they are settled");
  }

  /** Initials of whoever writes now. */
  public String initials() {
    return keeper.writer();
  }

  /** Who signed last and what changed since, in words. */
  public String standing() {
    return workspace.opened().get().map(o -> SignOffWords.of(o.season())).orElse("");
  }

  /** What is signed for; empty when it can't be. */
  public List<Item> items() {
    if (obstacle().isPresent()) {
      return List.of();
    }
    Computed computed = workspace.computed().get().orElseThrow();
    Season season = workspace.opened().get().orElseThrow().season();
    ShortTime time = new ShortTime(season.sheet().utcOffset());
    List<TotalRow> hours = computed.totals().hourly();
    Interval whole =
        new Interval(
            hours.get(0).interval().fromMs(), hours.get(hours.size() - 1).interval().toMs());
    List<Item> items = new ArrayList<>();
    items.add(new Item("Season", time.span(whole)));
    items.add(new Item("Total", SeasonHeadline.season(computed)));
    items.add(new Item("Days", qualities(computed.totals().daily())));
    items.add(new Item("Hours", qualities(hours)));
    items.add(new Item("Entries", entries(season)));
    items.add(new Item("Record", shortened(season.digests().record())));
    items.add(new Item("Station sheet", shortened(season.digests().station())));
    items.add(new Item("Until now", standing()));
    return items;
  }

  private static String entries(Season season) {
    List<String> counting = SignOffWords.counting(season);
    return counting.isEmpty() ? "none" : counted(counting.size(), "entry") + " that count";
  }

  private static String qualities(List<TotalRow> rows) {
    Map<Quality, Long> count = new EnumMap<>(Quality.class);
    rows.forEach(row -> count.merge(row.quality(), 1L, Long::sum));
    return count.entrySet().stream()
        .map(e -> e.getValue() + " " + e.getKey().code())
        .collect(Collectors.joining(", "));
  }

  private static String shortened(String sha256) {
    return "SHA-256 " + sha256.substring(0, Math.min(SHORT, sha256.length()));
  }

  /**
   * Signs, in the name of whoever's initials are given; nothing while there is an obstacle.
   *
   * @param initials initials of whoever signs, not blank
   * @param note words; may be empty
   * @return whether it was signed
   */
  public boolean sign(String initials, String note) {
    if (obstacle().isPresent() || initials.isBlank()) {
      return false;
    }
    Season season = workspace.opened().get().orElseThrow().season();
    String before = keeper.writer();
    keeper.writer(initials.strip());
    keeper.write(
        List.of(
            new Entry.SignOff(
                new Entry.Header("", "", "", note.strip()),
                season.digests().record(),
                season.digests().station(),
                SignOffWords.counting(season))));
    keeper.writer(before);
    return true;
  }
}
