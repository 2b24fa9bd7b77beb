package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
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
   * found there, then at its level; and at each again without what was found in it, since a great
   * fault hides a small one.
   *
   * @param scene the season as its notebook leaves it
   * @param progress hears of it
   */
  public static Findings in(Scene scene, Progress progress) {
    return in(scene, check -> true, progress);
  }

  /**
   * Looks at a season for what another notebook settles.
   *
   * @param notebook the notebook whose entries settle what is found
   * @param scene the season as its own notebook leaves it
   * @param progress hears of it
   */
  public static Findings settledBy(Notebook notebook, Scene scene, Progress progress) {
    Settled settled = new Settled(notebook);
    List<Finding> found =
        in(scene, check -> !check.aside() || settled.dismisses(check.kind()), progress).open();
    return new Findings(found.stream().filter(f -> settled.by(f).isPresent()).toList());
  }

  private static Findings in(Scene scene, Predicate<Check> wanted, Progress progress) {
    List<Finding> all = new ArrayList<>();
    Scene now = scene;
    for (int tier = 0; tier < Checks.TIERS.size(); tier++) {
      List<Check> checks = Checks.TIERS.get(tier).stream().filter(wanted).toList();
      Tier looked = new Tier(checks, tier == 0);
      double share = tier / (double) Checks.TIERS.size();
      now = looked.look(now, () -> progress.step("looking for what is wrong", share));
      all.addAll(looked.open());
    }
    all.sort(BY_TIME);
    return new Findings(all);
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
