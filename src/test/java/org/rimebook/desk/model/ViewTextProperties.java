package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

class ViewTextProperties {

  private static final long YEAR_MS = 366L * 86_400_000;

  @Property
  void aViewIsReadAsItWasWritten(
      @ForAll @LongRange(min = 0, max = 4_000_000_000_000L) long fromMs,
      @ForAll @LongRange(min = 1, max = YEAR_MS) long lengthMs,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll long seed,
      @ForAll String filter) {
    Random chance = new Random(seed);
    Interval span = new Interval(fromMs, fromMs + lengthMs);
    ViewState state =
        new ViewState(
            Optional.of(span),
            strips(chance),
            any(CatchForm.values(), chance),
            any(Drawer.values(), chance),
            any(Resolution.values(), chance),
            new Selection(List.of(span), Set.of("north", "hill side"), "20250101T0000-ab.1"),
            Map.of("page", share),
            filter,
            any(FindingOrder.values(), chance));
    ViewText.Reading reading = ViewText.read(ViewText.texts(state));
    assertThat(reading.state()).isEqualTo(state);
    assertThat(reading.unread()).isEmpty();
  }

  private static List<StripSetting> strips(Random chance) {
    List<StripSetting> strips = new ArrayList<>();
    for (StripSetting.Kind kind : StripSetting.Kind.values()) {
      StripSetting strip =
          new StripSetting(
              kind, chance.nextBoolean(), 0.1 + chance.nextDouble(), chance.nextBoolean());
      double least = chance.nextGaussian();
      Extent axis = new Extent(least, least + 0.1 + chance.nextDouble());
      strips.add(strip.fits() || chance.nextBoolean() ? strip : strip.staying(axis));
    }
    Collections.shuffle(strips, chance);
    return strips;
  }

  private static <T> T any(T[] values, Random chance) {
    return values[chance.nextInt(values.length)];
  }
}
