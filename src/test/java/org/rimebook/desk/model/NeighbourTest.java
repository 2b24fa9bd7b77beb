package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.InputException;
import org.rimebook.totals.Quality;

class NeighbourTest {

  @Test
  void daysHeldByAnAccumulatedTotalGoIntoItsSpan(@TempDir Path folder)
      throws IOException, InputException {
    String table =
        """
        start,end,catch_mm,quality,accumulated_since
        2025-01-10T00:00:00Z,2025-01-11T00:00:00Z,1.25,suspect,
        2025-01-11T00:00:00Z,2025-01-12T00:00:00Z,,missing,
        2025-01-12T00:00:00Z,2025-01-13T00:00:00Z,7,good,2025-01-11T00:00:00Z
        2025-01-13T00:00:00Z,2025-01-14T00:00:00Z,,missing,
        """;
    Path file = Files.writeString(folder.resolve("valley.csv"), table);
    Neighbour read = Neighbour.read(file);
    assertThat(read.name()).isEqualTo("valley.csv");
    assertThat(read.days()).hasSize(3);
    assertThat(read.days().get(0).quality()).isEqualTo(Quality.SUSPECT);
    assertThat(read.days().get(0).catchUnits()).isEqualTo(OptionalLong.of(125));
    assertThat(read.days().get(1).interval().from()).isEqualTo("2025-01-11T00:00:00Z");
    assertThat(read.days().get(1).interval().to()).isEqualTo("2025-01-13T00:00:00Z");
    assertThat(read.days().get(2).catchUnits()).isEmpty();
  }
}
