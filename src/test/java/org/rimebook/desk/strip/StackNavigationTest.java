package org.rimebook.desk.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.model.StripSetting;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.fixture.Bucket;
import org.rimebook.station.Interval;

class StackNavigationTest {

  private static final int LEFT = InputEvent.BUTTON1_DOWN_MASK;
  private static final int MIDDLE = InputEvent.BUTTON2_DOWN_MASK;
  private static final int CTRL = InputEvent.CTRL_DOWN_MASK;
  private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;
  private static final long MINUTE_MS = 60_000;

  private static Bucket season() {
    return Bucket.every(5, 96).level(Bucket.rain(30, 40, 5)).weather(h -> h / 10, 3);
  }

  private static Interval visible(Stack stack) {
    return stack.workspace.view().visible().get();
  }

  private static Point at(Stack stack, Kind kind, double hour, double share) {
    Rectangle area = stack.area(kind);
    int y = area.y + (int) (share * area.height);
    return new Point(stack.strips.xAt(Bucket.ms(hour)), y);
  }

  @Test
  void theWheelZoomsAboutThePointer() {
    Stack.of(
        season(),
        stack -> {
          Point pointer = at(stack, Kind.DEPTH, 24, 0.5);
          long before = stack.strips.timeAt(pointer.x);
          stack.wheel(0, pointer, -3);
          assertThat(visible(stack).lengthMs()).isLessThan(55 * 3_600_000L);
          assertThat(stack.strips.timeAt(pointer.x)).isCloseTo(before, within(1000L));
          stack.wheel(CTRL, pointer, 3);
          assertThat(visible(stack)).isEqualTo(stack.workspace.view().whole());
        });
  }

  @Test
  void withShiftTheWheelPansAndTheMiddleButtonDragsTheView() {
    Stack.of(
        season(),
        stack -> {
          stack.workspace.view().go(Bucket.span(20, 40));
          stack.wheel(SHIFT, at(stack, Kind.DEPTH, 30, 0.5), 1);
          assertThat(visible(stack)).isEqualTo(Bucket.span(22, 42));
          Point from = at(stack, Kind.DEPTH, 32, 0.5);
          Point to = at(stack, Kind.DEPTH, 37, 0.5);
          stack.drag(MIDDLE, from, to);
          assertThat(visible(stack).fromMs()).isCloseTo(Bucket.ms(17), within(3 * MINUTE_MS));
          stack.workspace.view().back();
          assertThat(visible(stack)).isEqualTo(Bucket.span(22, 42));
        });
  }

  @Test
  void aFlatBoxZoomsInTimeAlone() {
    Stack.of(
        season(),
        stack -> {
          Point from = at(stack, Kind.DEPTH, 30, 0.5);
          stack.drag(LEFT | CTRL, from, at(stack, Kind.DEPTH, 40, 0.5));
          assertThat(visible(stack).fromMs()).isCloseTo(Bucket.ms(30), within(10 * MINUTE_MS));
          assertThat(visible(stack).toMs()).isCloseTo(Bucket.ms(40), within(10 * MINUTE_MS));
          assertThat(stack.workspace.strips().get()).allMatch(StripSetting::fits);
        });
  }

  @Test
  void aBoxWithAHeightZoomsIntoTheValuesOfItsStripWhichThenStays() {
    Stack.of(
        season(),
        stack -> {
          Extent before = stack.plot(Kind.DEPTH).range();
          Point from = at(stack, Kind.DEPTH, 40, 0.5);
          stack.drag(LEFT | CTRL, from, at(stack, Kind.DEPTH, 30, 0));
          Extent after = stack.plot(Kind.DEPTH).range();
          double middle = (before.least() + before.most()) / 2;
          assertThat(after.most()).isCloseTo(before.most(), within(1e-6));
          assertThat(after.least()).isCloseTo(middle, within(1.0));
          assertThat(stack.workspace.strips().get())
              .filteredOn(s -> !s.fits())
              .extracting(StripSetting::kind)
              .containsExactly(Kind.DEPTH);
        });
  }

  @Test
  void anAxisThatStaysStandsWhereItWasLeftWhenTheSeasonIsOpenedAgain() {
    List<StripSetting> left = new ArrayList<>();
    List<Extent> axis = new ArrayList<>();
    Stack.of(
        season(),
        stack -> {
          stack.drag(LEFT | CTRL, at(stack, Kind.DEPTH, 40, 0.5), at(stack, Kind.DEPTH, 30, 0));
          axis.add(stack.plot(Kind.DEPTH).range());
          left.addAll(stack.workspace.strips().get());
        });
    Stack.empty(
        stack -> {
          stack.workspace.strips().set(left);
          stack.open(season().result());
          stack.paint();
          assertThat(stack.plot(Kind.DEPTH).range()).isEqualTo(axis.get(0));
        });
  }

