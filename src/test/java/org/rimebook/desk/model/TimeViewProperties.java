package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.rimebook.station.Interval;

class TimeViewProperties {

  private static final long DAY = 86_400_000;
  private static final Interval WHOLE = new Interval(0, 180 * DAY);

  @Property
  void aViewNeverLeavesTheWholeNorGetsShorterThanTheShortest(
      @ForAll @LongRange(min = -400 * DAY, max = 400 * DAY) long from,
      @ForAll @LongRange(min = 0, max = 500 * DAY) long length,
      @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
    TimeView view = new TimeView(WHOLE);

    view.go(new Interval(from, from + length));
    view.zoom(from, factor);

    Interval shown = view.visible().get();
    assertThat(shown.fromMs()).isGreaterThanOrEqualTo(WHOLE.fromMs());
    assertThat(shown.toMs()).isLessThanOrEqualTo(WHOLE.toMs());
    assertThat(shown.lengthMs()).isGreaterThanOrEqualTo(TimeView.SHORTEST_MS);
  }

  @Property
  void theInstantZoomedAboutStaysWhereItIs(
      @ForAll @LongRange(min = 80 * DAY, max = 100 * DAY) long about,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double factor) {
    TimeView view = new TimeView(WHOLE);
    view.go(new Interval(70 * DAY, 110 * DAY));
    double before = share(view, about);

    view.zoom(about, factor);

    assertThat(share(view, about)).isCloseTo(before, within(1e-6));
  }

  @Property
  void goingBackAsOftenAsForwardEndsWhereItStarted(
      @ForAll @Size(min = 1, max = 20) List<@LongRange(min = 0, max = 170) Long> days) {
    TimeView view = new TimeView(WHOLE);
    days.forEach(day -> view.go(new Interval(day * DAY, (day + 5) * DAY)));
    Interval last = view.visible().get();
    int steps = 0;
    while (view.canGoBack()) {
      view.back();
      steps++;
    }
    assertThat(view.visible().get()).isEqualTo(WHOLE);
    for (int i = 0; i < steps; i++) {
      view.forward();
    }
    assertThat(view.visible().get()).isEqualTo(last);
  }

  private static double share(TimeView view, long about) {
    Interval shown = view.visible().get();
    return (about - shown.fromMs()) / (double) shown.lengthMs();
  }
}
