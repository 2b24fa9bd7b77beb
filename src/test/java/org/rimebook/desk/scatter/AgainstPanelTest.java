package org.rimebook.desk.scatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Drawer;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.Workspace;
import org.rimebook.fixture.AtOnce;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonDepths;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/** The panel without a window, its work done at once. */
class AgainstPanelTest {

  private final Workspace workspace = new Workspace();

  @BeforeEach
  void dress() throws Exception {
    EventQueue.invokeAndWait(() -> Theme.install(Theme.LIGHT));
  }

  private interface Doing {
    void on(AgainstPanel panel);
  }

  /** Does something to a panel that shows three dry days with a wire pulled in the second. */
  private void shown(Doing doing) throws Exception {
    SeasonResult result =
        Bucket.every(30, 72)
            .entry(new Entry.DrySpell(Bucket.header("dry"), Bucket.span(0, 72)))
            .pull(0, 30, 4)
            .pull(0, 34, -4)
            .result();
    EventQueue.invokeAndWait(
        () -> {
          AgainstPanel panel = new AgainstPanel(workspace, new AtOnce());
          open(result);
          panel.setSize(1500, 380);
          lay(panel);
          workspace.drawer().set(Drawer.AGAINST);
          doing.on(panel);
        });
  }

  private void open(SeasonResult result) {
    try {
      Opened opened =
          new Opened(Path.of("season"), SeasonDepths.of(result.season(), Progress.NONE));
      workspace.view().reset(opened.whole());
      workspace.opened().set(Optional.of(opened));
    } catch (InputException e) {
      throw new AssertionError(e);
    }
    Computed computed =
        new Computed(result, result.totals(Resolution.TENTH), Computed.State.SETTLED);
    workspace.computed().set(Optional.of(computed));
  }

  private static void lay(Container container) {
    container.doLayout();
    for (Component child : container.getComponents()) {
      if (child instanceof Container inner) {
        lay(inner);
      }
    }
  }

  private static <T> T only(AgainstPanel panel, Class<T> type, int index) {
    List<T> found = new ArrayList<>();
    collect(panel, type, found);
    return found.get(index);
  }

  private static <T> void collect(Container container, Class<T> type, List<T> into) {
    for (Component child : container.getComponents()) {
      if (type.isInstance(child)) {
        into.add(type.cast(child));
      } else if (child instanceof Container inner) {
        collect(inner, type, into);
      }
    }
  }

  private static void mouse(JComponent on, int kind, Point at) {
    on.dispatchEvent(
        new MouseEvent(
            on, kind, 0, MouseEvent.BUTTON1_DOWN_MASK, at.x, at.y, 1, false, MouseEvent.BUTTON1));
  }

  private static void press(JComponent on, String key) {
    Object name = on.getInputMap().get(KeyStroke.getKeyStroke(key));
    on.getActionMap().get(name).actionPerformed(new ActionEvent(on, 0, key));
  }

  @Test
  void aRectangleOverWireAgainstWireSelectsWhenItsReadingsWere() throws Exception {
    shown(
        panel -> {
          ScatterPlot pair = only(panel, ScatterPlot.class, 1);
          Rectangle area = pair.area();
          mouse(pair, MouseEvent.MOUSE_PRESSED, new Point(area.x, area.y));
          Point to = new Point(area.x + area.width, area.y + area.height / 3);
          mouse(pair, MouseEvent.MOUSE_DRAGGED, to);
          mouse(pair, MouseEvent.MOUSE_RELEASED, to);

          assertThat(workspace.selection().get().intervals()).containsExactly(Bucket.span(30, 34));
        });
  }

  @Test
  void theReadingPointedAtIsTheOneUnderTheCrossHairOfAllStrips() throws Exception {
    shown(
        panel -> {
          ScatterPlot pair = only(panel, ScatterPlot.class, 1);
          Rectangle area = pair.area();
          for (int y = area.y; y < area.y + area.height / 3; y += 4) {
            for (int x = area.x; x < area.x + area.width; x += 8) {
              if (workspace.cursorMs().get().isEmpty()) {
                mouse(pair, MouseEvent.MOUSE_MOVED, new Point(x, y));
              }
            }
          }
          OptionalLong cursor = workspace.cursorMs().get();
          assertThat(cursor).isPresent();
          assertThat(Bucket.span(30, 34).contains(cursor.getAsLong())).isTrue();

          mouse(pair, MouseEvent.MOUSE_EXITED, new Point(-1, -1));
          assertThat(workspace.cursorMs().get()).isEmpty();
        });
  }

