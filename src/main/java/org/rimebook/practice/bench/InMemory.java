package org.rimebook.practice.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.rimebook.practice.SimulatedSeason;
import org.rimebook.record.Column;
import org.rimebook.record.IntSequence;
import org.rimebook.record.Provenance;
import org.rimebook.record.RecordDigest;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.station.Channel;

/**
 * Takes a simulated season into the computation without writing files: the readings as a logger
 * writes them, frequencies as its counter gives them and channels to a decimal or two.
 */
public final class InMemory {

  private static final double PER_DEG_C_OR_MS = 10;
  private static final double PER_VOLT = 100;

  private final SimulatedSeason season;
  private final int[] logged;

  private InMemory(SimulatedSeason season) {
    this.season = season;
    int[] all = new int[season.sampling().size()];
    int size = 0;
    for (int i = 0; i < all.length; i++) {
      if (season.logged(i)) {
        all[size++] = i;
      }
    }
    this.logged = Arrays.copyOf(all, size);
  }

  /** The season as if its folder had been opened; digests are empty. */
  public static Season of(MarkedSeason marked) {
    return new Season(
        marked.written().writer().apply(marked.season().sheet()),
        marked.written().logger().apply(new InMemory(marked.season()).record()),
        marked.notebook(),
        new Season.Digests(RecordDigest.known(""), "", ""),
        List.of());
  }

  private SeasonRecord record() {
    long[] stampsMs = Arrays.stream(logged).mapToLong(season.sampling()::stampMs).toArray();
    List<Column> frequencies = new ArrayList<>();
    for (int wire = 0; wire < season.sheet().wires().size(); wire++) {
      int at = wire;
      frequencies.add(column(i -> season.frequencyHz(at, i)));
    }
    List<Column> channels = new ArrayList<>();
    for (Channel channel : season.sheet().channels()) {
      String quantity = channel.quantity();
      double perUnit = quantity.equals(Channel.SUPPLY_VOLTAGE) ? PER_VOLT : PER_DEG_C_OR_MS;
      channels.add(
          column(i -> StrictMath.rint(season.channelValue(quantity, i) * perUnit) / perUnit));
    }
    int size = logged.length;
    IntSequence none = IntSequence.copyOf(new int[size], size);
    return new SeasonRecord(
        stampsMs,
        frequencies,
        channels,
        List.of(new SamplingRun(0, size - 1, season.sampling().stepMs())),
        new Provenance(List.of(), none, none, ""));
  }

  private Column column(IntToDoubleFunction valueAt) {
    double[] values = Arrays.stream(logged).mapToDouble(valueAt).toArray();
    return Column.copyOf(values, values.length);
  }
}
