package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.KeptSeason.noise;
import static org.rimebook.fixture.KeptSeason.remark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.NotebookRow.Filter;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;

class NotebookReadingTest {

  private static final EntryTimes TIMES = new EntryTimes(Bucket.OFFSET);

  @TempDir private Path folder;
  private KeptSeason season;
  private SeasonKeeper keeper;

  @BeforeEach
  void open() throws IOException {
    season = KeptSeason.in(folder);
    keeper = season.keeper();
  }

  private List<NotebookRow> rows(Filter filter) {
    return NotebookRow.of(
        season.workspace().opened().get().orElseThrow().season().notebook(),
        List.of(),
        filter,
        TIMES);
  }

  private List<String> history(String id) {
    return EntryHistory.of(
        season.workspace().opened().get().orElseThrow().season().notebook(), id, TIMES);
  }

  @Test
  void entriesStandUnderTheirMonthInTheOrderOfWhatTheyAreAbout() {
    keeper.write(List.of(remark("later"), noise(1, 2), noise(0, 1)));
    assertThat(rows(Filter.NONE))
        .hasSize(5)
        .satisfies(r -> assertThat(r.get(0)).isEqualTo(new NotebookRow.Month("January 2025")))
        .satisfies(r -> assertThat(r.get(3)).isEqualTo(new NotebookRow.Month("February 2025")));
    assertThat(rows(Filter.NONE).get(1))
        .isInstanceOfSatisfying(
            NotebookRow.Line.class,
            line -> assertThat(line.time()).isEqualTo("10 Jan 00:00 to 01:00"));
  }

  @Test
  void withdrawnEntriesShowOnDemand() {
    keeper.write(List.of(remark("a")));
    keeper.withdraw(List.of(season.last()), "");
    assertThat(rows(Filter.NONE)).isEmpty();
    assertThat(rows(new Filter("", "", true)))
        .last()
        .isInstanceOfSatisfying(
            NotebookRow.Line.class, line -> assertThat(line.withdrawn()).isTrue());
  }

  @Test
  void aFilterLooksAtEverythingAnEntrySaysInWhateverCase() {
    keeper.write(List.of(remark("IİıI"), noise(0, 1)));
    assertThat(rows(new Filter("NORTH", "", false))).hasSize(2);
    assertThat(rows(new Filter("rattLES", "", false))).hasSize(2);
    assertThat(rows(new Filter("ab", Entry.Remark.KIND, false))).hasSize(2);
    assertThat(rows(new Filter("snow", "", false))).isEmpty();
  }

  @Test
  void aKindThisVersionDoesNotKnowIsShownAsKept() throws IOException {
    season.byHand(
        "{\"id\": \"u\", \"at\": \"2025-01-11T09:00:00-07:00\", \"by\": \"cd\","
            + " \"kind\": \"wind-shield-lost\"}");
    season = season.again();
    Entry unknown = season.inForce().get(0);
    assertThat(EntryWords.kind(unknown)).isEqualTo("Wind shield lost");
    assertThat(EntryWords.particulars(unknown)).contains("kept, without effect");
    assertThat(rows(Filter.NONE)).hasSize(2);
  }

  @Test
  void theHistoryOfAnEntryNamesWhatItWasWhoChangedItAndWhatBecameOfIt() {
    keeper.write(List.of(noise(0, 1)));
    String first = season.last();
    keeper.writer("cd");
    keeper.replace(first, noise(0, 2));
    String second = season.last();
    keeper.withdraw(List.of(second), "was right");
    keeper.undo();
    assertThat(history(second))
        .satisfiesExactly(
            line ->
                assertThat(line)
                    .contains("2025 ", " ab written: Bad interval, 10 Jan 00:00 to 01:00"),
            line -> assertThat(line).endsWith("cd changed to this"),
            line -> assertThat(line).endsWith("cd withdrawn: was right"),
            line -> assertThat(line).endsWith("cd brought back"));
  }

  @Test
  void aWithdrawalThatNamesItsOwnStepDoesNotSendTheHistoryRoundInCircles() throws IOException {
    String common = "\"at\": \"2025-01-11T09:00:00-07:00\", \"by\": \"cd\", ";
    season.byHand(
        "{\"id\": \"20250101T000000.1\", "
            + common
            + "\"kind\": \"withdrawal\", \"entry\": \"20250101T000000.2\"}");
    season.byHand("{\"id\": \"20250101T000000.2\", " + common + "\"kind\": \"remark\"}");
    season = season.again();
    assertThat(history("20250101T000000.2")).hasSize(1);
  }

  @Test
  void stepsAreNamedByWhatTheyMark() {
    keeper.write(List.of(noise(0, 1)));
    assertThat(undoWords()).isEqualTo("bad interval, 10 Jan 00:00");
    keeper.replace(season.last(), noise(1, 2));
    assertThat(undoWords()).isEqualTo("change of bad interval, 10 Jan 01:00");
    keeper.withdraw(List.of(season.last()), "");
    assertThat(undoWords()).isEqualTo("withdrawal of 1 entry");
    keeper.write(List.of(noise(0, 1), noise(1, 2), noise(2, 2.25)));
    assertThat(undoWords()).isEqualTo("bad interval and 2 more");
    keeper.undo();
    assertThat(EntryWords.step(keeper.steps().flatMap(Steps::redo).orElseThrow(), TIMES))
        .isEqualTo("bad interval and 2 more");
  }

  private String undoWords() {
    return EntryWords.step(keeper.steps().flatMap(Steps::undo).orElseThrow(), TIMES);
  }

  @Test
  void lengthsAreSaidInTwoUnitsAtMost() {
    assertThat(EntryTimes.length(1000)).isEqualTo("1 s");
    assertThat(EntryTimes.length(35 * 60_000)).isEqualTo("35 min");
    assertThat(EntryTimes.length(75 * 60_000 + 1000)).isEqualTo("1 h 15 min");
    assertThat(EntryTimes.length(58L * 3_600_000)).isEqualTo("2 d 10 h");
    assertThat(EntryTimes.length(48L * 3_600_000 - 1000)).isEqualTo("2 d");
  }
}
