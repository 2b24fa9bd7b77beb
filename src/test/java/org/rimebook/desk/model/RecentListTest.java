package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecentListTest {

  private static final Instant OPENED = Instant.parse("2025-03-01T12:00:00Z");

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "2025-03-01T12:01:59Z, opened just now",
    "2025-03-01T12:02:00Z, opened 2 minutes ago",
    "2025-03-01T13:59:00Z, opened 119 minutes ago",
    "2025-03-03T11:59:00Z, opened 47 hours ago",
    "2025-03-08T12:00:00Z, opened 7 days ago"
  })
  void aSeasonSaysWhenItWasOpened(Instant now, String words) throws Exception {
    Files.writeString(folder.resolve("station.json"), "{}");
    RecentList.Known known = look(now);
    assertThat(known.there()).isTrue();
    assertThat(known.state()).isEqualTo(words);
    assertThat(known.words()).isEqualTo("Example Ridge, " + folder + ", 12.30 mm, " + words);
  }

  @Test
  void aMissingSeasonSaysSo() {
    assertThat(look(OPENED).there()).isFalse();
    assertThat(look(OPENED).state()).isEqualTo("no season is there now");
  }

  private RecentList.Known look(Instant now) {
    RecentSeason season =
        new RecentSeason(folder, "Example Ridge", OPENED, Optional.of(new BigDecimal("12.30")));
    return RecentList.look(List.of(season), now).seasons().get(0);
  }
}
