package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

class OpenSoonTest {

  @TempDir private Path folder;

  @BeforeEach
  void copiesASeason() throws IOException {
    Path sample = Path.of("sample-sets", "hard-winter");
    Files.createDirectories(folder.resolve("records"));
    Files.copy(sample.resolve("station.json"), folder.resolve("station.json"));
    for (Path file : records(sample)) {
      Files.copy(file, folder.resolve("records").resolve(file.getFileName()));
    }
  }

  private static List<Path> records(Path season) throws IOException {
    try (Stream<Path> files = Files.list(season.resolve("records"))) {
      return files.sorted().toList();
    }
  }

  @Test
  void aSeasonToBeSeenSoonIsTheOneThatIsOpenedWhole() throws Exception {
    Season soon = Season.openSoon(folder, Progress.NONE);
    soon.recognised(folder);
    assertThat(soon.digests()).isEqualTo(Season.open(folder).digests());
  }

  @Test
  void aRecordThatChangedAfterItWasReadIsToBeOpenedAnew() throws Exception {
    Season soon = Season.openSoon(folder, Progress.NONE);
    Path file = records(folder).get(0);
    Files.write(file, new byte[1], StandardOpenOption.APPEND);
    assertThatThrownBy(() -> soon.recognised(folder))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("records/" + file.getFileName() + " has changed since it was read")
        .hasMessageContaining("Open the season anew");
  }
}
