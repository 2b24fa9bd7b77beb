package org.rimebook.practice.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimebook.depth.ConvertedWires;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;
import org.rimebook.findings.RecordFacts;
import org.rimebook.findings.Scene;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.Notebook;
import org.rimebook.practice.bench.InMemory;
import org.rimebook.season.Season;
import org.rimebook.station.Progress;

/** Winters of every class whose findings have all been decided on. */
class DecidedFindingsTest {

  private static final int DAYS = 42;
  private static final long SEED = 5;

  private static RecordFacts winter(FaultClass of, long seed, int days) {
    Season season = InMemory.of(of.winter(seed, days));
    return new RecordFacts(ConvertedWires.of(season.record(), season.sheet(), Progress.NONE));
  }

  private static List<Finding> open(RecordFacts winter, List<Entry> entries) {
    Notebook notebook = new Notebook(entries, List.of());
    return Findings.in(Scene.of(winter, notebook), Progress.NONE).open();
  }

  private static Entry.Header header(int number) {
    return new Entry.Header("n-" + number, "2025-06-01T10:00:00Z", "ab", "");
  }

  private static Entry dismissed(Finding finding, int number) {
    return new Entry.Dismissal(header(number), finding.id());
  }

  /** A remark changes nothing that is computed, so what proposes one is settled by its id. */
  private static Entry accepted(Finding finding, int number) {
    return finding.proposal() instanceof Entry.Remark
        ? dismissed(finding, number)
        : EntryCopy.with(finding.proposal(), header(number));
  }

  private static void nothingIsRaisedAgain(RecordFacts winter, List<Finding> found) {
    List<Entry> dismissals = new ArrayList<>();
    List<Entry> acceptances = new ArrayList<>();
    List<Entry> both = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      dismissals.add(dismissed(found.get(i), i));
      acceptances.add(accepted(found.get(i), i));
      both.add(i % 2 == 0 ? dismissals.get(i) : acceptances.get(i));
    }
    assertThat(open(winter, dismissals)).as("after all were dismissed").isEmpty();
    assertThat(open(winter, acceptances)).as("after all were accepted").isEmpty();
    assertThat(open(winter, both)).as("after every other was dismissed").isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FaultClass.class)
  void whatWasDismissedOrAcceptedIsNotRaisedAgain(FaultClass of) {
    RecordFacts winter = winter(of, SEED, DAYS);
    nothingIsRaisedAgain(winter, open(winter, List.of()));
  }

  /** Winters in which one fault hides another, or is most of what tells what is usual. */
  @ParameterizedTest
  @CsvSource({
    "NOISY_WIRE, 2, 42",
    "CREEPING_WIRE, 1, 42",
    "CREEPING_WIRE, 2, 42",
    "SHIFTED_WIRE, 3, 42",
    "INTERFERENCE, 6, 60",
    "EXCHANGED_LEADS, 7, 60",
    "LEAKING, 8, 60",
    "EVERYTHING, 2, 120"
  })
  void aFaultThatHidOrShapedAnotherSettlesLikeAnyOther(FaultClass of, long seed, int days) {
    RecordFacts winter = winter(of, seed, days);
    List<Finding> found = open(winter, List.of());
    assertThat(found).isNotEmpty();
    nothingIsRaisedAgain(winter, found);
  }
}