  @Test
  void anAxisThatStaysButWasNeverSeenBeginsWithWhatIsInView() {
    List<Extent> fitted = new ArrayList<>();
    Stack.of(season(), stack -> fitted.add(stack.plot(Kind.DEPTH).range()));
    Stack.empty(
        stack -> {
          stack
              .workspace
              .strips()
              .set(stack.workspace.strips().get().stream().map(s -> s.fitting(false)).toList());
          stack.open(season().result());
          stack.paint();
          assertThat(stack.plot(Kind.DEPTH).range()).isEqualTo(fitted.get(0));
        });
  }

  @Test
  void goingBackFromABoxHasItsStripFitAgainAndForwardStayAgain() {
    Stack.of(
        season(),
        stack -> {
          Extent before = stack.plot(Kind.DEPTH).range();
          Point from = at(stack, Kind.DEPTH, 40, 0.5);
          stack.drag(LEFT | CTRL, from, at(stack, Kind.DEPTH, 30, 0));
          Extent boxed = stack.plot(Kind.DEPTH).range();
          stack.act("Back to the view before");
          assertThat(stack.workspace.strips().get()).allMatch(StripSetting::fits);
          assertThat(stack.plot(Kind.DEPTH).range()).isEqualTo(before);
          stack.act("Forward again");
          assertThat(stack.plot(Kind.DEPTH).range()).isEqualTo(boxed);
          assertThat(stack.workspace.strips().get()).anyMatch(strip -> !strip.fits());
        });
  }

  @Test
  void escapeIsTakenOnlyWhileTheViewIsDragged() {
    Stack.of(
        season(),
        stack -> {
          Interval before = visible(stack);
          assertThat(escape(stack)).isFalse();
          Stack.send(
              stack.strips, MouseEvent.MOUSE_PRESSED, LEFT | CTRL, at(stack, Kind.DEPTH, 30, 0.5));
          assertThat(escape(stack)).isTrue();
          Point to = at(stack, Kind.DEPTH, 40, 0.5);
          Stack.send(stack.strips, MouseEvent.MOUSE_DRAGGED, LEFT | CTRL, to);
          Stack.send(stack.strips, MouseEvent.MOUSE_RELEASED, LEFT | CTRL, to);
          assertThat(visible(stack)).isEqualTo(before);
        });
  }

