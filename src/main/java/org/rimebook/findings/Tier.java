package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.Notebook;

/** Checks made beside each other, and again without what they found until they find no more. */
final class Tier {

  /** Looks at most; a fault hidden by three others comes up when those are decided; own choice. */
  private static final int MOST_LOOKS = 3;

  private final List<Check> checks;
  private final boolean ofRecord;
  private final List<Finding> open = new ArrayList<>();

  /**
   * Checks to be made.
   *
   * @param checks the checks
   * @param ofRecord whether what is dismissed of them is left out all the same for those after
   */
  Tier(List<Check> checks, boolean ofRecord) {
    this.checks = checks;
    this.ofRecord = ofRecord;
  }

  /** What nobody has decided on, in the order it was found. */
  List<Finding> open() {
    return List.copyOf(open);
  }

  /**
   * Looks.
   *
   * @param scene as those before leave it
   * @param each called before each check
   * @return the scene for the checks after
   */
  Scene look(Scene scene, Runnable each) {
    Scene now = scene;
    for (int look = 0; look < MOST_LOOKS; look++) {
      List<Finding> known = new ArrayList<>();
      for (Check check : checks) {
        each.run();
        known.addAll(check.look(now.having(known)));
      }
      List<Finding> more = new Settled(decided(scene.notebook())).open(known);
      open.addAll(more);
      Scene next = next(now, known, more);
      if (more.isEmpty() || next.notebook() == now.notebook()) {
        return next;
      }
      now = next;
    }
    return now;
  }

  /** The notebook once all that is open is accepted: what proposes a remark is dismissed then. */
  private Notebook decided(Notebook notebook) {
    List<Entry> entries = new ArrayList<>(notebook.history());
    for (Finding finding : open) {
      Entry.Header header = new Entry.Header("decided:" + entries.size(), "", "", "");
      entries.add(
          finding.proposal() instanceof Entry.Remark
              ? new Entry.Dismissal(header, finding.id())
              : EntryCopy.with(finding.proposal(), header));
    }
    return new Notebook(entries, notebook.notes());
  }

  /**
   * What is seen after a look. What was dismissed is known all the same, and what was dismissed of
   * the record is left out as if it were accepted, so that it isn't raised as something else.
   */
  private Scene next(Scene now, List<Finding> known, List<Finding> more) {
    if (ofRecord) {
      return now.accepting(known);
    }
    List<Finding> dismissed = new ArrayList<>(known);
    dismissed.removeAll(more);
    return now.having(dismissed).accepting(more);
  }
}
