package org.rimebook.desk.model.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.span;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.model.bench.CalibrationForm.Source;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.leaflet.LeafletText;
import org.rimebook.fixture.AtOnce;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;

/** The bench without a component, on the sample of a quiet valley without its totals. */
class BenchModelTest {

  private static final String WEIGHTS = "0\t1050,1\n2\t1521,4\n4\t1876,5\n6\t2173,2\n8\t2434,2";

  @TempDir private Path temporary;
  private final Workspace workspace = new Workspace();
  private final AtOnce tasks = AtOnce.without(Lane.SETTLE);
  private final SeasonKeeper keeper =
      new SeasonKeeper(workspace, tasks, Clock.fixed(Bucket.at(9000), ZoneOffset.UTC));
  private final BenchModel bench = new BenchModel(workspace, keeper, tasks, keeper::open);
  private Path season;

  @BeforeEach
  void open() throws IOException {
    season = Copies.of(Path.of("sample-sets", "quiet-valley"), temporary.resolve("season"));
    keeper.open(season);
  }

  private BenchForms at(BenchTask task) {
    bench.open(task);
    return bench.forms().orElseThrow();
  }

  private BenchPaper made(BenchTask task) {
    bench.make();
    return bench.paper(task).get();
  }

  private static String text(BenchPaper paper) {
    assertThat(paper.current()).as(paper.words()).isTrue();
    return String.join("\n", LeafletText.lines(paper.made().orElseThrow().leaflet()));
  }

  private static String out(Object... words) {
    Terminal seen = Terminal.run(words);
    assertThat(seen.code()).as(seen.err()).isZero();
    return seen.out().lines().collect(Collectors.joining("\n"));
  }

  private List<Entry> notebook() {
    return workspace.opened().get().orElseThrow().season().notebook().inForce();
  }

  private Entry last() {
    return notebook().get(notebook().size() - 1);
  }

  @Test
  void nothingIsMadeBeforeItIsOpenedNorWithoutASeason() {
    assertThat(bench.forms()).isEmpty();
    keeper.close();
    bench.toggle();
    assertThat(bench.shown().get()).isFalse();
    assertThat(bench.canOpen()).isFalse();
  }

  @Test
  void theFitIsThatOfTheCommandLineAndIsStoredForItsTimeWithARemark() {
    CalibrationForm form = at(BenchTask.CALIBRATION).calibration();
    assertThat(made(BenchTask.CALIBRATION).words()).contains("at least one weight");
    form.loads().paste(WEIGHTS, 0);
    BenchPaper paper = made(BenchTask.CALIBRATION);
    assertThat(text(paper))
        .isEqualTo(
            out(
                "calibrate",
                season,
                "--wire",
                "north",
                "--load",
                "0=1050.1",
                "--load",
                "2=1521.4",
                "--load",
                "4=1876.5",
                "--load",
                "6=2173.2",
                "--load",
                "8=2434.2"));
    assertThat(paper.fact()).isEmpty();
    assertThat(paper.made().orElseThrow().words()).contains("from when it holds");
    form.type(BenchField.VALID_FROM, "2024-06-01 12:00");
    assertThat(bench.paper(BenchTask.CALIBRATION).get().fact()).isEmpty();
    assertThat(made(BenchTask.CALIBRATION).made().orElseThrow().words()).contains("initials");
    form.type(BenchField.INITIALS, "kh");
    Fact fact = made(BenchTask.CALIBRATION).fact().orElseThrow();
    assertThat(fact.question()).contains("wire north", "2024-06-01 12:00", "A 0.01725", "0.01709");
    bench.store(fact);
    assertThat(workspace.notice().get().words()).startsWith("Stored in station.json: wire north");
    assertThat(season.resolve(Season.STATION_FILE)).content().contains("2024-06-01T12:00:00-08:00");
    assertThat(last().header().note()).contains("Wire north has a new calibration from 2024-06-01");
    assertThat(last().header().by()).isEqualTo("kh");
    assertThat(bench.shown().get()).isTrue();
    assertThat(made(BenchTask.CALIBRATION).made().orElseThrow().words())
        .contains("The station sheet has this calibration");
  }

  @Test
  void oneWeightChecksTheWireAndIsStoredAsARemark() {
    CalibrationForm form = at(BenchTask.CALIBRATION).calibration();
    form.source(Source.WATER);
    form.type(BenchField.WATER_DEG_C, "12");
    form.type(BenchField.INITIALS, "kh");
    form.loads().paste("0\t1050.1\n2\t1526.1", 0);
    BenchPaper paper = made(BenchTask.CALIBRATION);
    assertThat(text(paper)).contains("1.999 kg stand for 99.95 mm", "it holds");
    bench.store(paper.fact().orElseThrow());
    assertThat(last().header().note()).startsWith("Wire north checked: 1.999 kg stand for");
    assertThat(made(BenchTask.CALIBRATION).fact()).isEmpty();
  }