  /** Whether the strips take Escape. */
  private static boolean escape(Stack stack) {
    KeyStroke escape = KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0);
    Object name = stack.strips.getInputMap(JComponent.WHEN_FOCUSED).get(escape);
    char typed = (char) KeyEvent.VK_ESCAPE;
    KeyEvent event =
        new KeyEvent(stack.strips, KeyEvent.KEY_PRESSED, 0, 0, KeyEvent.VK_ESCAPE, typed);
    return SwingUtilities.notifyAction(
        stack.strips.getActionMap().get(name), escape, event, stack.strips, 0);
  }

  @Test
  void aPlainPressInThePlotsIsLeftForMarking() {
    Stack.of(
        season(),
        stack -> {
          Interval before = visible(stack);
          Point inside = at(stack, Kind.DEPTH, 30, 0.5);
          assertThat(press(stack, LEFT, inside).isConsumed()).isFalse();
          assertThat(press(stack, LEFT | CTRL, inside).isConsumed()).isTrue();
          assertThat(press(stack, MIDDLE, inside).isConsumed()).isTrue();
          stack.drag(LEFT, inside, at(stack, Kind.DEPTH, 40, 0.5));
          assertThat(visible(stack)).isEqualTo(before);
        });
  }

  private static MouseEvent press(Stack stack, int held, Point at) {
    MouseEvent event = Stack.send(stack.strips, MouseEvent.MOUSE_PRESSED, held, at);
    Stack.send(stack.strips, MouseEvent.MOUSE_RELEASED, held, at);
    return event;
  }

  @Test
  void theBorderBetweenTwoStripsCanBeDragged() {
    Stack.of(
        season(),
        stack -> {
          Rectangle upper = stack.area(Kind.FREQUENCY);
          Rectangle lower = stack.area(Kind.DEPTH);
          Point border = new Point(upper.x + 100, upper.y + upper.height + 2);
          stack.drag(LEFT, border, new Point(border.x, border.y + 40));
          assertThat(stack.area(Kind.FREQUENCY).height).isCloseTo(upper.height + 40, within(2));
          assertThat(stack.area(Kind.DEPTH).height).isCloseTo(lower.height - 40, within(2));
        });
  }

  @Test
  void aClickOnAWiresNameChoosesIt() {
    Stack.of(
        season(),
        stack -> {
          Rectangle area = stack.area(Kind.FREQUENCY);
          Rectangle margin = new Rectangle(area.x + area.width + 8, area.y, 20, area.height);
          for (int y = margin.y; y < margin.y + margin.height; y++) {
            Point point = new Point(margin.x, y);
            if (stack.strips.wireAt(point).equals(Optional.of("w1"))) {
              press(stack, LEFT, point);
              break;
            }
          }
          assertThat(stack.workspace.selection().get().wires()).isEqualTo(Set.of("w1"));
        });
  }

  @Test
  void thePointerMovesTheCrossHairAndLeavingTakesItAway() {
    Stack.of(
        season(),
        stack -> {
          Point point = at(stack, Kind.CATCH, 50, 0.5);
          Stack.send(stack.strips, MouseEvent.MOUSE_MOVED, 0, point);
          assertThat(stack.workspace.cursorMs().get().orElseThrow())
              .isEqualTo(stack.strips.timeAt(point.x));
          Stack.send(stack.strips, MouseEvent.MOUSE_EXITED, 0, new Point(-1, -1));
          assertThat(stack.workspace.cursorMs().get()).isEmpty();
        });
  }

  @Test
  void daysAreFittedInStationTime() {
    Stack.of(
        season(),
        stack -> {
          stack.workspace.view().go(Bucket.span(40, 50));
          stack.act("Fit a day");
          assertThat(visible(stack)).isEqualTo(Bucket.span(24, 48));
          stack.act("Later by a screen");
          assertThat(visible(stack)).isEqualTo(Bucket.span(48, 72));
          stack.act("Back to the view before");
          stack.act("Back to the view before");
          assertThat(visible(stack)).isEqualTo(Bucket.span(40, 50));
          stack.act("Forward again");
          assertThat(visible(stack)).isEqualTo(Bucket.span(24, 48));
        });
  }

  @Test
  void aDateIsGoneToAndWhatIsNoDateIsAnsweredInWords() {
    Stack.of(
        season(),
        stack -> {
          GoTo goTo = stack.strips.goTo();
          stack.act("Go to a date");
          assertThat(goTo.isVisible()).isTrue();
          enter(goTo, "yesterday");
          assertThat(goTo.fault()).contains("Write 2025-01-15");
          enter(goTo, "2024-06-01");
          assertThat(goTo.fault()).isEqualTo("The record goes from 2025-01-09 to 2025-01-14.");
          enter(goTo, "2025-01-11");
          assertThat(visible(stack)).isEqualTo(Bucket.span(24, 48));
          assertThat(goTo.isVisible()).isFalse();
          enter(goTo, "2025-01-12 06");
          assertThat(visible(stack).contains(Instant.parse("2025-01-12T13:30:00Z").toEpochMilli()))
              .isTrue();
        });
  }

  private static void enter(GoTo goTo, String words) {
    goTo.date().setText(words);
    goTo.date().postActionEvent();
  }

  @Test
  void theOverviewsWindowIsDraggedAndResized() {
    Stack.of(
        season(),
        stack -> {
          SeasonOverview overview = new SeasonOverview(stack.workspace, stack.strips);
          overview.setSize(Stack.WIDTH, 64);
          stack.workspace.view().go(Bucket.span(24, 48));
          Rectangle window = overview.window();
          pull(overview, window.x + window.width, overview.xAt(Bucket.ms(72)));
          assertThat(visible(stack).toMs()).isCloseTo(Bucket.ms(72), within(15 * MINUTE_MS));
          pull(overview, overview.xAt(Bucket.ms(40)), overview.xAt(Bucket.ms(50)));
          assertThat(visible(stack).fromMs()).isCloseTo(Bucket.ms(34), within(15 * MINUTE_MS));
        });
  }

  private static void pull(SeasonOverview overview, int fromX, int toX) {
    Stack.send(overview, MouseEvent.MOUSE_PRESSED, LEFT, new Point(fromX, 20));
    Stack.send(overview, MouseEvent.MOUSE_DRAGGED, LEFT, new Point(toX, 20));
    Stack.send(overview, MouseEvent.MOUSE_RELEASED, LEFT, new Point(toX, 20));
  }

  @Test
  void aWiresLineIsHitWhereItPassesAndNowhereElse() {
    Stack.of(
        season(),
        stack -> {
          Rectangle area = stack.area(Kind.FREQUENCY);
          int x = stack.strips.xAt(Bucket.ms(50));
          long hits =
              IntStream.range(area.y, area.y + area.height)
                  .filter(y -> stack.strips.wireLineAt(new Point(x, y)).isPresent())
                  .count();
          assertThat(hits).isBetween(1L, area.height / 2L);
          int weather = (int) stack.area(Kind.WIND).getCenterY();
          assertThat(stack.strips.wireLineAt(new Point(x, weather))).isEmpty();
        });
  }
}
