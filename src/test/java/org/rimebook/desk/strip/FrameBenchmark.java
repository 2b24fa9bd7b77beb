package org.rimebook.desk.strip;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntFunction;
import javax.swing.SwingUtilities;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.model.Workspace;
import org.rimebook.fixture.AtOnce;
import org.rimebook.station.Interval;

/**
 * How long a frame takes while panning and zooming through a season with four strips at 1600 by
 * 900, drawn whole each time; on the clock, and of the processor's time alone, which says more on a
 * machine that does other things. Arguments: the file to write the table to, and season folders.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *   -Dexec.mainClass=org.rimebook.desk.strip.FrameBenchmark \
 *   -Dexec.args="target/frames.txt sample-sets/hard-winter"
 * </pre>
 */
public final class FrameBenchmark {

  private static final int WIDTH = 1600;
  private static final int HEIGHT = 900;
  private static final int WARM_UP = 200;
  private static final int FRAMES = 400;
  private static final long DAY_MS = 86_400_000;
  private static final Set<Kind> STRIPS =
      Set.of(Kind.FREQUENCY, Kind.DEPTH, Kind.CATCH, Kind.TEMPERATURE);

  private final Workspace workspace = new Workspace();
  private final StripStack stack;
  private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
  private final StringBuilder table;

  private FrameBenchmark(Path folder, StringBuilder table) {
    this.table = table;
    stack = new StripStack(workspace, new AtOnce());
    stack.setSize(WIDTH, HEIGHT);
    new SeasonKeeper(workspace, new AtOnce(), Clock.systemUTC()).open(folder);
    workspace
        .strips()
        .set(
            workspace.strips().get().stream()
                .map(s -> s.shown(STRIPS.contains(s.kind())))
                .toList());
    int rows = workspace.opened().get().orElseThrow().season().record().size();
    table.append(folder.getFileName()).append(", ").append(rows).append(" rows\n");
  }

  /** Runs it. */
  public static void main(String[] arguments)
      throws InterruptedException, InvocationTargetException, IOException {
    StringBuilder table = new StringBuilder();
    List<String> folders = Arrays.asList(arguments).subList(1, arguments.length);
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.install(Theme.LIGHT);
          folders.forEach(folder -> new FrameBenchmark(Path.of(folder), table).run());
        });
    Files.writeString(Path.of(arguments[0]), table);
  }

  private void run() {
    Interval whole = workspace.view().whole();
    long most = whole.lengthMs() * 9 / 10;
    time("pan, nine tenths of the season", frame -> panned(whole, most, frame));
    time("pan, a month", frame -> panned(whole, 30 * DAY_MS, frame));
    time("pan, a day", frame -> panned(whole, DAY_MS, frame));
    time("zoom, season to a day and back", frame -> zoomed(whole, frame));
  }

  private static Interval panned(Interval whole, long lengthMs, int frame) {
    long room = whole.lengthMs() - lengthMs;
    long fromMs = whole.fromMs() + Math.min(room, room * (frame % 400) / 400);
    return new Interval(fromMs, fromMs + lengthMs);
  }

  private static Interval zoomed(Interval whole, int frame) {
    int step = frame % 200 < 100 ? frame % 200 : 200 - frame % 200;
    double length =
        whole.lengthMs() * StrictMath.pow(DAY_MS / (double) whole.lengthMs(), step / 100.0);
    long middle = whole.fromMs() + whole.lengthMs() / 3;
    long fromMs = Math.max(whole.fromMs(), middle - Math.round(length / 2));
    return new Interval(fromMs, fromMs + Math.round(length));
  }

  private void time(String what, IntFunction<Interval> views) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    double[] wallMs = new double[FRAMES];
    double[] ownMs = new double[FRAMES];
    for (int frame = -WARM_UP; frame < FRAMES; frame++) {
      Interval view = views.apply(Math.floorMod(frame, FRAMES));
      long start = System.nanoTime();
      long ownStart = threads.getCurrentThreadCpuTime();
      workspace.view().move(view);
      Graphics2D graphics = image.createGraphics();
      stack.paint(graphics);
      graphics.dispose();
      if (frame >= 0) {
        wallMs[frame] = (System.nanoTime() - start) / 1e6;
        ownMs[frame] = (threads.getCurrentThreadCpuTime() - ownStart) / 1e6;
      }
    }
    table.append(
        String.format(
            Locale.ROOT, "  %-32s %s; of the processor %s%n", what, told(wallMs), told(ownMs)));
  }

  private static String told(double[] ms) {
    double[] ordered = ms.clone();
    Arrays.sort(ordered);
    return String.format(
        Locale.ROOT,
        "median %5.1f ms, p95 %5.1f ms",
        ordered[ordered.length / 2],
        ordered[ordered.length * 95 / 100]);
  }
}
