package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class HardWinterTest {

  private static final PracticeSeason PRACTICE = HardWinter.season();
  private static final Truth TRUTH = PRACTICE.season().truth();
  private static final Path RECORDS = Path.of("sample-sets", "hard-winter", "records");

  private static List<String> january;
  private static List<String> february;
  private static List<String> november;
  private static List<String> december;

  @BeforeAll
  static void readFiles() throws IOException {
    var files = Folders.content(RECORDS);
    november = files.get("2024-11.csv.gz").lines().toList();
    december = files.get("2024-12.csv.gz").lines().toList();
    january = files.get("2025-01.csv.gz").lines().toList();
    february = files.get("2025-02.csv.gz").lines().toList();
  }

  @Test
  void theFirstGapHidesCatchAndTheSecondNone() {
    assertThat(TRUTH.catchMm(HardWinter.DAY_GAP_WITH_CATCH)).isCloseTo(11.2, within(1e-9));
    assertThat(TRUTH.catchMm(HardWinter.DAY_GAP_DRY)).isZero();
    assertThat(TRUTH.catchMm(HardWinter.GAP_INSIDE_DAY)).isGreaterThan(2);
  }

  @Test
  void nothingIsLoggedInAGapAndTheReadingsRoundItAre() {
    assertThat(december).noneMatch(line -> line.startsWith("2024-12-18 11:"));
    assertThat(december).noneMatch(line -> line.startsWith("2024-12-18 15:2"));
    assertThat(december).anyMatch(line -> line.startsWith("2024-12-18 10:50:00"));
    assertThat(december).anyMatch(line -> line.startsWith("2024-12-18 15:30:00"));
  }

  @Test
  void theCapHoldsBackTwoStorms() {
    assertThat(TRUTH.catchMm(HardWinter.CAPPED)).isZero();
    long slides = HardWinter.CAPPED.toMs();
    Interval sliding = new Interval(slides, slides + HardWinter.CAP_SLIDES.toMillis());
    assertThat(TRUTH.catchMm(sliding)).isCloseTo(12 * 1.2 + 9 * 0.9, within(1e-9));
    assertThat(TRUTH.fell().amountMm(HardWinter.CAPPED))
        .isCloseTo(TRUTH.catchMm(sliding), within(1e-9));
  }

  @Test
  void theEstimateIsWhatFellBeforeTheUnseenEmptying() {
    assertThat(TRUTH.catchMm(HardWinter.EMPTIED_UNSEEN)).isCloseTo(6.4, within(0.05));
  }

  @Test
  void aStretchStandsTwiceInNovemberAndDecemberStartsWithIt() {
    assertThat(november.stream().filter(l -> l.startsWith("2024-11-05 12:00:00"))).hasSize(2);
    Set<String> shared = new HashSet<>(november);
    shared.retainAll(december);
    shared.removeIf(line -> !line.startsWith("2024"));
    assertThat(shared).hasSize(24);
  }

  @Test
  void januaryEndsInsideALineThatStandsWholeInFebruary() {
    String cut = january.get(january.size() - 1);
    assertThat(cut).startsWith("2025-02-01 00:00:00,");
    assertThat(cut.split(",", -1)).hasSizeLessThan(7);
    assertThat(february).anyMatch(line -> line.startsWith(cut) && line.length() > cut.length());
  }

  @Test
  void twelveHoursOfFebruaryCarryALostClock() {
    assertThat(february.stream().filter(line -> line.startsWith("2000-01-01"))).hasSize(144);
  }

  @Test
  void theFailedWireIsSilentUntilItIsReplaced() {
    assertThat(january)
        .filteredOn(line -> line.startsWith("2025-01-15 12:00:00"))
        .allMatch(line -> line.split(",")[2].equals("NAN"));
    assertThat(january)
        .filteredOn(line -> line.startsWith("2025-01-23"))
        .hasSize(288)
        .noneMatch(line -> line.split(",")[2].equals("NAN"));
  }
}
