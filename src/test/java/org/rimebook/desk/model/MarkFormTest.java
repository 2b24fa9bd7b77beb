package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.desk.model.MarkForm.Field;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.Interval;

class MarkFormTest {

  private static final Optional<Interval> SPAN = Optional.of(Bucket.span(1, 2));

  private static MarkForm form(MarkKind kind) {
    return new MarkForm(kind, false);
  }

  @ParameterizedTest
  @CsvSource({"'2,6', 2.6", "2.6, 2.6", "0, 0", "'.5', 0.5", "' 3 ', 3", "'4,', 4"})
  void litresAreReadWithCommaOrPoint(String typed, double litres) {
    MarkForm form = form(MarkKind.SERVICE_VISIT);
    form.type(Field.ANTIFREEZE, typed);
    assertThat(form.fault(Field.ANTIFREEZE)).isEmpty();
    assertThat(form.entry("x", SPAN, Set.of()).orElseThrow())
        .isInstanceOfSatisfying(
            Entry.ServiceVisit.class,
            visit -> assertThat(visit.antifreezeL()).isEqualTo(OptionalDouble.of(litres)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "2,6 L", "1e3", "NaN", "1.2.3", ","})
  void whatIsNotAnAmountIsSaidInWordsAndNotWritten(String typed) {
    MarkForm form = form(MarkKind.SERVICE_VISIT);
    form.type(Field.OIL, typed);
    assertThat(form.fault(Field.OIL)).contains("litres, 0 or more");
    assertThat(form.complete()).isFalse();
  }

  @Test
  void anEstimateNeedsATotalAndItsSource() {
    MarkForm form = form(MarkKind.ESTIMATE);
    assertThat(form.complete()).isFalse();
    assertThat(form.entry("x", SPAN, Set.of())).isEmpty();
    form.type(Field.TOTAL, "6,4");
    assertThat(form.entry("x", SPAN, Set.of())).isPresent();
    assertThat(form.fault(Field.SOURCE)).contains("say where it comes from");
    form.type(Field.SOURCE, "snow board");
    assertThat(form.complete()).isTrue();
  }

  @Test
  void initialsAreAskedForOnlyWhenNobodyIsKnown() {
    MarkForm form = new MarkForm(MarkKind.REMARK, true);
    assertThat(form.fault(Field.INITIALS)).isPresent();
    form.type(Field.INITIALS, "ab");
    assertThat(form.complete()).isTrue();
    assertThat(form(MarkKind.REMARK).fields()).containsExactly(Field.NOTE);
  }

  @Test
  void onlyARemarkDoesWithoutASpan() {
    assertThat(form(MarkKind.REMARK).entry("x", Optional.empty(), Set.of())).isPresent();
    assertThat(form(MarkKind.DRY_SPELL).entry("x", Optional.empty(), Set.of())).isEmpty();
  }

  @Test
  void antifreezeAndFullBucketsBringACautionEach() {
    MarkForm form = form(MarkKind.SERVICE_VISIT);
    assertThat(form.cautions()).isEmpty();
    form.type(Field.ANTIFREEZE, "2");
    form.choose(VisitAction.EMPTIED, true);
    assertThat(form.cautions())
        .satisfiesExactly(
            line -> assertThat(line).contains("toxic").contains("gloves").contains("disposal"),
            line -> assertThat(line).contains("heavy").contains("two people"));
    form.type(Field.ANTIFREEZE, "");
    form.choose(VisitAction.EMPTIED, false);
    assertThat(form.cautions()).isEmpty();
  }

  @Test
  void aFormFilledInWithAnEntryGivesTheEntryBack() {
    Entry.Header header = new Entry.Header("x", "", "", "cold");
    Interval span = SPAN.orElseThrow();
    List<Entry> entries =
        List.of(
            new Entry.ServiceVisit(
                header,
                span,
                List.of(VisitAction.EMPTIED, VisitAction.INSPECTED),
                OptionalDouble.of(2.6),
                OptionalDouble.empty()),
            new Entry.BadInterval(header, span, Set.of("west"), BadReason.NOISE),
            new Entry.Estimate(header, span, 6.4, "snow board"),
            new Entry.LateCatch(header, span),
            new Entry.DrySpell(header, span),
            new Entry.Remark(header, SPAN));
    assertThat(entries)
        .allSatisfy(
            entry ->
                assertThat(MarkForm.of(entry, false).orElseThrow().entry("x", SPAN, Set.of("west")))
                    .contains(entry));
  }

  @Test
  void anEntryThatIsNotMarkedByHandHasNoForm() {
    assertThat(MarkForm.of(new Entry.Dismissal(Bucket.header("x"), "f"), false)).isEmpty();
  }
}
