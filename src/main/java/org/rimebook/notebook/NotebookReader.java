package org.rimebook.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.station.InputException;
import org.rimebook.station.Json;
import org.rimebook.station.Members;
import org.rimebook.station.Problem;

/**
 * Reads a notebook ({@code notebook.jsonl}), one JSON object a line. No line stops it: a line that
 * isn't an entry becomes a note and has no effect, and the others count.
 */
public final class NotebookReader {

  private final String file;
  private final List<Problem> notes = new ArrayList<>();
  private final List<Entry> history = new ArrayList<>();
  private final Map<String, Long> lineOfId = new HashMap<>();
  private final Map<Entry.Withdrawal, Members> withdrawals = new LinkedHashMap<>();

  private NotebookReader(String file) {
    this.file = file;
  }

  /**
   * Reads a notebook.
   *
   * @param text the whole file; a byte order mark and blank lines are passed over
   * @param file name used in notes
   */
  public static Notebook read(String text, String file) {
    NotebookReader reader = new NotebookReader(file);
    List<String> lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
    boolean lastIsWhole = text.endsWith("\n") || text.endsWith("\r");
    for (int i = 0; i < lines.size(); i++) {
      reader.line(lines.get(i), i + 1, lastIsWhole || i < lines.size() - 1);
    }
    reader.withdrawals.forEach(reader::noteIdleWithdrawal);
    reader.notes.sort(Comparator.comparingLong(Problem::line));
    return new Notebook(reader.history, reader.notes);
  }

  private void line(String line, long number, boolean whole) {
    if (line.isBlank()) {
      return;
    }
    try {
      Json json = Json.parse(line, file, number);
      if (json.value() instanceof Map) {
        entry(Members.of(file, "", json, notes));
      } else {
        notes.add(
            new Problem(
                file,
                json.line(),
                json.column(),
                "an entry must be an object, not " + json.kind(),
                "Write it in braces: { ... }"));
      }
    } catch (InputException e) {
      notes.addAll(whole ? e.problems() : List.of(cutOff(e.problems().get(0))));
    }
  }

  private void entry(Members at) {
    Optional<Entry> entry = EntryReader.read(at);
    entry.ifPresent(read -> keep(read, at));
    if (entry.isEmpty()) {
      notes.add(new Problem(file, at.line(), 0, "the entry has no effect until it is mended", ""));
    }
  }

  private static Problem cutOff(Problem broken) {
    return new Problem(
        broken.file(),
        broken.line(),
        broken.column(),
        "the last line is cut off and isn't a whole entry",
        "Write the entry again; the whole lines above it count");
  }

  private void keep(Entry entry, Members at) {
    Long first = lineOfId.putIfAbsent(entry.header().id(), at.line());
    if (first != null) {
      at.problem(
          "id",
          "\"" + entry.header().id() + "\" is used on line " + first + " already",
          "Give this entry an id of its own; until then only the first one counts");
      return;
    }
    history.add(entry);
    if (entry instanceof Entry.Withdrawal withdrawal) {
      withdrawals.put(withdrawal, at);
    }
  }

  private void noteIdleWithdrawal(Entry.Withdrawal withdrawal, Members at) {
    Optional<Long> line = Optional.ofNullable(lineOfId.get(withdrawal.entry()));
    if (line.isEmpty()) {
      at.problem(
          "entry",
          "names \"" + withdrawal.entry() + "\", which no entry has as its id",
          "Name the id of an entry above");
    } else if (line.get() >= at.line()) {
      at.problem(
          "entry",
          "names \"" + withdrawal.entry() + "\", which isn't an earlier entry",
          "Only an entry above can be withdrawn; this has no effect");
    }
  }
}
