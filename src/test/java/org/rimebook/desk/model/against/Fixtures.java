package org.rimebook.desk.model.against;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Opened;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonDepths;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/** Questions about seasons of a bucket. */
final class Fixtures {

  private static final Scatter.Size SIZE = new Scatter.Size(40, 30);

  private Fixtures() {}

  static Asked asked(SeasonResult result, List<Interval> selected) {
    Opened opened = opened(result);
    Computed computed =
        new Computed(result, result.totals(Resolution.TENTH), Computed.State.SETTLED);
    return new Asked(
        opened,
        Optional.of(computed),
        opened.whole(),
        selected,
        new Asked.Pair(0, 1),
        new Asked.Room(SIZE, SIZE));
  }

  static Opened opened(SeasonResult result) {
    try {
      return new Opened(Path.of("season"), SeasonDepths.of(result.season(), Progress.NONE));
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }

  static Readings readings(Bucket bucket) {
    return Readings.of(opened(bucket.result()), Optional.empty());
  }

  static RowSpan all(Readings readings) {
    return new RowSpan(0, readings.record().size());
  }
}
