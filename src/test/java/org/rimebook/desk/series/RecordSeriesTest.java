package org.rimebook.desk.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonDepths;
import org.rimebook.station.Progress;

class RecordSeriesTest {

  private static final int LENGTH = 1000;

  @Test
  void valuesTakenManyAtATimeAreThoseTakenOneByOne() throws Exception {
    Season season = Season.open(Path.of("sample-sets", "hard-winter"));
    SeasonRecord record = season.record();
    WireDepths depths = SeasonDepths.of(season, Progress.NONE).depths();
    RecordSeries frequency = RecordSeries.frequency(record, 1);
    RecordSeries depth = RecordSeries.depth(record, depths, 1);
    for (RecordSeries series :
        List.of(
            frequency,
            depth,
            frequency.used(depths, 1),
            depth.used(depths, 1),
            RecordSeries.channel(record, 0))) {
      for (int from = 0; from + LENGTH <= series.size(); from += LENGTH / 2) {
        double[] many = new double[LENGTH];
        series.copy(from, many);
        double[] single = new double[LENGTH];
        for (int i = 0; i < LENGTH; i++) {
          single[i] = series.value(from + i);
        }
        assertThat(many).isEqualTo(single);
      }
    }
  }
}
