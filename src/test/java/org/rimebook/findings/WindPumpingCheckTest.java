package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;

class WindPumpingCheckTest {

  private static final Check CHECK = new WindPumpingCheck();
  private static final DoubleUnaryOperator GALE = hour -> hour >= 32 && hour < 42 ? 15 : 5;

  private static DoubleUnaryOperator noise(double from, double to, double mm) {
    return hour -> hour >= from && hour < to ? mm : 0.1;
  }

  private static HandMade shaken(double minutes) {
    return HandMade.every(minutes, 3).noise(noise(34, 40, 1)).wind(GALE);
  }

  @Test
  void hoursInWhichTheWindShakesAllWiresAreFoundOnce() {
    List<Finding> found = shaken(1).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.WIND_PUMPING);
    assertThat(finding.wires()).isEmpty();
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(34, within(1.0));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(40, within(1.0));
    assertThat(finding.reason())
        .containsPattern("scatter by (0.9|1.0)\\d mm, 0.(09|10|11) mm being usual")
        .contains("The wind blew at 15.0 m/s, 5.0 m/s being usual.");
    assertThat(finding.doubted()).isEmpty();
    assertThat(finding.proposal())
        .isInstanceOfSatisfying(
            Entry.Remark.class, remark -> assertThat(remark.about()).contains(finding.span()));
  }

  @Test
  void readingsFiveMinutesApartTellItToo() {
    assertThat(shaken(5).found(CHECK)).hasSize(1);
  }

  @Test
  void readingsAnHourApartTellNothing() {
    assertThat(shaken(60).found(CHECK)).isEmpty();
  }

  @Test
  void noiseWithoutMoreWindThanUsualIsNotTheWind() {
    assertThat(shaken(1).wind(hour -> 5).found(CHECK)).isEmpty();
  }

  @Test
  void whereTheWindIsNotMeasuredTheNoiseTells() {
    assertThat(shaken(1).withoutChannels().found(CHECK))
        .singleElement()
        .satisfies(finding -> assertThat(finding.reason()).endsWith("The wind isn't measured."));
  }

  @Test
  void twoHoursAreTooShortAndTwiceTheUsualNoiseTooLittle() {
    assertThat(HandMade.every(1, 3).noise(noise(34, 36, 1)).wind(GALE).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 3).noise(noise(34, 40, 0.2)).wind(GALE).found(CHECK)).isEmpty();
  }

  @Test
  void aSeasonThatIsAlwaysNoisyHasNoEpisode() {
    assertThat(HandMade.every(1, 3).noise(hour -> 1).wind(GALE).found(CHECK)).isEmpty();
  }

  @Test
  void oneNoisyWireIsNotTheWind() {
    HandMade season =
        HandMade.every(1, 3)
            .apart(
                (wire, hour) ->
                    wire == 1 && hour >= 34 && hour < 40
                        ? 1.5 * Math.sin(2.3 * Math.round(60 * hour))
                        : 0)
            .wind(GALE);
    assertThat(season.found(CHECK)).isEmpty();
  }

  /** Every other reading 2 mm more, as in showers, never less. */
  @Test
  void rainThatComesAndGoesNeverFallsAndIsNotTheWind() {
    HandMade showers =
        HandMade.every(5, 3)
            .level(h -> 150 + 2 * Math.floor(Math.max(0, Math.min(h, 40) - 34) * 6))
            .wind(GALE);
    assertThat(showers.found(CHECK)).isEmpty();
  }

  @Test
  void noFewerThanTheFiveStrongestAndNoMoreAreTold() {
    HandMade season =
        HandMade.every(1, 12)
            .noise(hour -> hour % 24 >= 6 && hour % 24 < 11 ? 0.7 + hour / 240 : 0.1)
            .withoutChannels();
    List<Finding> found = season.found(CHECK);
    assertThat(found).hasSize(5);
    assertThat(found)
        .allSatisfy(f -> assertThat(HandMade.hour(f.span().fromMs())).isGreaterThan(7 * 24));
  }

  @Test
  void aVisitInTheNotebookExplainsIt() {
    Entry visit =
        new Entry.ServiceVisit(
            HandMade.header("a"),
            HandMade.span(33, 41),
            List.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    assertThat(shaken(1).entry(visit).found(CHECK)).isEmpty();
  }

  @Test
  void oneWireOrOneRowOrNoReadingTellsNothing() {
    assertThat(HandMade.ofOneWire(1, 3).noise(noise(34, 40, 1)).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 2).level(hour -> Double.NaN).found(CHECK)).isEmpty();
  }
}
