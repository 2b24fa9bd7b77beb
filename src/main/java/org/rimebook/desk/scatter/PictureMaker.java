package org.rimebook.desk.scatter;

import java.util.Optional;
import java.util.function.Consumer;
import org.rimebook.desk.model.against.AgainstPicture;
import org.rimebook.desk.model.against.Asked;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/**
 * Has pictures made away from the event thread, one at a time: what is asked for meanwhile waits,
 * and only the latest of it is made. So a view that moves all the time still shows something.
 */
final class PictureMaker {

  private final Tasks tasks;
  private final Consumer<AgainstPicture> shown;
  private final Consumer<Throwable> failed;
  private Optional<AgainstPicture> last = Optional.empty();
  private Optional<Asked> waiting = Optional.empty();
  private boolean busy;

  /**
   * @param tasks runs the work
   * @param shown told of each picture
   * @param failed told why one couldn't be made
   */
  PictureMaker(Tasks tasks, Consumer<AgainstPicture> shown, Consumer<Throwable> failed) {
    this.tasks = tasks;
    this.shown = shown;
    this.failed = failed;
    tasks.watch(running -> busy &= running.lane() != Lane.AGAINST || !running.over());
  }

  void ask(Asked asked) {
    if (busy) {
      waiting = Optional.of(asked);
      return;
    }
    busy = true;
    waiting = Optional.empty();
    Optional<AgainstPicture> before = last;
    tasks.run(
        Lane.AGAINST,
        "Raw against derived",
        progress -> AgainstPicture.of(asked, before, progress),
        this::take,
        fault -> {
          busy = false;
          failed.accept(fault);
        });
  }

  /** Forgets all pictures, and with them the season they are of. */
  void forget() {
    tasks.cancel(Lane.AGAINST);
    last = Optional.empty();
    waiting = Optional.empty();
    busy = false;
  }

  private void take(AgainstPicture picture) {
    busy = false;
    last = Optional.of(picture);
    shown.accept(picture);
    waiting.ifPresent(this::ask);
  }
}
