package org.rimebook.desk.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.CatchForm;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

class StripStackTest {

  private static final double SPIKE_HOUR = 100;

  @TempDir private Path folder;

  @Test
  void aSpikeOfOneReadingIsSeenWithAllOfTheSeasonInView() {
    Bucket calm = Bucket.every(1, 240);
    Bucket spiked = Bucket.every(1, 240).level(h -> Math.abs(h - SPIKE_HOUR) < 0.001 ? 190 : 150);
    Stack.of(
        spiked,
        stack -> {
          stack.show(Set.of(Kind.FREQUENCY));
          Rectangle area = stack.area(Kind.FREQUENCY);
          int x = stack.strips.xAt(Bucket.ms(SPIKE_HOUR));
          Rectangle high = new Rectangle(x - 4, area.y + 20, 9, area.height / 4);
          assertThat(coloured(stack.paint(), high)).isPositive();
          Rectangle elsewhere = new Rectangle(x + 60, area.y + 20, 9, area.height / 4);
          assertThat(coloured(stack.paint(), elsewhere)).isZero();
        });
    Stack.of(
        calm,
        stack -> {
          stack.show(Set.of(Kind.FREQUENCY));
          assertThat(width(stack.plot(Kind.FREQUENCY).range())).isLessThan(500);
        });
  }

  @Test
  void missingTimeIsHatchedAndNoLineIsDrawnAcross() {
    Stack.of(
        Bucket.every(5, 48).level(h -> 150 + h).silent(20, 30),
        stack -> {
          stack.show(Set.of(Kind.DEPTH));
          Rectangle area = stack.area(Kind.DEPTH);
          int from = stack.strips.xAt(Bucket.ms(20)) + 3;
          int to = stack.strips.xAt(Bucket.ms(30)) - 3;
          Rectangle gap = new Rectangle(from, area.y, to - from, area.height);
          BufferedImage image = stack.paint();
          Color hatched = Emphasis.mixed(Look.missing(), Look.paper(), 0.3);
          assertThat(of(image, gap, hatched)).isGreaterThan(50);
          assertThat(coloured(image, gap)).isZero();
          Rectangle before = new Rectangle(from - 60, area.y, 50, area.height);
          assertThat(of(image, before, hatched)).isZero();
          assertThat(coloured(image, before)).isPositive();
        });
  }

  @Test
  void anAxisThatFitsHoldsAllInViewAndOneThatStaysStays() {
    Stack.of(
        Bucket.every(5, 48).level(Bucket.rain(30, 40, 5)),
        stack -> {
          Extent whole = stack.plot(Kind.DEPTH).range();
          assertThat(whole.least()).isLessThan(150);
          assertThat(whole.most()).isGreaterThan(200);
          stack.workspace.view().go(Bucket.span(2, 20));
          stack.paint();
          assertThat(width(stack.plot(Kind.DEPTH).range())).isCloseTo(1, within(0.2));
          stack.act("Axes fit what is in view, or stay");
          stack.workspace.view().go(Bucket.span(2, 40));
          stack.paint();
          assertThat(width(stack.plot(Kind.DEPTH).range())).isCloseTo(1, within(0.2));
          stack.act("Axes fit what is in view, or stay");
          assertThat(stack.plot(Kind.DEPTH).range().most()).isGreaterThan(200);
        });
  }

  @Test
  void theCrossHairTellsTheReadingsOfEveryStrip() {
    Stack.of(
        Bucket.every(5, 48).level(h -> 150 + h / 2).weather(h -> -4.3, 3),
        stack -> {
          stack.workspace.cursorMs().set(OptionalLong.of(Bucket.ms(10)));
          stack.paint();
          List<String> words = new ArrayList<>();
          stack.strips.readingsAt(Bucket.ms(10)).forEach(r -> words.add(words(r)));
          assertThat(words.get(1))
              .isEqualTo("w0 155.00 mm|w1 155.00 mm|w2 155.00 mm|bucket 155.00 mm");
          assertThat(words.get(2))
              .startsWith("since the start ")
              .contains("\u00b1")
              .endsWith(" mm");
          assertThat(words.subList(3, 5)).containsExactly(" \u22124.3 \u00b0C", " 3.0 m/s");
          assertThat(CrossHair.words(Bucket.ms(10), Bucket.OFFSET, false))
              .isEqualTo("Fri 10 Jan 2025 10:00");
        });
  }

