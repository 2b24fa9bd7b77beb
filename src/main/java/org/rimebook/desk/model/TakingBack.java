package org.rimebook.desk.model;

import java.util.Optional;
import org.rimebook.notebook.Entry;

/** Takes back the last step, and says what that was. */
final class TakingBack {

  private final Marking marking;
  private Optional<Steps.Step> askedFor = Optional.empty();

  TakingBack(Marking marking) {
    this.marking = marking;
  }

  /** Says what was taken back; what somebody else wrote, or signed, is asked for twice. */
  void now() {
    Optional<Steps.Step> step = marking.keeper().steps().flatMap(Steps::undo);
    if (step.isEmpty()) {
      return;
    }
    String words =
        marking.times().map(times -> EntryWords.step(step.get(), times)).orElse("a step");
    if (!isOwn(step.get()) && !step.equals(askedFor)) {
      askedFor = step;
      tell(
          "The last step isn't yours, or is a sign-off: "
              + words
              + ". Undo once more to withdraw it");
      return;
    }
    askedFor = Optional.empty();
    marking.keeper().undo();
    tell("Undone: " + words);
  }

  private boolean isOwn(Steps.Step step) {
    return marking.notebook().history().stream()
        .filter(entry -> step.entries().contains(entry.header().id()))
        .allMatch(
            entry ->
                entry.header().by().equals(marking.keeper().writer())
                    && !(entry instanceof Entry.SignOff));
  }

  private void tell(String words) {
    Watched<Notice> notice = marking.workspace().notice();
    if (notice.get().weight() != Notice.Weight.FAULT) {
      notice.set(new Notice(Notice.Weight.NOTE, words));
    }
  }
}
