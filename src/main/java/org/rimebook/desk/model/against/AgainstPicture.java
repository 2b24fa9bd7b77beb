package org.rimebook.desk.model.against;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.accumulation.SunMark;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;

/**
 * Raw against derived, ready to be drawn. Made away from the event thread; what the last picture
 * has and doesn't change is kept.
 *
 * @param asked what was asked for
 * @param readings the readings
 * @param curve frequency against depth
 * @param pair wire against wire; empty when there is one wire only
 * @param sun the sun's mark; empty until the catch is computed, and when there is one wire only
 */
public record AgainstPicture(
    Asked asked, Readings readings, Scatter curve, Optional<Scatter> pair, Optional<SunMark> sun) {

  /**
   * Makes a picture.
   *
   * @param asked what to draw
   * @param last the last picture, if any
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static AgainstPicture of(Asked asked, Optional<AgainstPicture> last, Progress progress) {
    AgainstPicture base =
        last.filter(picture -> picture.asked.sameButSelection(asked))
            .orElseGet(() -> anew(asked, last, progress));
    progress.step("selection", 0.9);
    List<RowSpan> rows = base.curve.span().in(base.readings.record(), asked.selected());
    return new AgainstPicture(
        asked,
        base.readings,
        base.curve.selecting(rows),
        base.pair.map(scatter -> scatter.selecting(rows)),
        base.sun);
  }

  private static AgainstPicture anew(Asked asked, Optional<AgainstPicture> last, Progress to) {
    to.step("readings", 0);
    Readings readings =
        last.filter(picture -> picture.asked.sameReadings(asked))
            .map(AgainstPicture::readings)
            .orElseGet(() -> Readings.of(asked.opened(), asked.computed()));
    RowSpan span = RowSpan.of(readings.record(), asked.within());
    to.step("frequency against depth", 0.2);
    Scatter curve = Scatter.of(curves(readings), span, asked.room().curve(), Range.EMPTY);
    to.step("wire against wire", 0.5);
    Optional<Scatter> pair = pair(readings, asked, span);
    to.step("departure by hour", 0.7);
    Optional<SunMark> sun =
        readings.result().filter(r -> readings.wires().size() > 1).map(r -> sun(asked, r));
    return new AgainstPicture(asked, readings, curve, pair, sun);
  }

  private static List<Scatter.Series> curves(Readings readings) {
    return IntStream.range(0, readings.wires().size())
        .mapToObj(
            wire ->
                new Scatter.Series(
                    new Scatter.Named(readings.wires().get(wire).name(), wire),
                    readings.onCurve(wire)))
        .toList();
  }

  private static Optional<Scatter> pair(Readings readings, Asked asked, RowSpan span) {
    if (readings.wires().size() < 2) {
      return Optional.empty();
    }
    Asked.Pair pair = asked.pair();
    String words =
        readings.wires().get(pair.one()).name()
            + " less "
            + readings.wires().get(pair.other()).name();
    Scatter.Series series =
        new Scatter.Series(
            new Scatter.Named(words, pair.one()), readings.pair(pair.one(), pair.other()));
    return Optional.of(Scatter.of(List.of(series), span, asked.room().pair(), Range.EMPTY.with(0)));
  }

  private static SunMark sun(Asked asked, SeasonResult result) {
    return SunMark.of(
        asked.within(),
        result.season().record(),
        result.season().sheet().utcOffset(),
        result.depths(),
        result.series());
  }
}
