package org.rimebook.desk.model;

import static org.rimebook.station.Words.counted;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.rimebook.notebook.Entry;
import org.rimebook.season.Season;
import org.rimebook.season.SignOffState;

/** Who signed for the totals, and what changed since, in words. */
final class SignOffWords {

  private SignOffWords() {}

  static String of(Season season) {
    Optional<Entry.SignOff> last = last(season);
    if (last.isEmpty()) {
      return "Not signed off";
    }
    Entry.Header header = last.get().header();
    String whoAndWhen = day(header.at()) + (header.by().isEmpty() ? "" : " by " + header.by());
    return SignOffState.of(season) == SignOffState.CURRENT
        ? "Signed off " + whoAndWhen
        : "Changed since sign-off of " + whoAndWhen + ": " + changes(season, last.get());
  }

  /** Ids of the entries a sign-off states. */
  static List<String> counting(Season season) {
    return season.notebook().inForce().stream()
        .filter(entry -> !(entry instanceof Entry.SignOff))
        .map(entry -> entry.header().id())
        .toList();
  }

  private static Optional<Entry.SignOff> last(Season season) {
    Optional<Entry.SignOff> last = Optional.empty();
    for (Entry entry : season.notebook().inForce()) {
      if (entry instanceof Entry.SignOff signed) {
        last = Optional.of(signed);
      }
    }
    return last;
  }

  private static String changes(Season season, Entry.SignOff signed) {
    Set<String> now = new HashSet<>(counting(season));
    Set<String> then = new HashSet<>(signed.entries());
    long added = now.stream().filter(id -> !then.contains(id)).count();
    long gone = then.stream().filter(id -> !now.contains(id)).count();
    StringJoiner words = new StringJoiner(", ");
    if (added + gone > 0) {
      words.add(counted(added + gone, "entry"));
    }
    if (!signed.recordSha256().equals(season.digests().record())) {
      words.add("record");
    }
    if (!signed.stationSha256().equals(season.digests().station())) {
      words.add("station sheet");
    }
    return words.toString();
  }

  private static String day(String at) {
    int time = at.indexOf('T');
    return time < 0 ? at : at.substring(0, time);
  }
}
