package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Selection;
import org.rimebook.desk.model.TotalsColumn;
import org.rimebook.desk.model.TotalsList;
import org.rimebook.desk.model.TotalsRow;
import org.rimebook.desk.model.TotalsScale;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;

class TotalsListTest {

  private static final Path NOWHERE = Path.of("nowhere");

  private static Bucket bucket() {
    return Bucket.every(15, 96).level(Bucket.rain(30, 34, 1, 60, 70, 0.5)).noise(0.01);
  }

  private static Bucket judgedDry() {
    return bucket().entry(new Entry.DrySpell(Bucket.header("d"), Bucket.span(25, 45)));
  }

  private final Desk desk = Desk.with(bucket(), NOWHERE);
  private final TotalsList list = new TotalsList(desk.workspace);

  private void at(TotalsScale scale) {
    list.choice().set(list.choice().get().at(scale));
  }

  private List<TotalsRow> rows() {
    return list.shown().get().rows();
  }

  private List<Long> starts() {
    return rows().stream().map(row -> row.total().interval().fromMs()).toList();
  }

  @Test
  void everyScaleHasTheRowsOfItsTable() {
    assertThat(rows()).hasSize(4);
    at(TotalsScale.HOURLY);
    assertThat(rows()).hasSize(96);
    at(TotalsScale.MONTHLY);
    assertThat(rows()).hasSize(1);
    assertThat(rows().get(0).lacking()).isEqualTo("27 days outside the record");
  }

  @Test
  void byCatchTheGreatestComesLastAndTheOtherWayRoundFirst() {
    list.choice().set(list.choice().get().by(TotalsColumn.CATCH));
    assertThat(rows().get(3).total().interval()).isEqualTo(Bucket.span(48, 72));
    list.choice().set(list.choice().get().by(TotalsColumn.CATCH));
    assertThat(rows().get(0).total().interval()).isEqualTo(Bucket.span(48, 72));
  }

  @Test
  void filtersLeaveWhatPassesThemAndSayWhenNothingDoes() {
    list.choice().set(list.choice().get().withCatch(true));
    assertThat(rows()).hasSize(2);
    list.choice().set(list.choice().get().of(Optional.of(Quality.POOR)));
    assertThat(rows()).isEmpty();
    assertThat(list.hint()).startsWith("No day passes the filter");
  }

  @Test
  void whileAnEntryIsBeingMadeChangedRowsAreMarkedAndNoneMoves() {
    list.choice().set(list.choice().get().by(TotalsColumn.CATCH));
    List<Long> before = starts();
    desk.compute(judgedDry().result(), Computed.State.FORESEEN);
    assertThat(starts()).isEqualTo(before);
    assertThat(list.standing()).isEqualTo("with the entry being made: 1 day changes");
    TotalsRow changed = rows().stream().filter(TotalsRow::changed).findFirst().orElseThrow();
    assertThat(list.text().more(changed).get(0)).startsWith("was 4.0 ± 0.");
    desk.compute(judgedDry().result(), Computed.State.SETTLED);
    assertThat(starts()).isNotEqualTo(before);
    assertThat(rows()).noneMatch(TotalsRow::changed);
    assertThat(list.standing()).isEmpty();
  }

  @Test
  void pickedRowsAreSelectedEverywhereAndTheStripsGoThereWithAMargin() {
    desk.workspace.view().reset(Bucket.span(0, 96));
    at(TotalsScale.HOURLY);
    list.select(rows().subList(30, 33));
    assertThat(desk.workspace.selection().get().intervals()).containsExactly(Bucket.span(30, 33));
    assertThat(desk.workspace.view().visible().get()).isEqualTo(Bucket.span(0, 96));
    list.select(rows().subList(40, 41));
    Interval near = desk.workspace.view().visible().get();
    assertThat(near).isEqualTo(Bucket.span(39, 42));
    list.select(rows().subList(41, 42));
    assertThat(desk.workspace.view().visible().get()).as("stays when in view").isEqualTo(near);
  }

  @Test
  void whatIsSelectedElsewhereTouchesItsRows() {
    Selection minutes = Selection.NONE.only(Bucket.span(47.5, 48.5));
    assertThat(list.selected(minutes)).containsExactly(1, 2);
    at(TotalsScale.HOURLY);
    assertThat(list.selected(minutes)).containsExactly(47, 48);
  }

  @Test
  void aMonthIsOpenedIntoItsDaysAndADayIsAskedAbout() {
    at(TotalsScale.MONTHLY);
    list.ask(rows().get(0));
    assertThat(list.choice().get().scale()).isEqualTo(TotalsScale.DAILY);
    assertThat(desk.workspace.asked().get()).isEmpty();
    list.ask(rows().get(1));
    assertThat(desk.workspace.asked().get()).contains(Bucket.span(24, 48));
  }

  @Test
  void copiedRowsHaveAHeaderAndAnEmptyFieldForAMissingTotal() {
    Desk other =
        Desk.with(
            bucket().entry(new Entry.LateCatch(Bucket.header("l"), Bucket.span(20, 40))), NOWHERE);
    TotalsList days = new TotalsList(other.workspace);
    String[] lines = days.text().tsv(days.shown().get().rows()).split("\n");
    assertThat(lines[0]).startsWith("start\tcatch_mm\tuncertainty_mm\tquality\t");
    assertThat(lines[1]).startsWith("2025-01-10\t\t\tmissing\t");
    assertThat(lines[2]).startsWith("2025-01-11\t4.0\t0.").contains("\t2025-01-10 00:00\t");
    assertThat(lines).hasSize(5);
  }
}
