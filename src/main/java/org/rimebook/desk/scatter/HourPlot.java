package org.rimebook.desk.scatter;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickUnits;
import org.rimebook.accumulation.SunMark;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.AgainstPicture;
import org.rimebook.desk.model.against.AgainstWords;
import org.rimebook.desk.model.against.Range;

/** The sun's mark by hour of the day, with the hour pointed at and the one chosen. */
final class HourPlot extends JComponent {

  static final int NO_HOUR = -1;

  private static final int ROOM_FOR_NAMES = 60;

  private final AxisFrame frame = new AxisFrame(ROOM_FOR_NAMES);
  private final Backing backing = Backing.clear();
  private final EmptyWords empty = new EmptyWords();
  private Optional<AgainstPicture> picture = Optional.empty();
  private Set<String> chosen = Set.of();
  private int pointedHour = NO_HOUR;
  private int chosenHour = NO_HOUR;

  HourPlot() {
    setFocusable(true);
    setOpaque(true);
    getAccessibleContext().setAccessibleName("Departure by hour of the day");
    frame.ticksOfX(hours());
    frame.label("hour of the day, station time", "departure from the mean of the wires, mm");
  }

  private static TickUnits hours() {
    TickUnits units = new TickUnits();
    DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
    for (int every : new int[] {3, 6, 12}) {
      units.add(new NumberTickUnit(every, format));
    }
    return units;
  }

  /** Shows the mark of a picture that has one. */
  void show(AgainstPicture shown) {
    SunMark sun = shown.sun().orElseThrow();
    boolean same = picture.flatMap(AgainstPicture::sun).filter(sun::equals).isPresent();
    picture = Optional.of(shown);
    if (same) {
      return;
    }
    frame.cover(new Range(0, SunMark.HOURS), HourPainter.fitted(sun));
    describe(new AgainstWords(shown.readings()).summary(sun));
  }

  /** Shows words instead. */
  void showNothing(String words) {
    picture = Optional.empty();
    empty.say(words);
    describe(words);
  }

  private void describe(String words) {
    getAccessibleContext().setAccessibleDescription(words);
    renew();
  }

  /** Lets wires stand out; all when none is named. */
  void choose(Set<String> wires) {
    if (!chosen.equals(wires)) {
      chosen = Set.copyOf(wires);
      renew();
    }
  }

  private void renew() {
    backing.drop();
    repaint();
  }

  /** Shows which hour is pointed at. */
  void point(int hour) {
    pointedHour = hour;
    repaint();
  }

  /** Shows which hour is selected. */
  void selected(int hour) {
    chosenHour = hour;
    repaint();
  }

  int pointed() {
    return pointedHour;
  }

  Optional<AgainstPicture> picture() {
    return picture;
  }

  /** The hour at a place; none outside the plot. */
  int hourAt(int x) {
    Rectangle area = frame.area(getSize());
    boolean inside = picture.isPresent() && x >= area.x && x < area.x + area.width;
    return inside ? (x - area.x) * SunMark.HOURS / area.width : NO_HOUR;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    Backing.smooth(g);
    g.setColor(Look.paper());
    g.fillRect(0, 0, getWidth(), getHeight());
    if (picture.isEmpty()) {
      empty.paint(g, getSize());
    } else {
      column(g, pointedHour, 0.10);
      column(g, chosenHour, 0.22);
      backing.paint(g, getSize(), this::paintMark);
    }
    if (isFocusOwner()) {
      g.setColor(Look.accent());
      g.setStroke(new BasicStroke(Look.px(1)));
      g.drawRect(Look.px(1), Look.px(1), getWidth() - Look.px(3), getHeight() - Look.px(3));
    }
    g.dispose();
  }

  private void column(Graphics2D g, int hour, double share) {
    if (hour == NO_HOUR) {
      return;
    }
    Rectangle area = frame.area(getSize());
    int from = area.x + hour * area.width / SunMark.HOURS;
    int to = area.x + (hour + 1) * area.width / SunMark.HOURS;
    g.setColor(Look.faint(Look.accent(), share));
    g.fillRect(from, area.y, to - from, area.height);
    if (hour == chosenHour) {
      g.setColor(Look.accent());
      g.drawRect(from, area.y, to - from, area.height);
    }
  }

  private void paintMark(Graphics2D g) {
    AgainstPicture shown = picture.orElseThrow();
    frame.paint(g, getSize());
    new HourPainter(g, frame.area(getSize()), shown.sun().orElseThrow())
        .paint(shown.readings().wires(), chosen);
  }

  @Override
  public void updateUI() {
    if (backing != null) {
      backing.drop();
    }
    super.updateUI();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.CANVAS;
            }
          };
    }
    return accessibleContext;
  }
}