  @Test
  void aNeighboursCatchIsAStripOfItsOwnUntilItIsTakenAway() throws IOException {
    String header = "start,end,catch_mm\n";
    String days =
        "2025-01-10T00:00:00-07:00,2025-01-11T00:00:00-07:00,12.5\n"
            + "2025-01-11T00:00:00-07:00,2025-01-12T00:00:00-07:00,\n";
    Path table = Files.writeString(folder.resolve("valley.csv"), header + days);
    Stack.of(
        Bucket.every(5, 48),
        stack -> {
          stack.strips.neighbour().show(table);
          stack.paint();
          assertThat(stack.kinds()).contains(Kind.NEIGHBOUR);
          assertThat(stack.plot(Kind.NEIGHBOUR).title()).isEqualTo("Catch a day by valley.csv, mm");
          assertThat(stack.plot(Kind.NEIGHBOUR).range().most()).isBetween(12.5, 15.0);
          assertThat(words(stack.strips.readingsAt(Bucket.ms(10)).get(3)))
              .contains("12.50")
              .contains("mm");
          assertThat(words(stack.strips.readingsAt(Bucket.ms(30)).get(3))).isEqualTo(" no total");
          stack.act("Neighbour's daily catch");
          stack.paint();
          assertThat(stack.kinds()).doesNotContain(Kind.NEIGHBOUR);
        });
  }

  @Test
  void aNeighboursTableThatCannotBeReadIsSaidSo() throws IOException {
    Path table = Files.writeString(folder.resolve("valley.csv"), "date,rain\n");
    Stack.of(
        Bucket.every(5, 48),
        stack -> {
          stack.strips.neighbour().show(table);
          assertThat(stack.workspace.notice().get().words()).contains("no column \"start\"");
          assertThat(stack.kinds()).doesNotContain(Kind.NEIGHBOUR);
        });
  }

  @Test
  void aReadingLeftOutIsTellable() {
    Entry bad =
        new Entry.BadInterval(
            Bucket.header("1"), Bucket.span(10, 12), Set.of("w1"), BadReason.NOISE);
    Stack.of(
        Bucket.every(5, 48).entry(bad).silent(30, 34),
        stack -> {
          assertThat(words(stack.strips.readingsAt(Bucket.ms(11)).get(1)))
              .contains("w0 150.00 mm|w1 150.00 mm, left out|");
          assertThat(words(stack.strips.readingsAt(Bucket.ms(32)).get(1)))
              .startsWith("w0 no reading|");
        });
  }

  @Test
  void stripsOfChannelsTheSheetLacksArentThere() {
    Stack.of(
        Bucket.every(5, 24),
        stack -> assertThat(stack.kinds()).containsExactly(Kind.FREQUENCY, Kind.DEPTH, Kind.CATCH));
    Stack.of(
        Bucket.every(5, 24).weather(h -> 1, 3),
        stack -> assertThat(stack.kinds()).contains(Kind.TEMPERATURE, Kind.WIND));
  }

  @Test
  void theCatchIsDrawnInEachForm() {
    Stack.of(
        Bucket.every(5, 72).level(Bucket.rain(30, 40, 5)).silent(50, 56),
        stack -> {
          for (CatchForm form : CatchForm.values()) {
            stack.workspace.catchForm().set(form);
            assertThat(coloured(stack.paint(), stack.area(Kind.CATCH))).isPositive();
          }
          assertThat(words(stack.strips.readingsAt(Bucket.ms(35)).get(2)))
              .matches(" 5\\d\\.\\d \u00b1 \\d\\.\\d mm, good");
        });
  }

