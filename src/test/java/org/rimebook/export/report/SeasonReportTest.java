package org.rimebook.export.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Terminal;

/** The report of the hard winter, read back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SeasonReportTest {

  private static final Path SEASON = Path.of("sample-sets", "hard-winter");

  private Path out;
  private PdfRead report;
  private PdfRead withHours;

  @BeforeAll
  void make(@TempDir Path folder) throws IOException {
    out = folder;
    assertThat(Terminal.run("totals", SEASON, "--out", out).code()).isZero();
    Path hours = out.resolve("hours.pdf");
    assertThat(Terminal.run("report", SEASON, "--out", hours, "--hours").code()).isZero();
    report = new PdfRead(Files.readAllBytes(out.resolve("report.pdf")));
    withHours = new PdfRead(Files.readAllBytes(hours));
  }

  @AfterAll
  void close() throws IOException {
    report.close();
    withHours.close();
  }

  private JsonNode season() throws IOException {
    return new ObjectMapper().readTree(Files.readString(out.resolve("season.json")));
  }

  @Test
  void itsTotalIsThatOfTheTables() throws IOException {
    JsonNode totals = season().get("totals");
    String total = totals.get("catch_mm").decimalValue().toPlainString();
    String first = report.text(1, 1);
    assertThat(first).contains(total + " mm ± ");
    assertThat(first).contains(totals.get("adjusted_mm").decimalValue().toPlainString() + " mm");
    assertThat(first).containsPattern("missing +110 +6 ");
  }

  @Test
  void itsMonthsAddUpToTheSeason() throws IOException {
    Matcher months =
        Pattern.compile("(?m)^\\d{4}-\\d\\d +(\\d+\\.\\d) ").matcher(report.text(1, 1));
    BigDecimal sum = BigDecimal.ZERO;
    int count = 0;
    while (months.find()) {
      sum = sum.add(new BigDecimal(months.group(1)));
      count++;
    }
    assertThat(count).isEqualTo(7);
    assertThat(sum).isEqualByComparingTo(season().get("totals").get("catch_mm").decimalValue());
  }

  @Test
  void theFirstPageHoldsTheWholeAnswer() throws IOException {
    assertThat(report.text(1, 1)).contains("Reviewed by").contains("Accumulated catch (mm)");
    assertThat(report.text(2, 2)).startsWith("Station and calibrations");
  }

  @Test
  void itNamesTheEvidenceItWasMadeFrom() throws IOException {
    String text = report.text();
    JsonNode season = season();
    assertThat(text)
        .contains(season.get("record").get("sha256").asText())
        .contains(season.get("station_sha256").asText())
        .contains(season.get("notebook").get("sha256").asText())
        .contains(season.get("made_by").asText());
  }

  @Test
  void itTellsOfEachEntryAndOfEachFindingToDecide() throws IOException {
    String text = report.text().replaceAll("\\s+", " ");
    assertThat(text).contains("hw-01", "hw-02", "withdraws hw-02", "hw-10");
    for (JsonNode finding : season().get("findings")) {
      String firstWords = finding.get("reason").asText().split("[.:]")[0];
      assertThat(text).contains(firstWords.substring(0, Math.min(24, firstWords.length())));
    }
  }

  @Test
  void whatTheChecksFindInTheRecordAloneIsAnsweredByItsEntry() throws IOException {
    String text = report.text();
    String accepted = text.substring(text.indexOf("Accepted"), text.indexOf("Dismissed"));
    assertThat(accepted).contains("wire silent (hill)").contains("hw-05 bad").contains("hw-06");
  }

  @Test
  void everyHeadingIsTaggedAndHasItsBookmark() {
    List<String> first = report.bookmarks().stream().filter(t -> !t.startsWith(" ")).toList();
    List<String> second = report.bookmarks().stream().filter(t -> t.startsWith(" ")).toList();
    assertThat(report.elements(StandardStructureTypes.H1)).hasSameSizeAs(first);
    assertThat(report.elements(StandardStructureTypes.H2)).hasSameSizeAs(second);
    assertThat(first)
        .startsWith("Precipitation at Quern Hollow")
        .contains("Service visits", "Findings", "Method", "Notebook and sign-off");
    assertThat(second).contains("  Calibrations", "  Bad intervals");
  }

  @Test
  void itKnowsItsTitleAndLanguage() {
    assertThat(report.document.getDocumentInformation().getTitle())
        .isEqualTo("Precipitation report: Quern Hollow, 2024-10-15 to 2025-04-15");
    assertThat(report.document.getDocumentCatalog().getLanguage()).isEqualTo("en");
    assertThat(report.document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
    assertThat(report.document.getDocumentInformation().getCreationDate()).isNull();
  }

  @Test
  void everyRowHasACellForEachHeadOfItsTable() {
    List<PDStructureElement> tables = report.elements(StandardStructureTypes.TABLE);
    assertThat(tables).hasSizeGreaterThan(10);
    for (PDStructureElement table : tables) {
      List<List<String>> rows = new ArrayList<>();
      PdfRead.walk(
          table,
          element -> {
            if (element.getStructureType().equals(StandardStructureTypes.TR)) {
              rows.add(new ArrayList<>());
            } else {
              rows.get(rows.size() - 1).add(element.getStructureType());
            }
          });
      assertThat(rows.get(0)).containsOnly(StandardStructureTypes.TH);
      assertThat(rows.subList(1, rows.size()))
          .isNotEmpty()
          .allSatisfy(row -> assertThat(row).containsOnly("TD").hasSameSizeAs(rows.get(0)));
    }
  }

  @Test
  void everyMarkOnAPageBelongsToAnElement() throws IOException {
    var parents = report.document.getDocumentCatalog().getStructureTreeRoot().getParentTree();
    for (PDPage page : report.document.getPages()) {
      String content = new String(page.getContents().readAllBytes(), "ISO-8859-1");
      Matcher marks = Pattern.compile("/MCID (\\d+)").matcher(content);
      long count = marks.results().count();
      PDParentTreeValue own = (PDParentTreeValue) parents.getValue(page.getStructParents());
      assertThat(((org.apache.pdfbox.cos.COSArray) own.getCOSObject()).size())
          .isEqualTo((int) count);
    }
  }

  @Test
  void everyFontIsEmbeddedInPart() throws IOException {
    int fonts = 0;
    for (PDResources resources : report.resources()) {
      for (COSName name : resources.getFontNames()) {
        assertThat(resources.getFont(name).isEmbedded()).isTrue();
        assertThat(resources.getFont(name).getName()).matches("[A-Z]{6}\\+Roboto-.*");
        fonts++;
      }
    }
    assertThat(fonts).isPositive();
  }

  @Test
  void figuresAreLinesWithWordsForThem() throws IOException {
    List<PDXObject> drawn = report.drawn();
    assertThat(drawn).hasSize(4).noneMatch(object -> object instanceof PDImageXObject);
    for (PDXObject object : drawn) {
      assertThat(PdfRead.count((PDFormXObject) object, "l")).isGreaterThan(100);
    }
    assertThat(report.elements(StandardStructureTypes.Figure))
        .hasSize(4)
        .allSatisfy(figure -> assertThat(figure.getAlternateDescription()).isNotBlank());
  }

  @Test
  void everyPageNamesTheSeasonAndItsPlace() throws IOException {
    int pages = report.document.getNumberOfPages();
    for (int page = 1; page <= pages; page++) {
      assertThat(report.text(page, page))
          .containsPattern(
              "Quern Hollow, 2024-10-15 to 2025-04-15 .*page " + page + " of " + pages);
    }
  }

  @Test
  void theAppendixHasEveryHourOfTheTable() throws IOException {
    List<String> shown = new ArrayList<>();
    Matcher days =
        Pattern.compile("(?m)^(\\d{4}-\\d\\d-\\d\\d)((?: \\S+){25})$").matcher(appendix());
    while (days.find()) {
      String[] cells = days.group(2).strip().split(" ");
      for (int hour = 0; hour < 24; hour++) {
        shown.add(cells[hour].replaceAll("[uesp<]+$", "").replace("·", "0.0").replace("–", ""));
      }
    }
    List<String> hourly =
        Files.readAllLines(out.resolve("hourly.csv")).stream()
            .skip(1)
            .map(line -> line.split(",", -1)[2])
            .toList();
    assertThat(shown).isEqualTo(hourly);
  }

  private String appendix() throws IOException {
    String text = withHours.text();
    return text.substring(text.lastIndexOf("Hour by hour"));
  }

  @Test
  void theHeadOfALongTableStandsOnEachOfItsPages() throws IOException {
    Matcher heads = Pattern.compile("(?m)^Day 08 09 10 ").matcher(appendix());
    int first = report.document.getNumberOfPages();
    assertThat(heads.results().count()).isEqualTo(withHours.document.getNumberOfPages() - first);
  }
}
