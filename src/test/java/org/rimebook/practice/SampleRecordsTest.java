package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.record.FileAccount;
import org.rimebook.record.LineReason;
import org.rimebook.record.RecordReader;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.record.SetAside;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

class SampleRecordsTest {

  private static final int LOST_WITH_THE_CLOCK = 144;
  private static final int LOST_IN_A_CUT_LINE = 1;

  private static SeasonRecord read(String name, SimulatedSeason season)
      throws IOException, InputException {
    return RecordReader.read(Path.of("sample-sets", name), season.sheet(), Progress.NONE);
  }

  private static long logged(SimulatedSeason season) {
    return IntStream.range(0, season.sampling().size()).filter(season::logged).count();
  }

  @ParameterizedTest
  @ValueSource(strings = {"quiet-valley", "windy-ridge", "hard-winter"})
  void whatIsReadIsWhatTheModelLogged(String name) throws IOException, InputException {
    SimulatedSeason season = SampleSeasons.all().get(name).get().season();
    SeasonRecord record = read(name, season);
    for (int row = 0; row < record.size(); row++) {
      int index = season.sampling().indexAt(record.stampMs(row));
      assertThat(season.sampling().stampMs(index)).isEqualTo(record.stampMs(row));
      assertThat(season.logged(index)).isTrue();
      for (int wire = 0; wire < 3; wire++) {
        double logged = season.frequencyHz(wire, index);
        double read = record.frequency(wire).get(row);
        assertThat(Double.isNaN(read)).isEqualTo(Double.isNaN(logged));
        assertThat(Double.isNaN(read) ? 0 : read - logged).isCloseTo(0, within(0.006));
      }
    }
    int lost = name.equals("hard-winter") ? LOST_WITH_THE_CLOCK + LOST_IN_A_CUT_LINE : 0;
    assertThat(record.size()).isEqualTo((int) logged(season) - lost);
  }

  @Test
  void everyDefectOfTheHardWintersFilesIsAccountedFor() throws IOException, InputException {
    SeasonRecord record = read("hard-winter", HardWinter.season().season());
    Map<LineReason, Long> lines = new EnumMap<>(LineReason.class);
    for (FileAccount file : record.provenance().files()) {
      for (SetAside run : file.setAside()) {
        lines.merge(run.reason(), run.lines(), Long::sum);
      }
    }
    assertThat(lines)
        .contains(
            entry(LineReason.PREAMBLE, 7L),
            entry(LineReason.HEADER, 7L),
            entry(LineReason.UNITS, 7L),
            entry(LineReason.CUT_LINE, 2L),
            entry(LineReason.BAD_CLOCK, (long) LOST_WITH_THE_CLOCK),
            // Six hours at 10 min stand twice; December and February start with 24 old rows, one
            // of which is February's whole copy of the line January's file cut short.
            entry(LineReason.REPEATED_ROW, 36L + 24 + 23));
  }

  @Test
  void theHardWintersSamplingChangesAtItsFirstVisit() throws IOException, InputException {
    List<SamplingRun> runs = read("hard-winter", HardWinter.season().season()).sampling();
    assertThat(runs.get(0).intervalMs()).isEqualTo(600_000);
    assertThat(runs.get(runs.size() - 1).intervalMs()).isEqualTo(300_000);
  }
}
