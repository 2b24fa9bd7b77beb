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

  private static final int DAYS = 40;
  private static final long SEED = 5;

  private static Season season(FaultClass of) throws InputException {
    return InMemory.of(of.winter(SEED, DAYS)).with(Notebook.EMPTY);
  }

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

  @ParameterizedTest
  @EnumSource(FaultClass.class)
  void whatWasDismissedIsNotRaisedAgain(FaultClass of) throws InputException {
    Season season = season(of);
    List<Entry> entries = new ArrayList<>();
    for (Finding finding : open(season, entries)) {
      entries.add(dismissed(finding, entries.size()));
    }
    assertThat(open(season, entries)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FaultClass.class)
  void whatWasAcceptedLeavesNothingToDecide(FaultClass of) throws InputException {
    Season season = season(of);
    List<Entry> entries = new ArrayList<>();
    for (Finding finding : open(season, entries)) {
      Entry proposal = finding.proposal();
      entries.add(
          proposal instanceof Entry.Remark
              ? dismissed(finding, entries.size())
              : EntryCopy.with(proposal, header(entries.size())));
    }
    assertThat(open(season, entries)).isEmpty();
  }
}
