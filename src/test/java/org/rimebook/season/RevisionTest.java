package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.totals.Evidence;
import org.rimebook.totals.Hours;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/** The hard winter, which has an entry of every kind, under other notebooks. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RevisionTest {

  private static final long HOUR_MS = 3_600_000;

  /**
   * Hundredths of a millimetre an hour inside may be off by, and one outside. Of 35 entries and
   * withdrawals the worst hour was off by 4 inside, and outside by 2, which is what is learnt of
   * the season anew.
   */
  private static final long INSIDE = 6;

  private static final long OUTSIDE = 3;

  private Season season;
  private SeasonResult full;

  @BeforeAll
  void compute() throws InputException {
    season = Season.open(Path.of("sample-sets", "hard-winter"));
    full = SeasonResult.of(season);
  }

  private Notebook with(Entry entry) {
    List<Entry> history = new ArrayList<>(season.notebook().history());
    history.add(entry);
    return new Notebook(history, List.of());
  }

  private static Entry.Header header(String id) {
    return new Entry.Header(id, "2025-05-01T09:00:00Z", "kl", "");
  }

  private Notebook without(Entry entry) {
    return with(new Entry.Withdrawal(header("w"), entry.header().id()));
  }

  private Interval span(double share, long hours) {
    long first = season.record().stampMs(0);
    long last = season.record().stampMs(season.record().size() - 1);
    long from = first + Math.round(share * (last - first));
    return new Interval(from, from + hours * HOUR_MS);
  }

  private Stream<Entry> entries(double share, long hours) {
    Interval span = span(share, hours);
    Interval visit = span(share, 2);
    OptionalDouble none = OptionalDouble.empty();
    Set<String> one = Set.of(season.sheet().wires().get(0).name());
    return Stream.of(
        new Entry.BadInterval(header("x"), span, Set.of(), BadReason.NOISE),
        new Entry.BadInterval(header("x"), span, one, BadReason.WIRE_FAULT),
        new Entry.ServiceVisit(header("x"), visit, List.of(), none, none),
        new Entry.LateCatch(header("x"), span),
        new Entry.DrySpell(header("x"), span),
        new Entry.Estimate(header("x"), span, 3.3, "a neighbour"));
  }

  Stream<Notebook> others() {
    Stream<Notebook> withdrawn =
        season.notebook().inForce().stream()
            .filter(entry -> !(entry instanceof Entry.Remark))
            .map(this::without);
    Stream<Notebook> added =
        Stream.of(entries(0, 168), entries(0.2, 9), entries(0.43, 168), entries(0.97, 168))
            .flatMap(entries -> entries)
            .map(this::with);
    return Stream.concat(withdrawn, added);
  }

  @ParameterizedTest
  @MethodSource("others")
  void aProvisionalResultIsCloseToTheOneComputedThroughout(Notebook other) {
    SeasonResult revised = full.revised(other);
    SeasonResult computed = full.anew(season.with(other), Progress.NONE);
    assertThat(revised.provisional()).isTrue();
    Interval touched = revised.touched().orElseThrow();
    List<TotalRow> hours = revised.totals(Resolution.HUNDREDTH).hourly();
    List<TotalRow> expected = computed.totals(Resolution.HUNDREDTH).hourly();
    assertThat(hours).hasSameSizeAs(expected);
    for (int h = 0; h < hours.size(); h++) {
      TotalRow hour = hours.get(h);
      long most = hour.interval().overlaps(touched) ? INSIDE : OUTSIDE;
      long off = hour.catchUnits().orElse(-99) - expected.get(h).catchUnits().orElse(-99);
      assertThat(Math.abs(off)).as(hour.interval().from().toString()).isLessThanOrEqualTo(most);
      assertThat(hour.accumulatedSinceMs()).isEqualTo(expected.get(h).accumulatedSinceMs());
      assertThat(hour.wires()).isEqualTo(expected.get(h).wires());
      assertThat(hour.completeness()).isEqualTo(expected.get(h).completeness());
    }
  }

  @ParameterizedTest
  @MethodSource("others")
  void hoursAChangeDoesNotTouchStayAsTheyWere(Notebook other) {
    SeasonResult revised = full.revised(other);
    Interval touched = revised.touched().orElseThrow();
    List<TotalRow> hours = revised.totals(Resolution.HUNDREDTH).hourly();
    List<TotalRow> before = full.totals(Resolution.HUNDREDTH).hourly();
    for (int h = 0; h < hours.size(); h++) {
      if (!hours.get(h).interval().overlaps(touched)) {
        long units = hours.get(h).catchUnits().orElse(0) - before.get(h).catchUnits().orElse(0);
        assertThat(Math.abs(units)).as("rounding alone").isLessThanOrEqualTo(1);
        assertThat(hours.get(h).uncertaintyMm()).isEqualTo(before.get(h).uncertaintyMm());
        assertThat(hours.get(h).quality()).isEqualTo(before.get(h).quality());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("others")
  void takingOverHoursMakesNoDifferenceToTheirCatch(Notebook other) {
    SeasonResult revised = full.revised(other);
    Evidence evidence =
        new Evidence(
            season.sheet(),
            season.record(),
            other,
            revised.depths(),
            revised.level(),
            revised.series(),
            revised.findings());
    List<TotalRow> anew = Hours.of(evidence).totals(Resolution.HUNDREDTH).hourly();
    List<TotalRow> hours = revised.totals(Resolution.HUNDREDTH).hourly();
    for (int h = 0; h < hours.size(); h++) {
      assertThat(hours.get(h).catchUnits()).isEqualTo(anew.get(h).catchUnits());
      assertThat(hours.get(h).reasons()).isEqualTo(anew.get(h).reasons());
      assertThat(hours.get(h).adjustedUnits()).isEqualTo(anew.get(h).adjustedUnits());
      assertThat(hours.get(h).completeness()).isEqualTo(anew.get(h).completeness());
    }
  }

  @Test
  void aNotebookThatSaysTheSameChangesNothing() {
    SeasonResult revised = full.revised(season.notebook());
    assertThat(revised.provisional()).isFalse();
    assertThat(revised.totals(Resolution.TENTH)).isEqualTo(full.totals(Resolution.TENTH));
  }

  @Test
  void aProvisionalResultDependsOnTheNotebookAndNotOnTheWayThere() {
    List<Notebook> others = others().toList();
    SeasonResult there = full.revised(others.get(0)).revised(others.get(9));
    assertThat(there.totals(Resolution.TENTH))
        .isEqualTo(full.revised(others.get(9)).totals(Resolution.TENTH));
    SeasonResult back = there.revised(season.notebook());
    assertThat(back.provisional()).isFalse();
    assertThat(back.totals(Resolution.TENTH)).isEqualTo(full.totals(Resolution.TENTH));
  }

  @Test
  void computingAnewGivesWhatOpeningThatNotebookWouldHave() throws InputException {
    Season changed = season.with(others().toList().get(3));
    SeasonResult anew = full.anew(changed, Progress.NONE);
    SeasonResult opened = SeasonResult.of(changed);
    assertThat(anew.provisional()).isFalse();
    assertThat(anew.totals(Resolution.HUNDREDTH)).isEqualTo(opened.totals(Resolution.HUNDREDTH));
    assertThat(anew.estimate().learnt()).isEqualTo(opened.estimate().learnt());
    assertThat(anew.notes()).isEqualTo(opened.notes());
  }
}
