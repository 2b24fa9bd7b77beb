package org.rimebook.desk.model.against;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;

class AgainstPictureTest {

  private static final SeasonResult PULLED =
      Bucket.every(30, 72).level(Bucket.rain(10, 20, 3)).pull(1, 40, -6).result();

  private static AgainstPicture picture(Asked asked) {
    return AgainstPicture.of(asked, Optional.empty(), Progress.NONE);
  }

  /** Worked by hand: with one of three wires 6 mm down, it lies 4 mm below their mean. */
  @Test
  void aWireThatLeavesItsCurveIsSaidToLieFurthestOff() {
    Readings readings = Fixtures.readings(Bucket.every(30, 72).pull(1, 40, -6));
    int row = 100;

    assertThat(readings.onCurve(1).departureMm(row)).isCloseTo(-4, within(1e-6));
    assertThat(readings.onCurve(0).departureMm(row)).isCloseTo(2, within(1e-6));
    assertThat(readings.pair(0, 1).y(row)).isCloseTo(6, within(1e-6));
    AgainstPicture picture = picture(Fixtures.asked(PULLED, List.of()));
    assertThat(new AgainstWords(picture.readings()).furthestOff(picture.curve()))
        .startsWith("w1: mean −");
  }

  @Test
  void theAxesHoldEveryReadingThatIsUsed() {
    AgainstPicture picture = picture(Fixtures.asked(PULLED, List.of()));

    for (Scatter.Layer layer : picture.curve().layers()) {
      int inside = 0;
      for (int i = 0; i < layer.used().size(); i++) {
        assertThat(layer.used().outside(i)).isFalse();
        inside += layer.used().count(i);
      }
      assertThat(inside).isEqualTo(layer.spread().used());
    }
  }

  @Test
  void aNewSelectionKeepsAllElse() {
    AgainstPicture first = picture(Fixtures.asked(PULLED, List.of()));
    Asked asked = first.asked();
    Asked selecting =
        new Asked(
            asked.opened(),
            asked.computed(),
            asked.within(),
            List.of(Bucket.span(10, 12)),
            asked.pair(),
            asked.room());

    AgainstPicture second = AgainstPicture.of(selecting, Optional.of(first), Progress.NONE);

    assertThat(second.curve().sameButSelection(first.curve())).isTrue();
    assertThat(second.readings()).isSameAs(first.readings());
    Cloud selected = second.pair().orElseThrow().layers().get(0).selected();
    int readings = 0;
    for (int i = 0; i < selected.size(); i++) {
      readings += selected.count(i);
    }
    assertThat(readings).isEqualTo(4);
  }

  @Test
  void aSpreadIsThatOfTheReadingsUsed() {
    Readings readings = Fixtures.readings(Bucket.every(30, 72).pull(0, 36, 1));

    Spread spread = Spread.of(readings.pair(0, 1), new RowSpan(0, 144));

    // Worked by hand: half of the departures are 0 mm, half 1 mm.
    assertThat(spread.used()).isEqualTo(144);
    assertThat(spread.meanMm()).isCloseTo(0.5, within(1e-6));
    assertThat(spread.sdMm()).isCloseTo(0.5, within(1e-6));
  }

  @Test
  void anInstantFarFromAnyReadingHasNone() {
    Readings readings = Fixtures.readings(Bucket.every(30, 24).silent(6, 12));

    assertThat(readings.rowNear(Bucket.ms(3.2))).hasValue(6);
    assertThat(readings.rowNear(Bucket.ms(3.3))).hasValue(7);
    assertThat(readings.rowNear(Bucket.ms(9))).isEmpty();
    assertThat(readings.rowNear(Bucket.ms(24.5))).hasValue(readings.record().size() - 1);
  }
}