  @Test
  void whileAnEntryIsForeseenOnlyTheCatchIsMadeAnew() {
    Stack.of(
        Bucket.every(5, 72).level(Bucket.rain(30, 40, 5)),
        stack -> {
          StripPlot depth = stack.plot(Kind.DEPTH);
          StripPlot caught = stack.plot(Kind.CATCH);
          Bucket marked =
              Bucket.every(5, 72)
                  .level(Bucket.rain(30, 40, 5))
                  .entry(new Entry.DrySpell(Bucket.header("1"), Bucket.span(29, 41)));
          stack.compute(marked.result(), Computed.State.FORESEEN);
          stack.paint();
          assertThat(stack.plot(Kind.DEPTH)).isSameAs(depth);
          assertThat(stack.plot(Kind.CATCH)).isNotSameAs(caught);
          assertThat(stack.plot(Kind.CATCH).range().most()).isLessThan(10);
        });
  }

  @Test
  void chosenWiresStandOutAndOverlaysLieWhereTimeLies() {
    Stack.of(
        Bucket.every(5, 24).level(h -> 150 + h),
        stack -> {
          stack.workspace.selection().set(stack.workspace.selection().get().toggled("w1"));
          stack.show(Set.of(Kind.FREQUENCY));
          Rectangle area = stack.area(Kind.FREQUENCY);
          assertThat(of(stack.paint(), area, Look.wire(0))).isZero();
          List<Interval> seen = new ArrayList<>();
          stack.strips.addOverlay(
              (graphics, geometry) ->
                  seen.add(
                      new Interval(
                          geometry.timeAt(geometry.plots().x),
                          geometry.timeAt(geometry.plots().x + geometry.plots().width))));
          stack.paint();
          assertThat(seen).containsExactly(stack.workspace.view().visible().get());
          assertThat(stack.strips.timeAt(stack.strips.xAt(Bucket.ms(12))))
              .isCloseTo(Bucket.ms(12), within(120_000L));
        });
  }

  @Test
  void withoutASeasonItSaysWhatGoesThere() {
    Stack.empty(
        stack -> {
          BufferedImage image = stack.paint();
          Rectangle middle = new Rectangle(Stack.WIDTH / 2 - 80, Stack.HEIGHT / 2 - 15, 160, 20);
          assertThat(of(image, middle, Look.paper())).isLessThan(160 * 20);
        });
  }

  @Test
  void theOverviewDrawsTheSeasonAndItsWindow() {
    Stack.of(
        Bucket.every(5, 72).level(Bucket.rain(30, 40, 5)),
        stack -> {
          SeasonOverview overview = new SeasonOverview(stack.workspace, stack.strips);
          overview.setSize(Stack.WIDTH, 64);
          stack.workspace.view().go(Bucket.span(24, 48));
          BufferedImage image = new BufferedImage(Stack.WIDTH, 64, BufferedImage.TYPE_INT_RGB);
          Graphics2D graphics = image.createGraphics();
          overview.paint(graphics);
          graphics.dispose();
          assertThat(of(image, overview.window(), Look.accent())).isGreaterThan(50);
          assertThat(of(image, overview.window(), Look.ink())).isPositive();
        });
  }

  private static String words(List<Content.Reading> readings) {
    return String.join("|", readings.stream().map(r -> r.name() + " " + r.words()).toList());
  }

  private static double width(Extent range) {
    return range.most() - range.least();
  }

  /** Pixels of a colour. */
  private static int of(BufferedImage image, Rectangle area, Color colour) {
    int found = 0;
    for (int x = area.x; x < area.x + area.width; x++) {
      for (int y = area.y; y < area.y + area.height; y++) {
        found += (image.getRGB(x, y) & 0xffffff) == (colour.getRGB() & 0xffffff) ? 1 : 0;
      }
    }
    return found;
  }

  /** Pixels well away in colour or depth from paper, grid and hatch. */
  private static int coloured(BufferedImage image, Rectangle area) {
    int found = 0;
    for (int x = area.x; x < area.x + area.width; x++) {
      for (int y = area.y; y < area.y + area.height; y++) {
        Color colour = new Color(image.getRGB(x, y));
        int least = Math.min(colour.getRed(), Math.min(colour.getGreen(), colour.getBlue()));
        int most = Math.max(colour.getRed(), Math.max(colour.getGreen(), colour.getBlue()));
        found += least < 110 || most - least > 40 ? 1 : 0;
      }
    }
    return found;
  }
}
