package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.rimebook.depth.ConvertedWires;
import org.rimebook.depth.CounterStep;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireCombiner;
import org.rimebook.depth.WireDepthStage;
import org.rimebook.depth.WireDepths;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;

/**
 * What a check looks at: a season under its notebook, and under the proposals of what was found
 * before, taken as accepted, so that one fault isn't found again as another.
 */
public final class Scene {

  private final RecordFacts facts;
  private final Notebook notebook;
  private final WireDepths depths;
  private final LevelSeries level;
  private final List<Finding> found;
  private final Once<Blocks> blocks;

  private Scene(RecordFacts facts, Notebook notebook, WireDepths depths, LevelSeries level) {
    this.facts = facts;
    this.notebook = notebook;
    this.depths = depths;
    this.level = level;
    this.found = List.of();
    this.blocks = new Once<>(() -> Blocks.of(this));
  }

  private Scene(Scene like, List<Finding> found) {
    this.facts = like.facts;
    this.notebook = like.notebook;
    this.depths = like.depths;
    this.level = like.level;
    this.found = List.copyOf(found);
    this.blocks = like.blocks;
  }

  /**
   * A season as its notebook leaves it.
   *
   * @param facts its record
   * @param notebook its notebook
   * @param depths the depths under that notebook
   * @param level the level under that notebook
   */
  public static Scene of(
      RecordFacts facts, Notebook notebook, WireDepths depths, LevelSeries level) {
    return new Scene(facts, notebook, depths, level);
  }

  /** The season as a notebook leaves it, worked out from the readings. */
  public static Scene of(RecordFacts facts, Notebook notebook) {
    ConvertedWires converted = facts.converted();
    WireDepths depths = WireDepthStage.of(converted, notebook, Progress.NONE);
    LevelSeries level = WireCombiner.combine(converted, depths, notebook, Progress.NONE);
    return new Scene(facts, notebook, depths, level);
  }

  /** This scene with more found, nothing of which is taken as accepted. */
  Scene having(Collection<Finding> more) {
    return new Scene(this, Stream.concat(found.stream(), more.stream()).toList());
  }

  /** This scene with more found, and what that proposes accepted. */
  Scene accepting(Collection<Finding> more) {
    List<Entry> effective =
        more.stream()
            .map(Finding::proposal)
            .filter(entry -> !(entry instanceof Entry.Remark))
            .toList();
    if (effective.isEmpty()) {
      return having(more);
    }
    List<Entry> entries = new ArrayList<>(notebook.history());
    for (Entry proposal : effective) {
      String id = "finding:" + entries.size();
      entries.add(EntryCopy.with(proposal, new Entry.Header(id, "", "", proposal.header().note())));
    }
    Scene accepted = of(facts, new Notebook(entries, notebook.notes()));
    return new Scene(accepted, having(more).found);
  }

  /** What is known of the record whatever the notebook says. */
  /** The smallest step a wire's counter shows, as depth [mm]; 0 when nothing changes. */
  double counterStepMm(int wire) {
    return facts.counterStep(wire) * CounterStep.mmPerUnit(record(), depths, wire);
  }

  RecordFacts facts() {
    return facts;
  }

  /** The readings. */
  public SeasonRecord record() {
    return facts.converted().record();
  }

  /** The station sheet. */
  public StationSheet sheet() {
    return facts.converted().sheet();
  }

  /** The notebook, and what was found before as if it were accepted. */
  public Notebook notebook() {
    return notebook;
  }

  /** Depth by wire and row, with the screening of each reading under {@link #notebook()}. */
  public WireDepths depths() {
    return depths;
  }

  /** Level of the bucket under {@link #notebook()}. */
  public LevelSeries level() {
    return level;
  }

  /** What was found before, in the order of the checks. */
  public List<Finding> found() {
    return found;
  }

  /** The season in ten-minute blocks. */
  public Blocks blocks() {
    return blocks.get();
  }

  /** Name of a wire. */
  public String wireName(int wire) {
    return sheet().wires().get(wire).name();
  }

  /** Spans of the entries of a kind, in the order of time. */
  public List<Interval> spans(Class<? extends Entry.Spanning> kind) {
    return notebook.inForce().stream()
        .filter(kind::isInstance)
        .map(entry -> entry.span().orElseThrow())
        .sorted((a, b) -> Long.compare(a.fromMs(), b.fromMs()))
        .toList();
  }

  /**
   * Whether somebody was at the gauge, or has said that no wire is to be believed, for most of it.
   */
  public boolean explained(Interval span) {
    return notebook.inForce().stream()
        .filter(Scene::leavesAllOut)
        .map(entry -> entry.span().orElseThrow())
        .anyMatch(entry -> mostly(entry, span));
  }

  /** Whether that is so for part of it. */
  public boolean explainedInPart(Interval span) {
    return notebook.inForce().stream()
        .filter(Scene::leavesAllOut)
        .anyMatch(entry -> entry.span().orElseThrow().overlaps(span));
  }

  /** Whether a wire isn't to be believed for most of a span, by what somebody has said. */
  public boolean leftOut(int wire, Interval span) {
    return notebook.inForce().stream()
        .filter(Entry.BadInterval.class::isInstance)
        .map(Entry.BadInterval.class::cast)
        .filter(bad -> bad.wires().isEmpty() || bad.wires().contains(wireName(wire)))
        .anyMatch(bad -> mostly(bad.interval(), span));
  }

  private static boolean leavesAllOut(Entry entry) {
    return entry instanceof Entry.ServiceVisit
        || entry instanceof Entry.BadInterval bad && bad.wires().isEmpty();
  }

  /** Whether something of a kind was found before over most of a span. */
  public boolean found(FindingKind kind, Interval span) {
    return found.stream()
        .anyMatch(finding -> finding.kind() == kind && mostly(finding.span(), span));
  }

  private static boolean mostly(Interval cover, Interval span) {
    long shared = Math.min(cover.toMs(), span.toMs()) - Math.max(cover.fromMs(), span.fromMs());
    return shared > 0 && 2 * shared >= span.lengthMs();
  }
}
