package org.rimebook.practice.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.Notebook;
import org.rimebook.practice.bench.InMemory;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;

/** Winters of every class whose findings have all been decided on. */
class DecidedFindingsTest {

  private static final int DAYS = 30;
  private static final long SEED = 5;

  private static List<Finding> open(Season season, List<Entry> entries) {
    Notebook notebook = new Notebook(entries, List.of());
    try {
      return SeasonResult.of(season.with(notebook)).findings().open();
    } catch (InputException e) {
      throw new AssertionError(e);
    }
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

  @ParameterizedTest
  @EnumSource(FaultClass.class)
  void whatWasDismissedOrAcceptedIsNotRaisedAgain(FaultClass of) throws InputException {
    Season season = InMemory.of(of.winter(SEED, DAYS)).with(Notebook.EMPTY);
    List<Finding> found = open(season, List.of());
    List<Entry> dismissals = new ArrayList<>();
    List<Entry> acceptances = new ArrayList<>();
    for (Finding finding : found) {
      dismissals.add(dismissed(finding, dismissals.size()));
      acceptances.add(accepted(finding, acceptances.size()));
    }
    assertThat(open(season, dismissals)).as("after all were dismissed").isEmpty();
    assertThat(open(season, acceptances)).as("after all were accepted").isEmpty();
  }
}
