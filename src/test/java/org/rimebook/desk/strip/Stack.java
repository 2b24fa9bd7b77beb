package org.rimebook.desk.strip;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.model.Workspace;
import org.rimebook.fixture.AtOnce;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;

/** A stack of strips of a made season, painted into an image, on the event thread. */
final class Stack {

  static final int WIDTH = 900;
  static final int HEIGHT = 600;

  final Workspace workspace = new Workspace();
  final StripStack strips;
  private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);

  private Stack() {
    strips = new StripStack(workspace, new AtOnce());
    strips.setSize(WIDTH, HEIGHT);
    strips.doLayout();
  }

  /** Does something with the strips of a season, all computed, on the event thread. */
  static void of(Bucket bucket, Consumer<Stack> deed) {
    onEventThread(
        () -> {
          Stack stack = new Stack();
          stack.open(bucket.result());
          stack.paint();
          deed.accept(stack);
        });
  }

  /** Does something with strips no season is open for. */
  static void empty(Consumer<Stack> deed) {
    onEventThread(() -> deed.accept(new Stack()));
  }

  private static void onEventThread(Runnable deed) {
    try {
      SwingUtilities.invokeAndWait(
          () -> {
            Theme.install(Theme.LIGHT);
            deed.run();
          });
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof Error failed) {
        throw failed;
      }
      throw new AssertionError(e.getCause());
    }
  }

  void open(SeasonResult result) {
    Opened opened = new Opened(Path.of("season"), result.stage());
    workspace.view().reset(opened.whole());
    workspace.opened().set(Optional.of(opened));
    compute(result, Computed.State.SETTLED);
  }

  void compute(SeasonResult result, Computed.State state) {
    workspace
        .computed()
        .set(Optional.of(new Computed(result, result.totals(Resolution.TENTH), state)));
  }

  /** Shows some strips and hides the others. */
  void show(Set<Kind> kinds) {
    workspace
        .strips()
        .set(
            workspace.strips().get().stream().map(s -> s.shown(kinds.contains(s.kind()))).toList());
    paint();
  }

  BufferedImage paint() {
    Graphics2D graphics = image.createGraphics();
    strips.paint(graphics);
    graphics.dispose();
    return image;
  }

  /** Where a strip on screen lies. */
  Rectangle area(Kind kind) {
    return strips.layoutNow().strips().get(kinds().indexOf(kind));
  }

  StripPlot plot(Kind kind) {
    return strips.strips().shown().get(kinds().indexOf(kind)).plot();
  }

  List<Kind> kinds() {
    return strips.strips().shown().stream().map(s -> s.setting().kind()).toList();
  }

  void act(String name) {
    DeskAction action =
        strips.actions().stream().filter(a -> a.name().equals(name)).findFirst().orElseThrow();
    action.actionPerformed(new ActionEvent(strips, ActionEvent.ACTION_PERFORMED, name));
    paint();
  }

  /** Drags from one point to another with buttons and keys held. */
  void drag(int held, Point from, Point to) {
    send(strips, MouseEvent.MOUSE_PRESSED, held, from);
    send(strips, MouseEvent.MOUSE_DRAGGED, held, to);
    send(strips, MouseEvent.MOUSE_RELEASED, held, to);
    paint();
  }

  static MouseEvent send(Component onto, int kind, int held, Point at) {
    boolean middle = (held & InputEvent.BUTTON2_DOWN_MASK) != 0;
    int button = middle ? MouseEvent.BUTTON2 : MouseEvent.BUTTON1;
    MouseEvent event = new MouseEvent(onto, kind, 0, held, at.x, at.y, 1, false, button);
    onto.dispatchEvent(event);
    return event;
  }

  void wheel(int held, Point at, int notches) {
    strips.dispatchEvent(
        new MouseWheelEvent(
            strips,
            MouseEvent.MOUSE_WHEEL,
            0,
            held,
            at.x,
            at.y,
            0,
            false,
            MouseWheelEvent.WHEEL_UNIT_SCROLL,
            1,
            notches));
    paint();
  }
}
