package org.rimebook.export;

import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryWriter;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Sha256;

/** Digests by which the entries of a notebook are recognised, one by one. */
public final class EntryDigests {

  private EntryDigests() {}

  /**
   * SHA-256 of each entry by its id, in the order of the notebook; of the entry as this version
   * writes it with times in UTC, so the spelling of a line doesn't count, nor members this version
   * doesn't know.
   */
  public static Map<String, String> of(Notebook notebook) {
    Map<String, String> digests = new LinkedHashMap<>();
    for (Entry entry : notebook.history()) {
      byte[] line = EntryWriter.line(entry, ZoneOffset.UTC).getBytes(StandardCharsets.UTF_8);
      digests.put(entry.header().id(), Sha256.hex(line));
    }
    return digests;
  }
}
