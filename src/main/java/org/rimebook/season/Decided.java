package org.rimebook.season;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;
import org.rimebook.findings.Scene;
import org.rimebook.findings.Settled;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Progress;

/**
 * A finding the notebook has an answer to: what the checks find in the record alone, as if nobody
 * had written anything, and the entry that settles it.
 *
 * @param finding what is found in the record alone
 * @param by the entry in force that settles it
 */
public record Decided(Finding finding, Entry by) {

  /**
   * Everything the notebook of a season has decided, in the order of time.
   *
   * @param depths the season with its depths
   * @param progress hears of it
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static List<Decided> in(SeasonDepths depths, Progress progress) {
    Notebook notebook = depths.season().notebook();
    if (notebook.inForce().isEmpty()) {
      return List.of();
    }
    Scene bare = Scene.of(depths.facts(), Notebook.EMPTY);
    Settled settled = new Settled(notebook);
    List<Decided> decided = new ArrayList<>();
    for (Finding finding : Findings.settledBy(notebook, bare, progress).open()) {
      settled.by(finding).ifPresent(entry -> decided.add(new Decided(finding, entry)));
    }
    return List.copyOf(decided);
  }
}
