package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;

class FrictionCheckTest {

  private static final Check CHECK = new FrictionCheck();

  /** 1 mm falls in an hour, every three hours from hour 24. */
  private static double levelMm(double hour, int times) {
    double mm = 150;
    for (int i = 0; i < times; i++) {
      mm += Math.max(0, Math.min(1, hour - 24 - 3 * i));
    }
    return mm;
  }

  /** What of it w1 doesn't show until it slips, an hour and a half after it has ceased. */
  private static double behindMm(int wire, double hour, int times) {
    int number = (int) Math.floor((hour - 24) / 3);
    double into = hour - 24 - 3 * number;
    boolean sticks = wire == 1 && number >= 0 && number < times && into < 2.5;
    return sticks ? -Math.min(1, into) : 0;
  }

  private static HandMade sticking(int times) {
    return HandMade.every(1, 3)
        .level(hour -> levelMm(hour, times))
        .apart((wire, hour) -> behindMm(wire, hour, times));
  }

  /** 1 mm is caught every two hours from hour 25 on, all at once. */
  private static double steppingMm(double hour, int times) {
    return 150 + Math.max(0, Math.min(times, 1 + Math.floor((hour - 25) / 2)));
  }

  @Test
  void aWireThatSticksAndSlipsSixTimesIsTouched() {
    List<Finding> found = sticking(6).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.FRICTION);
    assertThat(finding.wires()).containsExactly("w1");
    assertThat(finding.reason()).contains("w1 stays behind", "6 times, by 1.0 to 1.0 mm");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(24.15, within(0.25));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(41.5, within(0.5));
    assertThat(finding.doubted()).contains(finding.span());
    assertThat(finding.proposal())
        .isEqualTo(
            new Entry.BadInterval(
                new Entry.Header("", "", "", "Sticks and slips."),
                finding.span(),
                Set.of("w1"),
                BadReason.OBSTRUCTION));
  }

  @Test
  void aWireReadEveryFiveMinutesTellsItToo() {
    HandMade season =
        HandMade.every(5, 3)
            .level(hour -> levelMm(hour, 6))
            .apart((wire, hour) -> behindMm(wire, hour, 6));
    assertThat(season.found(CHECK))
        .singleElement()
        .satisfies(finding -> assertThat(finding.wires()).containsExactly("w1"));
  }

  @Test
  void threeSlipsAreTooFew() {
    assertThat(sticking(3).found(CHECK)).isEmpty();
  }

  @Test
  void wiresThatRiseTogetherArentTouched() {
    assertThat(HandMade.every(1, 3).level(hour -> levelMm(hour, 6)).found(CHECK)).isEmpty();
  }

  @Test
  void aWireThatFallsAndComesBackWhileNothingFallsIsNotFriction() {
    HandMade season = HandMade.every(1, 3).apart((wire, hour) -> behindMm(wire, hour, 6));
    assertThat(season.found(CHECK)).isEmpty();
  }

  @Test
  void aBucketThatStandsAndStepsUpIsTouched() {
    List<Finding> found = HandMade.every(1, 3).level(hour -> steppingMm(hour, 6)).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.wires()).isEmpty();
    assertThat(finding.reason())
        .contains("The level stands still and steps up, 6 times, by 1.0 to 1.0 mm");
    assertThat(finding.span().contains(HandMade.ms(25))).isTrue();
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(35.25, within(0.25));
    assertThat(finding.proposal())
        .isEqualTo(
            new Entry.LateCatch(
                new Entry.Header("", "", "", "The bucket sticks and slips."), finding.span()));
  }

  @Test
  void fourStepsOfTheBucketAreTooFewAndReadingsFiveMinutesApartTellNothingOfThem() {
    assertThat(HandMade.every(1, 3).level(hour -> steppingMm(hour, 4)).found(CHECK)).isEmpty();
    assertThat(HandMade.every(5, 3).level(hour -> steppingMm(hour, 6)).found(CHECK)).isEmpty();
  }

  @Test
  void showersOfTwentyMinutesAreNoSteps() {
    HandMade showers =
        HandMade.every(1, 3)
            .level(
                hour ->
                    150
                        + IntStream.range(0, 6)
                            .mapToDouble(i -> Math.max(0, Math.min(1, 3 * (hour - 25 - 2 * i))))
                            .sum());
    assertThat(showers.found(CHECK)).isEmpty();
  }

  @Test
  void stepsThatGalesCouldMakeTellNothing() {
    HandMade gale = HandMade.every(1, 3).level(hour -> steppingMm(hour, 6)).noise(hour -> 0.4);
    assertThat(gale.found(CHECK)).isEmpty();
  }

  @Test
  void aWireSomebodyLeftOutIsNotRaised() {
    Entry bad =
        new Entry.BadInterval(
            HandMade.header("a"), HandMade.span(20, 48), Set.of("w1"), BadReason.OBSTRUCTION);
    assertThat(sticking(6).entry(bad).found(CHECK)).isEmpty();
  }

  @Test
  void lateCatchInTheNotebookSettlesABucketThatSticks() {
    List<Finding> found = HandMade.every(1, 3).level(hour -> steppingMm(hour, 6)).found(CHECK);
    Entry late = new Entry.LateCatch(HandMade.header("a"), HandMade.span(22, 40));
    assertThat(new Settled(new Notebook(List.of(late), List.of())).open(found)).isEmpty();
  }

  @Test
  void oneWireOrOneRowOrNoReadingTellsNothing() {
    assertThat(HandMade.ofOneWire(1, 3).level(hour -> levelMm(hour, 6)).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 2).level(hour -> Double.NaN).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 2).withoutChannels().found(CHECK)).isEmpty();
  }
}