  @Test
  void aSheetThatCanBeNoWireIsNotStoredAndABlankOneSaysWhatIsMissing() {
    CalibrationForm form = at(BenchTask.CALIBRATION).calibration();
    form.source(Source.SHEET);
    assertThat(made(BenchTask.CALIBRATION).words()).contains("A (cm/Hz): Enter it");
    form.type(BenchField.SHEET_A, "-0,0172");
    form.type(BenchField.SHEET_B, "8.2e-6");
    form.type(BenchField.SHEET_F0, "1050.1");
    form.type(BenchField.VALID_FROM, "2024-06-01 12:00");
    form.type(BenchField.INITIALS, "kh");
    BenchPaper paper = made(BenchTask.CALIBRATION);
    assertThat(paper.fact()).isEmpty();
    assertThat(paper.made().orElseThrow().words()).startsWith("Can't be stored: ");
    form.type(BenchField.SHEET_A, "0,0172");
    assertThat(text(made(BenchTask.CALIBRATION)))
        .contains("New sheet of wire north", "1.720000e-02");
    assertThat(bench.paper(BenchTask.CALIBRATION).get().fact()).isPresent();
  }

  @Test
  void weightsThatDontDetermineTheCurveAreRefusedInWords() {
    CalibrationForm form = at(BenchTask.CALIBRATION).calibration();
    form.loads().paste("0 1050\n2 1521\n2 1521\n2 1521", 0);
    BenchPaper paper = made(BenchTask.CALIBRATION);
    assertThat(paper.current()).isFalse();
    assertThat(paper.words()).isNotBlank().doesNotContain("Exception");
  }

  @Test
  void anInstallationIsStoredOnceAsARemarkWithItsOutcomeAndSteps() {
    InstallationForm form = at(BenchTask.INSTALLATION).installation();
    form.type(BenchField.FROM, "2023-11-05 10:00");
    form.type(BenchField.TO, "2023-11-05 09:00");
    assertThat(made(BenchTask.INSTALLATION).words()).contains("It comes after \"From\"");
    form.type(BenchField.TO, "2023-11-05 12:00");
    form.type(BenchField.TAPS_TO, "2023-11-05 12:02");
    assertThat(made(BenchTask.INSTALLATION).words()).contains("Enter both");
    form.type(BenchField.TAPS_TO, "");
    form.type(BenchField.INITIALS, "kh");
    form.done(1, true);
    BenchPaper paper = made(BenchTask.INSTALLATION);
    assertThat(text(paper)).contains("  x The gauge's base is level", "  - Tap the rim");
    bench.store(paper.fact().orElseThrow());
    assertThat(last()).isInstanceOf(Entry.Remark.class);
    assertThat(last().header().note())
        .contains("Installation check", "Depth of wire north", "Steps ticked: 1 of 11");
    assertThat(made(BenchTask.INSTALLATION).made().orElseThrow().words())
        .contains("The notebook has this outcome");
    keeper.undo();
    assertThat(made(BenchTask.INSTALLATION).fact()).isPresent();
  }

  @Test
  void whatIsSelectedIsProposedUnlessATimeWasTyped() {
    workspace.selection().set(workspace.selection().get().only(new Interval(0, 90_500)));
    InstallationForm form = at(BenchTask.INSTALLATION).installation();
    assertThat(form.text(BenchField.FROM)).isEqualTo("1969-12-31 16:00");
    assertThat(form.text(BenchField.TO)).isEqualTo("1969-12-31 16:02");
    form.type(BenchField.TO, "1969-12-31 17:00");
    bench.close();
    workspace.selection().set(workspace.selection().get().only(span(0, 1)));
    at(BenchTask.INSTALLATION);
    assertThat(form.text(BenchField.TO)).isEqualTo("1969-12-31 17:00");
  }

