package org.rimebook.desk.page;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.model.ReadingSnap;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.strip.StackGeometry;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.station.Interval;

/** A season under a stack of plain paper: 400 pixels an hour, the first reading at x = 50. */
final class MarkScene {

  static final int LEFT = InputEvent.BUTTON1_DOWN_MASK;

  final KeptSeason season;
  final Workspace workspace;
  final Marking marking;
  final FindingWalk walk;
  final Paper stack = new Paper();
  final MarkDesk desk;
  int wireUnderPointer = -1;

  MarkScene(Path folder) throws IOException {
    Theme.install(Theme.LIGHT);
    season = KeptSeason.in(folder);
    workspace = season.workspace();
    marking = new Marking(workspace, season.keeper());
    walk = new FindingWalk(marking);
    desk = new MarkDesk(walk, stack, this::wireAt, stack);
    desk.page().furnish();
    stack.setSize(1100, 300);
    stack.addMouseListener(desk.gesture());
    stack.addMouseMotionListener(desk.gesture());
    desk.lane().setSize(1100, 60);
  }

  private OptionalInt wireAt(Point place) {
    return wireUnderPointer < 0 ? OptionalInt.empty() : OptionalInt.of(wireUnderPointer);
  }

  static int x(double hour) {
    return 50 + (int) Math.round(hour * 400);
  }

  /** The readings from one hour to another, both inside. */
  Interval readings(double fromHour, double toHour) {
    ReadingSnap snap = marking.snap().orElseThrow();
    return snap.between(Bucket.ms(fromHour), Bucket.ms(toHour));
  }

  List<Interval> selected() {
    return workspace.selection().get().intervals();
  }

  /** Presses at one hour and moves to another, with the buttons and modifiers given. */
  void press(JComponent on, double fromHour, double toHour, int modifiers) {
    mouse(on, MouseEvent.MOUSE_PRESSED, new Point(x(fromHour), 10), modifiers, 1);
    mouse(on, MouseEvent.MOUSE_DRAGGED, new Point(x(toHour), 10), modifiers, 1);
  }

  void release(JComponent on, double hour, int modifiers) {
    mouse(on, MouseEvent.MOUSE_RELEASED, new Point(x(hour), 10), modifiers, 1);
  }

  void drag(JComponent on, double fromHour, double toHour, int modifiers) {
    press(on, fromHour, toHour, modifiers);
    release(on, toHour, modifiers & ~LEFT);
  }

  void click(JComponent on, double hour, int count) {
    for (int i = 1; i <= count; i++) {
      mouse(on, MouseEvent.MOUSE_PRESSED, new Point(x(hour), 10), LEFT, i);
      mouse(on, MouseEvent.MOUSE_RELEASED, new Point(x(hour), 10), 0, i);
    }
  }

  private static void mouse(JComponent on, int id, Point place, int modifiers, int count) {
    int button = id == MouseEvent.MOUSE_DRAGGED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1;
    if ((modifiers & InputEvent.BUTTON2_DOWN_MASK) != 0) {
      button = MouseEvent.BUTTON2;
    }
    on.dispatchEvent(new MouseEvent(on, id, 0, modifiers, place.x, place.y, count, false, button));
  }

  DeskAction action(String name) {
    return desk.actions().stream().filter(a -> a.name().equals(name)).findFirst().orElseThrow();
  }

  void act(String name) {
    action(name).actionPerformed(null);
  }

  /** Every component of a kind inside another. */
  static <T> Stream<T> inside(Container outer, Class<T> kind) {
    List<T> found = new ArrayList<>();
    for (Component part : outer.getComponents()) {
      if (kind.isInstance(part)) {
        found.add(kind.cast(part));
      }
      if (part instanceof Container inner) {
        inside(inner, kind).forEach(found::add);
      }
    }
    return found.stream();
  }

  static BufferedImage painted(JComponent component) {
    BufferedImage image =
        new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    component.paint(graphics);
    graphics.dispose();
    return image;
  }

  /** Time to the right, nothing on it. */
  static final class Paper extends JComponent implements StackGeometry {
    private static final long serialVersionUID = 1;

    @Override
    public Rectangle plots() {
      return new Rectangle(50, 0, 1000, 300);
    }

    @Override
    public int xAt(long epochMs) {
      return 50 + Math.round((epochMs - Bucket.ms(0)) / 9000f);
    }

    @Override
    public long timeAt(int x) {
      return Bucket.ms(0) + (x - 50) * 9000L;
    }
  }
}
