package org.rimebook.export.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/** Whatever stands in a notebook, a report comes of it. */
class HostileTextTest {

  private static SeasonResult season(String note, String by) {
    Bucket bucket = Bucket.every(60, 72).level(Bucket.rain(10, 14, 2));
    for (int i = 0; i < 3; i++) {
      Entry.Header header = new Entry.Header("e" + i, note, by, note);
      bucket.entry(new Entry.Remark(header, Optional.of(Bucket.span(i, i + 1))));
    }
    return bucket
        .entry(
            new Entry.BadInterval(
                new Entry.Header("bad", "", by, note),
                Bucket.span(20, 24),
                Set.of("w1"),
                BadReason.NOISE))
        .entry(
            new Entry.ServiceVisit(
                new Entry.Header("visit", "", by, note),
                Bucket.span(40, 41),
                List.of(VisitAction.EMPTIED),
                OptionalDouble.of(2.5),
                OptionalDouble.empty()))
        .entry(new Entry.Dismissal(new Entry.Header("no", "", by, note), note))
        .result();
  }

  private static PdfRead report(SeasonResult result) throws IOException {
    return new PdfRead(
        SeasonReport.of(result, result.totals(Resolution.TENTH), Progress.NONE).pdf(Progress.NONE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "\u0000\u0007\u001b[31m tab\tline\nreturn\r\n\u0085\u2028end",
        "snow ❄ \uD83D\uDE42\uD83C\uDFD4 and a half \uD83D",
        "שלום עולם مرحبا",
        "積雪 снег Ελλάδα çğışöü",
        "\u202Eoverride\u202C zero\u200Bwidth soft\u00ADhyphen e\u0301",
        "(brackets) \\ /Names << >> %comment endstream endobj"
      })
  void anyWordsMakeAReport(String words) throws IOException {
    try (PdfRead report = report(season(words, words))) {
      assertThat(report.text()).contains("Service visits").contains("bad");
    }
  }

  @Test
  void whatTheTypeLacksIsSeenToBeLacking() throws IOException {
    try (PdfRead report = report(season("snow \uD83C\uDFD4 here", "ab"))) {
      assertThat(report.text().replaceAll("\\s+", " ")).contains("snow \uFFFD here");
    }
  }

  @Test
  void lettersOfOtherAlphabetsAreKept() throws IOException {
    try (PdfRead report = report(season("снег Ελλάδα ışğ", "ab"))) {
      assertThat(report.text().replaceAll("\\s+", " ")).contains("снег Ελλάδα ışğ");
    }
  }

  @Test
  void aWordWiderThanThePageIsBroken() throws IOException {
    try (PdfRead report = report(season("x".repeat(3000), "ab"))) {
      long shown = report.text().chars().filter(c -> c == 'x').count();
      assertThat(shown).isGreaterThan(3 * 3000);
    }
  }

  @Test
  void aNoteLongerThanAPageRunsOn() throws IOException {
    String note = "word ".repeat(3000) + "last.";
    try (PdfRead report = report(season(note, "ab"))) {
      assertThat(report.text()).contains("last.");
      assertThat(report.document.getNumberOfPages()).isGreaterThan(8);
    }
  }

  @Test
  void anEmptyNotebookMakesAReport() throws IOException {
    try (PdfRead report = report(Bucket.every(60, 30).result())) {
      assertThat(report.text())
          .contains("Nobody has written in the notebook.")
          .contains("No entry changes a total.")
          .contains("Not signed off.");
    }
  }

  @Test
  void calledOffItMakesNone() {
    SeasonResult result = season("", "ab");
    Progress off =
        new Progress() {
          @Override
          public void at(String stage, double share) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    assertThatThrownBy(() -> SeasonReport.of(result, result.totals(Resolution.TENTH), off))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void aFurtherSectionStandsBeforeTheMethod() throws IOException {
    SeasonResult result = season("", "ab");
    ReportSection further =
        new ReportSection() {
          @Override
          public String heading() {
            return "Beside another gauge";
          }

          @Override
          public void write(Flow flow) {
            flow.paragraph("Nothing to compare.");
          }
        };
    SeasonReport plain = SeasonReport.of(result, result.totals(Resolution.TENTH), Progress.NONE);
    try (PdfRead report = new PdfRead(plain.with(further).pdf(Progress.NONE))) {
      assertThat(report.bookmarks())
          .containsSubsequence("Adjusted beside measured", "Beside another gauge", "Method");
    }
  }
}
