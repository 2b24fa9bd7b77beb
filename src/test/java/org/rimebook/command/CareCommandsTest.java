package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;

/** Commands for those who look after the gauge, on the sample of a hard winter. */
class CareCommandsTest {

  private static final String SEASON = Path.of("sample-sets", "hard-winter").toString();

  @TempDir private Path folder;

  private Terminal seen = new Terminal(0, "", "");

  private int run(Object... words) {
    seen = Terminal.run(words);
    return seen.code();
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replace('\u00A0', ' ');
    }
  }

  @Test
  void chargeComparesLitresWithEveryWire() {
    assertThat(run("charge", SEASON, "--antifreeze", "propylene-glycol")).isZero();
    assertThat(seen.out())
        .contains("2025-01-22 10:30", "2.60", "creek", "hill", "road", "suits", "Caution:");
  }

  @Test
  void nextVisitTellsDatesLitresAndCautions() {
    int code = run("next-visit", SEASON, "--antifreeze", "propylene-glycol", "--coldest", "-25");
    assertThat(code).isZero();
    assertThat(seen.out())
        .contains("Latest visit: 2025-05-", "L of pure propylene glycol", "Lange", "dispose");
  }

  @Test
  void theVisitSheetHasLastLevelsAndBlanksAndIsTheSameEachTime() throws IOException {
    byte[][] written = new byte[2][];
    for (int i = 0; i < 2; i++) {
      Path pdf = folder.resolve("visit" + i + ".pdf");
      run(
          "next-visit",
          SEASON,
          "--antifreeze",
          "methanol",
          "--coldest",
          "-20",
          "--pdf",
          pdf.toString());
      written[i] = Files.readAllBytes(pdf);
    }
    assertThat(written[1]).isEqualTo(written[0]);
    assertThat(text(folder.resolve("visit0.pdf")))
        .contains("Visit sheet", "Last levels", "creek", "Arrived", "Supply V", "vapour burns");
  }

  @Test
  void theVisitSheetOfAHardWinterIsOnePage() throws IOException {
    Path pdf = folder.resolve("visit.pdf");
    run(
        "next-visit",
        SEASON,
        "--antifreeze",
        "methanol",
        "--coldest",
        "-20",
        "--pdf",
        pdf.toString());
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
    }
  }

  @Test
  void rememberedTablesHaveToBeAskedFor() {
    String[] asked = {"next-visit", SEASON, "--antifreeze", "ethylene-glycol", "--coldest", "-20"};
    assertThat(run((Object[]) asked)).isEqualTo(ExitCode.WRONG_USE);
    assertThat(seen.err()).contains("only remembered", "--from-memory");
  }

  @Test
  void aMassIsCheckedAndWeightsAreFitted() {
    assertThat(run("calibrate", SEASON, "--wire", "creek", "--load", "0=1500", "--load", "2=1700"))
        .isZero();
    assertThat(seen.out()).contains("2.000 kg stand for 100.00 mm");
    assertThat(run(fit(SEASON))).isZero();
    assertThat(seen.out()).contains("A cm/Hz", "a_cm_per_hz", "degrees of freedom");
  }

  @Test
  void aWireThatIsNotThereIsWrongUse() {
    assertThat(run("calibrate", SEASON, "--wire", "nowhere", "--load", "1=1500"))
        .isEqualTo(ExitCode.WRONG_USE);
    assertThat(seen.err()).contains("no wire \"nowhere\"", "creek");
  }

  @Test
  void installationIsCheckedByReadingsAtRest() {
    int code =
        run(
            "installation",
            SEASON,
            "--from",
            "2024-10-15T09:30",
            "--to",
            "2024-10-15T10:30",
            "--expected-mm",
            "140");
    assertThat(code).isZero();
    assertThat(seen.out()).contains("Depth of wire creek", "Noise of wire road", "Tap the rim");
  }

  private Path copied() throws IOException {
    return Copies.of(Path.of(SEASON), folder.resolve("season"));
  }

  private static Object[] fit(Object season, Object... more) {
    Stream<Object> weights =
        Stream.of("0=1050", "2=1510", "4=1860", "6=2155", "8=2415")
            .flatMap(load -> Stream.of("--load", load));
    return Stream.of(Stream.of("calibrate", season, "--wire", "creek"), weights, Stream.of(more))
        .flatMap(words -> words)
        .toArray();
  }

  private static String notebook(Path season) throws IOException {
    List<String> lines = Files.readAllLines(season.resolve("notebook.jsonl"));
    return lines.get(lines.size() - 1);
  }

  @Test
  void temperatureIsShownStatedAndSwitchedOffUnderInitials() throws IOException {
    Path season = copied();
    String before = Files.readString(season.resolve("station.json"));
    assertThat(run("temperature", season)).isZero();
    assertThat(seen.out()).contains("creek", "Learnt", "spells of three hours");
    assertThat(run("temperature", season, "--state", "-3e-5")).isEqualTo(ExitCode.WRONG_USE);
    assertThat(seen.err()).contains("--by INITIALS");
    assertThat(run("temperature", season, "--wire", "creek", "--state", "-3e-5", "--by", "ab"))
        .isZero();
    assertThat(seen.out()).contains("-30.0", "taken off each depth first");
    assertThat(notebook(season)).contains("\"ab\"", "remark", "creek", "-30.0");
    Path report = folder.resolve("report.pdf");
    assertThat(run("report", season, "--out", report)).isZero();
    assertThat(text(report)).contains("Temperature, wire creek", "30.0 ppm of the depth a °C");
    assertThat(run("temperature", season, "--state", "off", "--by", "ab")).isZero();
    assertThat(seen.out()).contains("switched off", "none is learnt");
    assertThat(run("temperature", season, "--state", "learnt", "--by", "ab")).isZero();
    assertThat(Files.readString(season.resolve("station.json"))).isEqualTo(before);
  }

  @Test
  void aCoefficientThatIsNoNumberOrTooLargeIsRefused() throws IOException {
    Path season = copied();
    assertThat(run("temperature", season, "--state", "much", "--by", "ab"))
        .isEqualTo(ExitCode.WRONG_USE);
    assertThat(seen.err()).contains("off or learnt");
    assertThat(run("temperature", season, "--state", "0.5", "--by", "ab")).isNotZero();
    assertThat(seen.err()).contains("station.json", "0.5");
  }

  @Test
  void aFittedCalibrationIsStoredForItsTime() throws IOException {
    Path season = copied();
    assertThat(run(fit(season, "--by", "ab"))).isEqualTo(ExitCode.WRONG_USE);
    assertThat(seen.err()).contains("--valid-from");
    assertThat(run(fit(season, "--by", "ab", "--valid-from", "2025-06-01T12:00"))).isZero();
    assertThat(Files.readString(season.resolve("station.json"))).contains("2025-06-01T12:00:00-0");
    assertThat(notebook(season)).contains("Wire creek has a new calibration");
  }

  @Test
  void aWireCheckedInTheFieldAndAnInstallationAreRemembered() throws IOException {
    Path season = copied();
    run(
        "calibrate",
        season,
        "--wire",
        "creek",
        "--load",
        "0=1500",
        "--load",
        "2=1700",
        "--by",
        "ab");
    assertThat(notebook(season)).contains("Wire creek checked", "2.000 kg");
    int code =
        run(
            "installation",
            season,
            "--from",
            "2024-10-15T09:30",
            "--to",
            "2024-10-15T10:30",
            "--expected-mm",
            "140",
            "--taps",
            "2024-10-15T10:30",
            "2024-10-15T10:40",
            "--by",
            "ab");
    assertThat(code).isZero();
    assertThat(seen.out()).contains("Taps on wire creek", "look again", "doesn't answer");
    assertThat(notebook(season)).contains("Installation check", "2024-10-15T09:30", "remark");
  }
}
