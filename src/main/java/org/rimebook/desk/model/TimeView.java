package org.rimebook.desk.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Supplier;
import org.rimebook.station.Interval;

/**
 * The stretch of time on screen, and the way that led to it. Views stay within the whole, at least
 * {@link #SHORTEST_MS} long.
 */
public final class TimeView {

  /** The shortest stretch that can be looked at [ms]. */
  public static final long SHORTEST_MS = 60_000;

  private static final int REMEMBERED = 200;
  private static final Runnable NOTHING = () -> {};

  private final Watched<Interval> visible;
  private final Deque<Step> back = new ArrayDeque<>();
  private final Deque<Step> forward = new ArrayDeque<>();
  private Supplier<Runnable> beside = () -> NOTHING;
  private Interval whole;

  /** A view gone over, and what brings back what belonged to it besides its time. */
  private record Step(Interval visible, Runnable beside) {}

  /**
   * @param whole all there is to see; shown first
   */
  public TimeView(Interval whole) {
    this.whole = whole;
    this.visible = new Watched<>(whole);
  }

  /** What is on screen. */
  public Watched<Interval> visible() {
    return visible;
  }

  /**
   * Names what else belongs to a view.
   *
   * @param taken asked at each step for what brings it back as it is now; equal when it is equal
   */
  public void beside(Supplier<Runnable> taken) {
    beside = taken;
  }

  /** All there is to see. */
  public Interval whole() {
    return whole;
  }

  /** Starts anew with another whole, all of it on screen. */
  public void reset(Interval newWhole) {
    whole = newWhole;
    back.clear();
    forward.clear();
    visible.set(newWhole);
  }

  /** Shows a stretch as a step that can be gone back over. */
  public void go(Interval wanted) {
    Interval shown = within(wanted);
    if (shown.equals(visible.get())) {
      return;
    }
    remember();
    visible.set(shown);
  }

  /** Remembers the view now, as the start of a movement of many {@link #move}s. */
  public void remember() {
    forward.clear();
    Step now = now();
    if (!now.equals(back.peek())) {
      back.push(now);
    }
    if (back.size() > REMEMBERED) {
      back.removeLast();
    }
  }

  /** Shows a stretch as part of a movement, without a step of its own. */
  public void move(Interval wanted) {
    visible.set(within(wanted));
  }

  /** Moves by a time, keeping the length. */
  public void pan(long byMs) {
    Interval now = visible.get();
    move(new Interval(now.fromMs() + byMs, now.toMs() + byMs));
  }

  /**
   * Zooms about an instant that stays where it is on screen.
   *
   * @param aboutMs the instant [ms since epoch]
   * @param factor new length over old; below 1 shows less
   */
  public void zoom(long aboutMs, double factor) {
    Interval now = visible.get();
    double length = Math.max(SHORTEST_MS, now.lengthMs() * factor);
    double share = (aboutMs - now.fromMs()) / (double) now.lengthMs();
    long from = Math.round(aboutMs - share * length);
    move(new Interval(from, from + Math.round(length)));
  }

  /** Goes back one step; nothing at the first. */
  public void back() {
    step(back, forward);
  }

  /** Goes forward again; nothing when not gone back. */
  public void forward() {
    step(forward, back);
  }

  /** Whether there is a step to go back. */
  public boolean canGoBack() {
    return !back.isEmpty();
  }

  /** Whether there is a step to go forward. */
  public boolean canGoForward() {
    return !forward.isEmpty();
  }

  private void step(Deque<Step> from, Deque<Step> onto) {
    if (!from.isEmpty()) {
      onto.push(now());
      Step to = from.pop();
      visible.set(to.visible());
      to.beside().run();
    }
  }

  private Step now() {
    return new Step(visible.get(), beside.get());
  }

  private Interval within(Interval wanted) {
    long length = Math.max(Math.min(SHORTEST_MS, whole.lengthMs()), wanted.lengthMs());
    if (length >= whole.lengthMs()) {
      return whole;
    }
    long from = Math.min(Math.max(wanted.fromMs(), whole.fromMs()), whole.toMs() - length);
    return new Interval(from, from + length);
  }
}