  @Test
  void keysDrawARectangleAsTheMouseDoes() throws Exception {
    shown(
        panel -> {
          ScatterPlot curve = only(panel, ScatterPlot.class, 0);
          for (int i = 0; i < 200; i++) {
            press(curve, "LEFT");
            press(curve, "UP");
          }
          for (int i = 0; i < 200; i++) {
            press(curve, "shift RIGHT");
            press(curve, "shift DOWN");
          }
          press(curve, "ENTER");
          assertThat(workspace.selection().get().intervals()).containsExactly(Bucket.span(0, 72.5));

          press(curve, "ESCAPE");
          assertThat(workspace.selection().get().intervals()).isEmpty();
        });
  }

  @Test
  void anHourChosenByKeysIsSelectedOnEachDryDayInView() throws Exception {
    shown(
        panel -> {
          workspace.view().go(Bucket.span(24, 72));
          HourPlot hours = only(panel, HourPlot.class, 0);
          press(hours, "RIGHT");
          press(hours, "RIGHT");
          press(hours, "ENTER");

          assertThat(workspace.selection().get().intervals())
              .containsExactly(Bucket.span(37, 38), Bucket.span(61, 62));
        });
  }

  @Test
  void whatIsDrawnIsSaidAsWell() throws Exception {
    shown(
        panel -> {
          String pair = description(only(panel, ScatterPlot.class, 1));
          String hours = description(only(panel, HourPlot.class, 0));

          assertThat(pair).startsWith("w0 less w1: 145 readings, mean +0.22 mm");
          assertThat(hours).startsWith("3 dry days: w0 moves by");
        });
  }

  private static String description(JComponent component) {
    return component.getAccessibleContext().getAccessibleDescription();
  }

  @Test
  void aSelectionIsDrawnWithoutDrawingTheRestAnew() throws Exception {
    shown(
        panel -> {
          int[] before = pixels(panel);
          workspace.selection().set(workspace.selection().get().only(Bucket.span(30, 34)));
          int[] selected = pixels(panel);
          workspace.selection().set(workspace.selection().get().with(List.of()));

          assertThat(selected).isNotEqualTo(before);
          assertThat(pixels(panel)).isEqualTo(before);
        });
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.5, 2})
  void whatIsKeptIsWhatWouldBeDrawnAnew(double scale) throws Exception {
    shown(
        panel -> {
          ScatterPlot pair = only(panel, ScatterPlot.class, 1);
          int[] before = pixels(pair, scale);
          workspace.selection().set(workspace.selection().get().only(Bucket.span(30, 34)));
          int[] kept = pixels(pair, scale);
          SwingUtilities.updateComponentTreeUI(panel);
          int[] anew = pixels(pair, scale);
          dress(Theme.DARK, panel);
          int[] dark = pixels(pair, scale);
          dress(Theme.LIGHT, panel);

          assertThat(kept).isEqualTo(anew).isNotEqualTo(before);
          assertThat(pixels(pair, scale)).isEqualTo(kept).isNotEqualTo(dark);
        });
  }

  private static void dress(Theme theme, AgainstPanel panel) {
    theme.apply();
    SwingUtilities.updateComponentTreeUI(panel);
  }

  @Test
  void theCurveOfAWireChosenStandsOutAtOnce() throws Exception {
    shown(
        panel -> {
          ScatterPlot curve = only(panel, ScatterPlot.class, 0);
          int[] before = pixels(curve, 1);
          workspace.selection().set(workspace.selection().get().toggled("w0"));
          int[] chosen = pixels(curve, 1);
          workspace.selection().set(workspace.selection().get().toggled("w0"));

          assertThat(chosen).isNotEqualTo(before);
          assertThat(pixels(curve, 1)).isEqualTo(before);
        });
  }

  @Test
  void whereThereIsLittleRoomOneViewIsShown() throws Exception {
    shown(
        panel -> {
          panel.setSize(600, 380);
          panel.actions().get(2).actionPerformed(new ActionEvent(panel, 0, ""));

          assertThat(only(panel, HourPlot.class, 0).getParent().isVisible()).isTrue();
          assertThat(only(panel, ScatterPlot.class, 0).getParent().isVisible()).isFalse();
          assertThat(only(panel, ScatterPlot.class, 1).getParent().isVisible()).isFalse();
        });
  }

  private static int[] pixels(AgainstPanel panel) {
    return pixels(panel, 1);
  }

  private static int[] pixels(JComponent shown, double scale) {
    int width = (int) Math.ceil(shown.getWidth() * scale);
    int height = (int) Math.ceil(shown.getHeight() * scale);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.scale(scale, scale);
    shown.paint(graphics);
    graphics.dispose();
    return image.getRGB(0, 0, width, height, null, 0, width);
  }
}
