package org.rimebook.desk.model;

import java.util.List;
import java.util.stream.LongStream;
import org.rimebook.record.IntSequence;
import org.rimebook.record.Provenance;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;

/** A record of nothing but stamps half a second apart. */
final class Seconds {

  private Seconds() {}

  static SeasonRecord record() {
    long[] stamps = LongStream.range(0, 2000).map(row -> row * 500).toArray();
    IntSequence none = IntSequence.copyOf(new int[stamps.length], stamps.length);
    return new SeasonRecord(
        stamps,
        List.of(),
        List.of(),
        List.of(new SamplingRun(0, stamps.length - 1, 500)),
        new Provenance(List.of(), none, none, ""));
  }
}
