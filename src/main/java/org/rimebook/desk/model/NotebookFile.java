package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.notebook.NotebookReader;
import org.rimebook.season.Season;
import org.rimebook.station.Sha256;

/**
 * The notebook's file as it was found.
 *
 * @param sha256 digest of its bytes, of none when it is absent
 * @param notebook what it holds
 */
record NotebookFile(String sha256, Notebook notebook) {

  /** Reads it anew. */
  static NotebookFile read(Path file) throws IOException {
    byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    String text = new String(bytes, StandardCharsets.UTF_8);
    return new NotebookFile(Sha256.hex(bytes), NotebookReader.read(text, Season.NOTEBOOK_FILE));
  }

  /** What someone else changed since a season took its notebook from the file; empty if nothing. */
  String changedSince(Season season) {
    if (sha256.equals(season.digests().notebook())) {
      return "";
    }
    List<Entry> known = season.notebook().history();
    List<Entry> found = notebook.history();
    long gone = known.stream().filter(entry -> !found.contains(entry)).count();
    long added = found.size() - (known.size() - gone);
    String words = "The notebook was changed by another program meanwhile";
    if (added > 0) {
      words += "; " + entries(added) + " added there, kept and shown here";
    }
    if (gone > 0) {
      words +=
          "; " + entries(gone) + " no longer in it: look for a copy of " + Season.NOTEBOOK_FILE;
    }
    return words;
  }

  /** Whether entries stand in it. */
  boolean holds(List<Entry> entries) {
    return notebook.history().containsAll(entries);
  }

  private static String entries(long count) {
    return count == 1 ? "1 entry was" : count + " entries were";
  }
}
