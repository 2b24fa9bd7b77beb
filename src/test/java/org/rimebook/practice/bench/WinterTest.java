package org.rimebook.practice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimebook.notebook.Entry;
import org.rimebook.practice.PracticeFolder;
import org.rimebook.practice.SimulatedSeason;
import org.rimebook.practice.Truth;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;

class WinterTest {

  private static final int DAYS = 20;

  private static MarkedSeason season(Scenario scenario, Variant variant, long seed) {
    return new Winter(scenario, variant, seed, DAYS).season();
  }

  private static MarkedSeason season(Scenario scenario) {
    return season(scenario, Variant.PLAIN, 3);
  }

  private static double[] frequencies(MarkedSeason marked) {
    SimulatedSeason season = marked.season();
    return IntStream.range(0, season.sampling().size())
        .mapToDouble(i -> season.frequencyHz(0, i))
        .toArray();
  }

  private static double catchMm(MarkedSeason marked) {
    return marked.season().truth().catchMm(marked.season().sampling().span());
  }

  @ParameterizedTest
  @EnumSource
  void theSameSeedGivesTheSameWinterAndAnotherSeedAnother(Scenario scenario) {
    assertThat(frequencies(season(scenario))).isEqualTo(frequencies(season(scenario)));
    assertThat(season(scenario).notebook()).isEqualTo(season(scenario).notebook());
    assertThat(catchMm(season(scenario, Variant.PLAIN, 6))).isNotEqualTo(catchMm(season(scenario)));
  }

  @ParameterizedTest
  @EnumSource
  void noWaterIsMadeOrLostAndHoursAddUpToTheSeason(Scenario scenario) {
    MarkedSeason marked = season(scenario);
    Truth truth = marked.season().truth();
    Interval span = marked.season().sampling().span();
    double hours = 0;
    for (long from = span.fromMs(); from < span.toMs(); from += 3_600_000) {
      hours += truth.catchMm(new Interval(from, from + 3_600_000));
    }
    assertThat(hours).isPositive().isCloseTo(truth.catchMm(span), within(1e-9));
    assertThat(truth.finalMm() + truth.evaporatedMm() + truth.removedMm())
        .isCloseTo(truth.chargeMm() + truth.pouredMm() + hours, within(1e-9));
    assertThat(truth.fell().amountMm(span)).isCloseTo(hours, within(1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void whatAnAnalystSeesIsMarked(Scenario scenario) {
    List<String> kinds =
        season(scenario).notebook().inForce().stream().map(Entry::kind).distinct().toList();
    switch (scenario) {
      case DEAD_WIRE, DRIFTING_WIRE -> assertThat(kinds).containsExactly("bad-interval");
      case VISITS -> assertThat(kinds).containsExactly("service-visit");
      case CAPPING -> assertThat(kinds).containsExactly("late-catch");
      case EVERYTHING ->
          assertThat(kinds)
              .containsExactlyInAnyOrder("bad-interval", "service-visit", "late-catch");
      default -> assertThat(kinds).isEmpty();
    }
  }

  @Test
  void aVariantChangesWhatItIsAboutAndNothingElse() {
    MarkedSeason plain = season(Scenario.WINDY);
    for (Variant variant : List.of(Variant.DOUBLED_NOISE, Variant.HEAVY_TAILS)) {
      MarkedSeason other = season(Scenario.WINDY, variant, 3);
      assertThat(catchMm(other)).isEqualTo(catchMm(plain));
      assertThat(frequencies(other)).isNotEqualTo(frequencies(plain));
    }
    MarkedSeason otherStorms = season(Scenario.WINDY, Variant.OTHER_STORMS, 3);
    assertThat(catchMm(otherStorms)).isNotEqualTo(catchMm(plain));
    assertThat(otherStorms.season().sheet()).isEqualTo(plain.season().sheet());
  }

  @Test
  void wetRunsAreJoinedWhereTheirMarginsTouch() {
    MarkedSeason marked = season(Scenario.CALM);
    List<Interval> runs = Sky.wetRuns(marked.season().truth().fell(), 3_600_000);
    double inside =
        runs.stream().mapToDouble(run -> marked.season().truth().fell().amountMm(run)).sum();
    assertThat(inside).isCloseTo(catchMm(marked), within(1e-9));
    for (int i = 1; i < runs.size(); i++) {
      assertThat(runs.get(i).fromMs()).isGreaterThan(runs.get(i - 1).toMs());
    }
  }

  @Test
  void theWayPastTheFilesGivesTheRecordThatTheFilesGive(@TempDir Path folder)
      throws IOException, InputException {
    MarkedSeason marked = new Winter(Scenario.GAPS, Variant.PLAIN, 3, DAYS).season();
    PracticeFolder.write(marked.season(), marked.notebook().history(), folder);
    Season opened = Season.open(folder);
    Season direct = InMemory.of(marked);
    assertThat(direct.record().sampling()).isEqualTo(opened.record().sampling());
    assertThat(direct.notebook()).isEqualTo(opened.notebook());
    assertThat(stamps(direct.record())).isEqualTo(stamps(opened.record()));
    for (int column = 0; column < 6; column++) {
      assertThat(values(direct.record(), column)).isEqualTo(values(opened.record(), column));
    }
  }

  private static long[] stamps(SeasonRecord record) {
    return IntStream.range(0, record.size()).mapToLong(record::stampMs).toArray();
  }

  /** Frequencies, then channels, in whole nanohertz or the like; NaN is 0. */
  private static long[] values(SeasonRecord record, int column) {
    Column values = column < 3 ? record.frequency(column) : record.channel(column - 3);
    return IntStream.range(0, record.size())
        .mapToLong(row -> Math.round(values.get(row) * 1e9))
        .toArray();
  }
}
