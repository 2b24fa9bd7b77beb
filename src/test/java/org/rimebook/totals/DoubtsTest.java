package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.findings.Findings;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;

class DoubtsTest {

  private static final Bucket RAIN = Bucket.every(10, 72).level(Bucket.rain(30, 36, 1));

  private static Finding finding(double from, double to) {
    Interval span = Bucket.span(from, to);
    return Finding.doubting(
        FindingKind.CAPPING,
        Finding.Subject.bucket(span),
        "because",
        0.5,
        new Entry.LateCatch(new Entry.Header("", "", "", ""), span));
  }

  private static Totals totals(Bucket bucket, Finding... findings) {
    SeasonResult result = bucket.result();
    return Hours.of(
            new Evidence(
                result.season().sheet(),
                result.season().record(),
                result.season().notebook(),
                result.depths(),
                result.level(),
                result.series(),
                new Findings(List.of(findings))))
        .totals(Resolution.HUNDREDTH);
  }

  @Test
  void hoursAFindingDoubtsAreSuspectForItsReason() {
    List<TotalRow> hours = totals(RAIN, finding(31.5, 33)).hourly();
    for (int h = 0; h < hours.size(); h++) {
      boolean doubted = h == 31 || h == 32;
      assertThat(hours.get(h).quality() == Quality.SUSPECT).as("hour " + h).isEqualTo(doubted);
      assertThat(hours.get(h).reasons().contains(Reason.CAPPING)).isEqualTo(doubted);
    }
  }

  @Test
  void itsDayIsSuspectToo() {
    List<TotalRow> days = totals(RAIN, finding(31.5, 33)).daily();
    assertThat(days).extracting(TotalRow::quality).startsWith(Quality.GOOD, Quality.SUSPECT);
    assertThat(days.get(1).reasons()).contains(Reason.CAPPING);
  }

  @Test
  void aDoubtChangesNoTotalAndNoUncertainty() {
    Totals plain = totals(RAIN);
    Totals doubted = totals(RAIN, finding(31.5, 33));
    assertThat(Stream.concat(doubted.hourly().stream(), doubted.daily().stream()))
        .extracting(TotalRow::catchUnits, TotalRow::uncertaintyMm)
        .isEqualTo(
            Stream.concat(plain.hourly().stream(), plain.daily().stream())
                .map(row -> tuple(row.catchUnits(), row.uncertaintyMm()))
                .toList());
  }

  @Test
  void aTotalThatHoldsDoubtedHoursIsSuspect() {
    Bucket gap = Bucket.every(10, 72).level(Bucket.rain(30, 36, 1)).silent(29, 40.5);
    TotalRow held =
        totals(gap, finding(31, 32)).hourly().stream()
            .filter(row -> row.accumulatedSinceMs().isPresent())
            .findFirst()
            .orElseThrow();
    assertThat(held.quality()).isEqualTo(Quality.SUSPECT);
    assertThat(held.reasons()).contains(Reason.CAPPING, Reason.GAP);
  }

  @Test
  void aMissingTotalStaysMissing() {
    Bucket gap = Bucket.every(10, 72).level(Bucket.rain(30, 36, 1)).silent(29, 40.5);
    assertThat(totals(gap, finding(31, 32)).hourly().get(31).quality()).isEqualTo(Quality.MISSING);
  }

  @Test
  void aFindingThatDoubtsNothingLeavesTheTotalsAlone() {
    Finding doubting = finding(31.5, 33);
    Finding harmless =
        new Finding(
            doubting.kind(),
            doubting.span(),
            doubting.wires(),
            doubting.reason(),
            doubting.strength(),
            doubting.proposal(),
            Optional.empty());
    assertThat(totals(RAIN, harmless)).isEqualTo(totals(RAIN));
  }

  @Test
  void everyKindOfFindingHasAReason() {
    assertThat(FindingKind.values())
        .allSatisfy(kind -> assertThat(Reason.of(kind).code()).isEqualTo(kind.code()));
  }

  @Test
  void noTwoReasonsShareACode() {
    assertThat(Reason.values()).extracting(Reason::code).doesNotHaveDuplicates();
  }
}