  @Test
  void aVisitIsCheckedAndStoredAsOneEntry() {
    VisitForm form = at(BenchTask.VISIT_DONE).visit();
    form.type(BenchField.ARRIVED, "2024-02-11 12:00");
    form.type(BenchField.LEFT, "2024-02-11 11:00");
    assertThat(made(BenchTask.VISIT_DONE).words()).contains("One leaves after one arrived");
    form.type(BenchField.LEFT, "2024-02-11 13:00");
    form.type(BenchField.ANTIFREEZE, "-1");
    assertThat(made(BenchTask.VISIT_DONE).words()).contains("It is 0 or more");
    form.type(BenchField.ANTIFREEZE, "4,5");
    form.type(BenchField.LEVEL_BEFORE, "400");
    form.type(BenchField.REMARKS, "rim cleared");
    form.type(BenchField.INITIALS, "kh");
    form.done(VisitAction.EMPTIED, true);
    assertThat(form.cautions()).anyMatch(words -> words.contains("about 8.0 kg"));
    BenchPaper paper = made(BenchTask.VISIT_DONE);
    assertThat(text(paper)).contains("2024-02-11 12:00", "4.50", "about 8.0 kg");
    int before = notebook().size();
    bench.store(paper.fact().orElseThrow());
    assertThat(notebook()).hasSize(before + 1);
    assertThat(last())
        .isInstanceOfSatisfying(
            Entry.ServiceVisit.class,
            visit -> {
              assertThat(visit.actions()).containsExactly(VisitAction.EMPTIED);
              assertThat(visit.antifreezeL()).hasValue(4.5);
              assertThat(visit.oilL()).isEmpty();
              assertThat(visit.header().note())
                  .isEqualTo("Level before as written down: 400 mm. rim cleared");
            });
    assertThat(made(BenchTask.VISIT_DONE).made().orElseThrow().words()).contains("overlaps");
    assertThat(bench.paper(BenchTask.VISIT_DONE).get().fact()).isEmpty();
  }

  @Test
  void whatIsFilledInStaysWhileTasksAreSwitchedAndEndsWithTheSeason() throws IOException {
    at(BenchTask.CALIBRATION).calibration().loads().paste(WEIGHTS, 0);
    String before = text(made(BenchTask.CALIBRATION));
    bench.choose(BenchTask.CHARGE);
    bench.make();
    bench.choose(BenchTask.CALIBRATION);
    assertThat(bench.paper(BenchTask.CALIBRATION).get().made()).isPresent();
    assertThat(text(made(BenchTask.CALIBRATION))).isEqualTo(before);
    Path other = Copies.of(Path.of("sample-sets", "quiet-valley"), temporary.resolve("other"));
    keeper.open(other);
    assertThat(bench.shown().get()).isFalse();
    assertThat(bench.forms()).isEmpty();
    assertThat(bench.paper(BenchTask.CALIBRATION).get().made()).isEmpty();
  }

  @Test
  void aPaperIsSavedWholeAndNeverAmongTheRecord() throws IOException {
    at(BenchTask.CALIBRATION).calibration().loads().paste(WEIGHTS, 0);
    BenchPaper.Made made = made(BenchTask.CALIBRATION).made().orElseThrow();
    Path file = bench.suggestedFile(made);
    assertThat(file.getFileName()).hasToString("check-weights-on-wire-north.pdf");
    assertThat(bench.obstacle(file)).isEmpty();
    assertThat(bench.obstacle(season.resolve("records").resolve("a.pdf"))).isPresent();
    bench.save(made, file);
    assertThat(Files.readAllBytes(file)).isEqualTo(made.pdf());
    assertThat(workspace.notice().get().words()).contains("saved as " + file);
  }

  /** Finishes papers only when it is told to. */
  private final class Late implements Tasks {
    private final List<Runnable> waiting = new ArrayList<>();

    @Override
    public <T> void run(
        Lane lane,
        String name,
        Work<T> work,
        Consumer<? super T> done,
        Consumer<Throwable> failed) {
      Runnable now = () -> tasks.run(lane, name, work, done, failed);
      if (lane == Lane.BENCH) {
        waiting.add(now);
      } else {
        now.run();
      }
    }

    @Override
    public void cancel(Lane lane) {
      tasks.cancel(lane);
    }

    @Override
    public void watch(Consumer<Running> watcher) {
      tasks.watch(watcher);
    }
  }

  @Test
  void whatIsTypedWhileAPaperIsMadeIsNotLeftOutOfWhatIsStored() {
    Late late = new Late();
    BenchModel slow = new BenchModel(workspace, keeper, late, keeper::open);
    slow.open(BenchTask.VISIT_DONE);
    VisitForm form = slow.forms().orElseThrow().visit();
    form.type(BenchField.ARRIVED, "2024-02-01 10:00");
    form.type(BenchField.LEFT, "2024-02-01 11:00");
    form.type(BenchField.INITIALS, "kh");
    slow.make();
    form.type(BenchField.LEVEL_BEFORE, "312.4");
    late.waiting.remove(0).run();
    assertThat(slow.paper(BenchTask.VISIT_DONE).get().fact()).isEmpty();
    slow.make();
    late.waiting.remove(0).run();
    Fact fact = slow.paper(BenchTask.VISIT_DONE).get().fact().orElseThrow();
    assertThat(((Fact.OfNotebook) fact).entry().header().note()).contains("312.4 mm");
  }
}
