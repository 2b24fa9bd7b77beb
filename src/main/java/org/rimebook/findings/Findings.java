package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Progress;

/**
 * Everything found in a season that nobody has decided on. A pure function of record, sheet and
 * notebook.
 *
 * @param open what is to be decided, in the order of time
 */
public record Findings(List<Finding> open) {

  /** By start, then by kind. */
  public static final Comparator<Finding> BY_TIME =
      Comparator.comparingLong((Finding f) -> f.span().fromMs())
          .thenComparing(Finding::kind)
          .thenComparing(Finding::id);

  /** The strongest first. */
  public static final Comparator<Finding> BY_STRENGTH =
      Comparator.comparingDouble((Finding f) -> -f.strength()).thenComparing(BY_TIME);

  public Findings {
    open = List.copyOf(open);
  }

  /**
   * Looks at a season: at its record first, then at its sheet and at its wires without what was
   * found there, then at its level.
   *
   * @param scene the season as its notebook leaves it
   * @param progress hears of it
   */
  public static Findings in(Scene scene, Progress progress) {
    Settled settled = new Settled(scene.notebook());
    List<Finding> all = new ArrayList<>();
    Scene now = scene;
    int tiers = Checks.TIERS.size();
    for (int tier = 0; tier < tiers; tier++) {
      List<Finding> known = new ArrayList<>();
      for (Check check : Checks.TIERS.get(tier)) {
        progress.step("looking for what is wrong", tier / (double) tiers);
        known.addAll(check.look(now.having(known)));
      }
      List<Finding> open = settled.open(known);
      all.addAll(open);
      now = tier + 1 < tiers ? next(now, known, open, tier) : now;
    }
    all.sort(BY_TIME);
    return new Findings(all);
  }

  /**
   * What the checks after a tier see. What was dismissed is known to them all the same, and what
   * was dismissed of the record is left out as if it were accepted, so that it isn't raised as
   * something else.
   */
  private static Scene next(Scene now, List<Finding> known, List<Finding> open, int tier) {
    if (tier == 0) {
      return now.accepting(known);
    }
    List<Finding> dismissed = new ArrayList<>(known);
    dismissed.removeAll(open);
    return now.having(dismissed).accepting(open);
  }

  /** What is still to be decided under another notebook of the same season. */
  public Findings under(Notebook notebook) {
    return new Findings(new Settled(notebook).open(open));
  }

  /** The strongest first. */
  public List<Finding> strongestFirst() {
    return open.stream().sorted(BY_STRENGTH).toList();
  }
}
