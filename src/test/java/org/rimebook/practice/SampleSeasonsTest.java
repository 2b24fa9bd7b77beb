package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.notebook.Notebook;
import org.rimebook.notebook.NotebookLog;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheetReader;

class SampleSeasonsTest {

  private static final Path SAMPLES = Path.of("sample-sets");

  @ParameterizedTest
  @ValueSource(strings = {"quiet-valley", "windy-ridge", "hard-winter"})
  void aSampleSeasonComesOutAgainAsItStandsInTheProject(String name, @TempDir Path again)
      throws IOException {
    SeasonFolderWriter.write(SampleSeasons.all().get(name).get(), again);
    SortedMap<String, String> made = Folders.content(again);
    SortedMap<String, String> committed = Folders.content(SAMPLES.resolve(name));
    assertThat(made.keySet()).isEqualTo(committed.keySet());
    for (String file : made.keySet()) {
      assertThat(made.get(file).equals(committed.get(file))).as(file).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"quiet-valley", "windy-ridge", "hard-winter"})
  void hoursOfTruthAddUpToDaysAndDaysToTheSeason(String name) throws IOException {
    Path truth = SAMPLES.resolve(name).resolve("truth");
    List<String[]> hours = Folders.rows(Files.readString(truth.resolve("hourly.csv")));
    List<String[]> days = Folders.rows(Files.readString(truth.resolve("daily.csv")));
    List<String[]> season = Folders.rows(Files.readString(truth.resolve("season.csv")));
    int hour = 0;
    BigDecimal total = BigDecimal.ZERO;
    for (String[] day : days) {
      BigDecimal sum = BigDecimal.ZERO;
      while (hour < hours.size() && !hours.get(hour)[1].equals(day[1])) {
        sum = sum.add(new BigDecimal(hours.get(hour++)[2]));
      }
      sum = sum.add(new BigDecimal(hours.get(hour++)[2]));
      assertThat(new BigDecimal(day[2])).as(day[0]).isEqualByComparingTo(sum);
      total = total.add(sum);
    }
    assertThat(hour).isEqualTo(hours.size());
    assertThat(new BigDecimal(season.get(0)[1])).isEqualByComparingTo(total);
    assertThat(total).isBetween(new BigDecimal(100), new BigDecimal(600));
  }

  @ParameterizedTest
  @ValueSource(strings = {"quiet-valley", "windy-ridge", "hard-winter"})
  void sheetAndNotebookOfASampleReadBackWithoutComplaint(String name)
      throws IOException, InputException {
    Path folder = SAMPLES.resolve(name);
    String text = Files.readString(folder.resolve("station.json"));
    StationSheetReader.Reading reading = StationSheetReader.read(text, "station.json");
    PracticeSeason made = SampleSeasons.all().get(name).get();
    assertThat(reading.unknownMembers()).isEmpty();
    assertThat(reading.sheet()).isEqualTo(made.season().sheet());
    Notebook notebook = NotebookLog.read(folder.resolve("notebook.jsonl"));
    assertThat(notebook.notes()).isEmpty();
    assertThat(notebook.history()).isEqualTo(made.entries());
  }
}
