package org.rimebook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class EntryWriterProperties {

  @Provide
  Arbitrary<Entry> entries() {
    return Entries.any();
  }

  @Provide
  Arbitrary<ZoneOffset> offsets() {
    return Arbitraries.integers()
        .between(-18 * 60, 18 * 60)
        .map(minutes -> ZoneOffset.ofTotalSeconds(minutes * 60));
  }

  @Property
  void anEntryReadsBackAsItWasWritten(
      @ForAll("entries") Entry entry, @ForAll("offsets") ZoneOffset offset) {
    String line = EntryWriter.line(entry, offset);
    assertThat(line).doesNotContain("\n", "\r");
    assertThat(NotebookReader.read(line + "\n", "notebook.jsonl").history()).containsExactly(entry);
  }
}
