package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Settled;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.EntryIds;
import org.rimebook.notebook.Notebook;
import org.rimebook.notebook.NotebookLog;
import org.rimebook.season.Season;

/**
 * Writes steps into the notebook of the open season. Before each, the file is read again: entries
 * that another program put there meanwhile are taken over and told of, and a step that was meant
 * for what is no longer so isn't written. After each, the notebook shown is the one on disk.
 */
final class StepWriter {

  private final Workspace workspace;
  private final Clock clock;
  private String initials = "";

  StepWriter(Workspace workspace, Clock clock) {
    this.workspace = workspace;
    this.clock = clock;
  }

  void writer(String newInitials) {
    initials = newInitials;
  }

  String writer() {
    return initials;
  }

  /** Makes the entries of a step for a notebook; none when it can't be done there. */
  interface Making {
    List<Entry> entries(Notebook notebook, EntryIds ids);
  }

  /**
   * Writes a step.
   *
   * @param prefix what it does, as in {@link Steps}; empty for one that marks
   * @param making makes its entries
   * @return whether it is on disk; if not, the workspace's notice says why
   */
  boolean step(String prefix, Making making) {
    if (workspace.opened().get().isEmpty()) {
      return false;
    }
    Season season = season();
    Path file = workspace.opened().get().orElseThrow().folder().resolve(Season.NOTEBOOK_FILE);
    List<Entry> made = List.of();
    try {
      NotebookFile found = NotebookFile.read(file);
      String changed = found.changedSince(season);
      if (!changed.isEmpty()) {
        String kept = keepLost(file, season, found);
        show(found);
        tell(Notice.Weight.NOTE, changed + kept);
      }
      EntryIds.Writer writer = new EntryIds.Writer(initials, clock, season.sheet().utcOffset());
      made = making.entries(found.notebook(), EntryIds.of(prefix, found.notebook(), writer));
      if (!made.isEmpty()) {
        NotebookLog.append(file, made, season.sheet().utcOffset());
        show(NotebookFile.read(file));
      }
    } catch (IOException e) {
      cannotWrite(file, e);
    }
    return !made.isEmpty() && season().notebook().history().containsAll(made);
  }

  /**
   * Keeps entries that somebody else's program took out of the file, in a file beside it.
   *
   * @return where they are, in words; empty when none is gone
   */
  private String keepLost(Path file, Season season, NotebookFile found) throws IOException {
    List<Entry> lost = new ArrayList<>(season.notebook().history());
    lost.removeAll(found.notebook().history());
    if (lost.isEmpty()) {
      return "";
    }
    String stamp = clock.instant().toString().replaceAll("[^0-9TZ]", "");
    Path beside = file.resolveSibling("notebook-lost-" + stamp + ".jsonl");
    NotebookLog.append(beside, lost, season.sheet().utcOffset());
    return ". They are kept in " + beside.getFileName() + ", as lines to put back";
  }

  /** Entries under headers of the step. */
  static List<Entry> headed(List<Entry> entries, EntryIds ids) {
    return entries.stream().map(e -> EntryCopy.with(e, ids.header(e.header().note()))).toList();
  }

  /**
   * Entries that decide on a finding, and a dismissal of it where they wouldn't settle it; none
   * when it is settled already.
   */
  List<Entry> deciding(Notebook notebook, Finding finding, List<Entry> entries, EntryIds ids) {
    if (new Settled(notebook).by(finding).isPresent()) {
      tell(
          Notice.Weight.FAULT,
          "Another program decided on this finding meanwhile, so nothing was written: look at the"
              + " notebook as it is now");
      return List.of();
    }
    List<Entry> made = new ArrayList<>(headed(entries, ids));
    List<Entry> all = new ArrayList<>(notebook.history());
    all.addAll(made);
    if (new Settled(new Notebook(all, notebook.notes())).by(finding).isEmpty()) {
      made.add(new Entry.Dismissal(ids.header("decided by what is written with it"), finding.id()));
    }
    return made;
  }

  /** Withdrawals of entries, none when one of them doesn't count any more. */
  List<Entry> withdrawals(Notebook notebook, List<String> entries, String reason, EntryIds ids) {
    Set<String> missing = new HashSet<>(entries);
    missing.removeAll(Standing.of(notebook).counting());
    if (!missing.isEmpty()) {
      tell(
          Notice.Weight.FAULT,
          "The entry was withdrawn or changed meanwhile, so nothing was written: look at the"
              + " notebook as it is now");
      return List.of();
    }
    return entries.stream().<Entry>map(id -> new Entry.Withdrawal(ids.header(reason), id)).toList();
  }

  /** Withdrawals of what a step wrote, none when another step came after the one that was seen. */
  List<Entry> reversal(Optional<Steps.Step> seen, Optional<Steps.Step> now, EntryIds ids) {
    if (!seen.equals(now)) {
      tell(
          Notice.Weight.FAULT,
          "The notebook was changed by another program meanwhile, so nothing was undone or done"
              + " again: look at it as it is now, then choose again");
      return List.of();
    }
    List<Entry> made = new ArrayList<>();
    seen.ifPresent(
        step -> step.entries().forEach(id -> made.add(new Entry.Withdrawal(ids.header(""), id))));
    return made;
  }

  private void show(NotebookFile found) {
    Opened before = workspace.opened().get().orElseThrow();
    workspace.opened().set(Optional.of(before.with(SeasonStages.with(before.season(), found))));
  }

  private void cannotWrite(Path file, IOException why) {
    String words = file + " can't be written to (" + why.getMessage() + ")";
    String remedy =
        ": make room or ask for the right to write there. What is being made isn't on disk; the"
            + " notebook shown is";
    try {
      show(NotebookFile.read(file));
    } catch (IOException e) {
      remedy = ", nor read: look whether the disk is there. What you see was there before";
    }
    tell(Notice.Weight.FAULT, words + remedy);
  }

  private Season season() {
    return workspace.opened().get().orElseThrow().season();
  }

  private void tell(Notice.Weight weight, String words) {
    workspace.notice().set(new Notice(weight, words));
  }
}
