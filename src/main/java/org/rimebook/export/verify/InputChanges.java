package org.rimebook.export.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.export.EntryDigests;
import org.rimebook.export.StationTime;
import org.rimebook.notebook.Entry;
import org.rimebook.record.Provenance;
import org.rimebook.season.Season;
import org.rimebook.season.Version;

/** What changed in a season's inputs since its tables were made, in words. */
final class InputChanges {

  private static final int SHOWN = 12;

  private final KeptInputs kept;
  private final Season season;
  private final List<String> words = new ArrayList<>();

  private InputChanges(KeptInputs kept, Season season) {
    this.kept = kept;
    this.season = season;
  }

  /** Every change, one a line; none when the inputs are those the tables were made from. */
  static List<String> between(KeptInputs kept, Season season) {
    InputChanges changes = new InputChanges(kept, season);
    changes.version();
    changes.record();
    changes.sheet();
    changes.notebook();
    return List.copyOf(changes.words);
  }

  private void version() {
    String now = "rimebook " + Version.number();
    if (!kept.madeBy().equals(now)) {
      words.add(
          "the program: the tables were made by "
              + (kept.madeBy().isEmpty() ? "an unnamed version" : kept.madeBy())
              + ", this is "
              + now);
    }
  }

  private void record() {
    if (kept.recordSha256().equals(season.digests().record())) {
      return;
    }
    Map<String, String> now = new LinkedHashMap<>();
    Provenance provenance = season.record().provenance();
    for (int i = 0; i < provenance.digest().files().size(); i++) {
      now.put(provenance.files().get(i).file(), provenance.digest().files().get(i));
    }
    if (kept.files().isEmpty()) {
      words.add("the record: its files changed; which of them wasn't kept");
      return;
    }
    List<String> found = new ArrayList<>();
    now.forEach(
        (file, sha256) -> {
          String before = kept.files().get(file);
          if (before == null) {
            found.add(file + ": was added");
          } else if (!before.equals(sha256)) {
            found.add(file + ": changed");
          }
        });
    kept.files().keySet().stream()
        .filter(file -> !now.containsKey(file))
        .forEach(file -> found.add(file + ": is gone"));
    if (found.isEmpty()) {
      found.add("season.json: its digest of the record isn't that of the files it names");
    }
    add(found);
  }

  private void sheet() {
    if (!kept.stationSha256().equals(season.digests().station())) {
      words.add(Season.STATION_FILE + ": changed");
    }
  }

  private void notebook() {
    if (kept.notebookSha256().equals(season.digests().notebook())) {
      return;
    }
    if (kept.entries().isEmpty()) {
      words.add(Season.NOTEBOOK_FILE + ": changed; which entries wasn't kept");
      return;
    }
    List<String> found = entries(kept.entries().get(), EntryDigests.of(season.notebook()));
    if (found.isEmpty()) {
      found.add(Season.NOTEBOOK_FILE + ": changed, but no entry in it did");
    }
    add(found);
  }

  private List<String> entries(Map<String, String> before, Map<String, String> now) {
    List<String> found = new ArrayList<>();
    for (Entry entry : season.notebook().history()) {
      String id = entry.header().id();
      if (!before.containsKey(id)) {
        found.add(added(entry));
      } else if (!before.get(id).equals(now.get(id))) {
        found.add(Season.NOTEBOOK_FILE + ": entry " + name(entry) + " reads otherwise than it did");
      }
    }
    before.keySet().stream()
        .filter(id -> !now.containsKey(id))
        .forEach(id -> found.add(Season.NOTEBOOK_FILE + ": entry " + id + " is gone"));
    return found;
  }

  private String added(Entry entry) {
    if (entry instanceof Entry.Withdrawal withdrawal) {
      Optional<Entry> target =
          season.notebook().history().stream()
              .filter(other -> other.header().id().equals(withdrawal.entry()))
              .findFirst();
      return Season.NOTEBOOK_FILE
          + ": entry "
          + target.map(this::name).orElse(withdrawal.entry())
          + " was withdrawn by "
          + entry.header().id();
    }
    return Season.NOTEBOOK_FILE + ": entry " + name(entry) + " was added";
  }

  private String name(Entry entry) {
    String span = entry.span().map(s -> ", " + iso(s.fromMs()) + " to " + iso(s.toMs())).orElse("");
    return entry.header().id() + " (" + entry.kind() + span + ")";
  }

  private String iso(long epochMs) {
    return StationTime.iso(epochMs, season.sheet().utcOffset());
  }

  private void add(List<String> found) {
    words.addAll(found.subList(0, Math.min(SHOWN, found.size())));
    if (found.size() > SHOWN) {
      words.add("and " + (found.size() - SHOWN) + " more of that kind");
    }
  }
}
