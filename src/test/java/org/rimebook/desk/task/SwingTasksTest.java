package org.rimebook.desk.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.desk.task.Tasks.Running;

class SwingTasksTest {

  private final SwingTasks tasks = new SwingTasks();
  private final BlockingQueue<Object> told = new LinkedBlockingQueue<>();

  @Test
  void aResultComesBackOnTheEventThread() throws Exception {
    onEventThread(
        () ->
            tasks.run(
                Lane.OPEN,
                "work",
                progress -> SwingUtilities.isEventDispatchThread(),
                inWork -> told.add(List.of(inWork, SwingUtilities.isEventDispatchThread())),
                told::add));

    assertThat(next()).isEqualTo(List.of(false, true));
  }

  @Test
  void workThatFailsTellsWhy() throws Exception {
    onEventThread(
        () ->
            tasks.run(
                Lane.OPEN,
                "work",
                progress -> {
                  throw new IOException("no disk");
                },
                told::add,
                told::add));

    assertThat(next()).isInstanceOf(IOException.class).asString().contains("no disk");
  }

  @Test
  void laterWorkOfALaneReplacesTheEarlierEvenWhenThatEndsLast() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    CountDownLatch over = new CountDownLatch(1);
    onEventThread(
        () ->
            tasks.run(
                Lane.OPEN,
                "earlier",
                progress -> {
                  begun.countDown();
                  go.await();
                  over.countDown();
                  return "earlier";
                },
                told::add,
                told::add));
    assertThat(begun.await(30, TimeUnit.SECONDS)).isTrue();
    onEventThread(() -> tasks.run(Lane.OPEN, "later", progress -> "later", told::add, told::add));

    assertThat(next()).isEqualTo("later");
    go.countDown();
    assertThat(over.await(30, TimeUnit.SECONDS)).isTrue();
    onEventThread(() -> {});
    assertThat(told).isEmpty();
  }

  @Test
  void cancelledWorkIsToldToStopAndDeliversNothing() throws Exception {
    CountDownLatch started = new CountDownLatch(1);
    BlockingQueue<String> stopped = new LinkedBlockingQueue<>();
    onEventThread(
        () ->
            tasks.run(
                Lane.OPEN,
                "work",
                progress -> {
                  started.countDown();
                  while (!progress.cancelled()) {
                    Thread.onSpinWait();
                  }
                  stopped.add("stopped");
                  return "done";
                },
                told::add,
                told::add));
    assertThat(started.await(30, TimeUnit.SECONDS)).isTrue();

    onEventThread(() -> tasks.cancel(Lane.OPEN));

    assertThat(stopped.poll(30, TimeUnit.SECONDS)).isEqualTo("stopped");
    onEventThread(() -> {});
    assertThat(told).isEmpty();
  }

  @Test
  void aWatcherHearsOfTheStartAndTheEndOfWork() throws Exception {
    BlockingQueue<Running> heard = new LinkedBlockingQueue<>();
    onEventThread(() -> tasks.watch(heard::add));
    onEventThread(
        () -> tasks.run(Lane.EXPORT, "writing", progress -> "done", told::add, told::add));
    assertThat(next()).isEqualTo("done");

    assertThat(heard.peek()).isEqualTo(new Running(Lane.EXPORT, "writing", "", -1, false));
    assertThat(heard).last().matches(Running::over);
  }

  private Object next() throws InterruptedException {
    return told.poll(30, TimeUnit.SECONDS);
  }

  private static void onEventThread(Runnable deed)
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(deed);
  }
}
