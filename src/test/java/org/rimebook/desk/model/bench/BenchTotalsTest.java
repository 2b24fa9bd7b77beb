package org.rimebook.desk.model.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.leaflet.LeafletText;
import org.rimebook.fixture.AtOnce;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.upkeep.Antifreeze;

/** The tasks of the bench that need a season's totals. */
class BenchTotalsTest {

  @TempDir private Path temporary;

  private BenchModel bench(Tasks tasks, Path season) {
    Workspace workspace = new Workspace();
    SeasonKeeper keeper =
        new SeasonKeeper(workspace, tasks, Clock.fixed(Bucket.at(9000), ZoneOffset.UTC));
    BenchModel bench = new BenchModel(workspace, keeper, tasks, keeper::open);
    keeper.open(season);
    return bench;
  }

  private Path season() throws IOException {
    return Copies.of(Path.of("sample-sets", "quiet-valley"), temporary.resolve("season"));
  }

  private static BenchForms at(BenchModel bench, BenchTask task) {
    bench.open(task);
    return bench.forms().orElseThrow();
  }

  private static BenchPaper made(BenchModel bench, BenchTask task) {
    bench.make();
    return bench.paper(task).get();
  }

  private static String text(BenchPaper paper) {
    assertThat(paper.current()).as(paper.words()).isTrue();
    return String.join("\n", LeafletText.lines(paper.made().orElseThrow().leaflet()));
  }

  private static String out(Object... words) {
    Terminal seen = Terminal.run(words);
    assertThat(seen.code()).as(seen.err()).isZero();
    return seen.out().lines().collect(Collectors.joining("\n"));
  }

  @Test
  void withoutTotalsTheyAreWaitedFor() throws IOException {
    BenchModel bench = bench(AtOnce.without(Lane.SETTLE), season());
    at(bench, BenchTask.CHARGE).charge().poured().antifreeze(Optional.of(Antifreeze.METHANOL));
    assertThat(made(bench, BenchTask.CHARGE).words()).contains("totals are settled");
  }

  @Test
  void chargeAndNextVisitShareWhatIsPouredAndSayWhatTheCommandLineSays() throws IOException {
    Path season = season();
    BenchModel bench = bench(new AtOnce(), season);
    ChargeForm charge = at(bench, BenchTask.CHARGE).charge();
    assertThat(made(bench, BenchTask.CHARGE).words()).isEqualTo("Choose the antifreeze");
    charge.poured().antifreeze(Optional.of(Antifreeze.ETHYLENE_GLYCOL));
    assertThat(made(bench, BenchTask.CHARGE).words()).contains("only remembered", "tick the box");
    charge.poured().antifreeze(Optional.of(Antifreeze.METHANOL));
    charge.poured().type(BenchField.STRENGTH, "60");
    assertThat(text(made(bench, BenchTask.CHARGE)))
        .isEqualTo(out("charge", season, "--antifreeze", "methanol", "--strength", "60"));
    NextVisitForm next = at(bench, BenchTask.NEXT_VISIT).nextVisit();
    assertThat(made(bench, BenchTask.NEXT_VISIT).words())
        .contains("Coldest air expected (°C): Enter it");
    next.type(BenchField.COLDEST, "-20");
    next.type(BenchField.FIRST_ANTIFREEZE, "2");
    next.paper(NextVisitForm.Paper.OUTLOOK);
    assertThat(text(made(bench, BenchTask.NEXT_VISIT)))
        .isEqualTo(
            out(
                "next-visit",
                season,
                "--antifreeze",
                "methanol",
                "--strength",
                "60",
                "--coldest",
                "-20",
                "--antifreeze-l",
                "2"));
    next.paper(NextVisitForm.Paper.SHEET);
    assertThat(text(made(bench, BenchTask.NEXT_VISIT))).startsWith("Visit sheet");
  }

  @Test
  void aTemperatureCoefficientIsLookedAtStatedAndPutBack() throws IOException {
    Path season = season();
    String before = Files.readString(season.resolve("station.json"));
    BenchModel bench = bench(new AtOnce(), season);
    TemperatureForm form = at(bench, BenchTask.TEMPERATURE).temperature();
    BenchPaper learnt = made(bench, BenchTask.TEMPERATURE);
    assertThat(text(learnt)).isEqualTo(out("temperature", season));
    assertThat(learnt.made().orElseThrow().words()).isEqualTo("The station sheet has it so.");
    form.source(TemperatureForm.Source.STATED);
    form.type(BenchField.INITIALS, "kh");
    assertThat(made(bench, BenchTask.TEMPERATURE).words()).contains("Enter it, for example -38");
    form.type(BenchField.PER_DEG_C, "4000");
    assertThat(made(bench, BenchTask.TEMPERATURE).words()).contains("within ±1000");
    form.type(BenchField.PER_DEG_C, "-38");
    form.wire("north");
    Fact fact = made(bench, BenchTask.TEMPERATURE).fact().orElseThrow();
    assertThat(fact.question()).contains("of north stated as -38.0 millionths");
    bench.store(fact);
    assertThat(Files.readString(season.resolve("station.json")))
        .contains("\"temperature_per_degc\": -3.8E-5");
    assertThat(Files.readString(season.resolve("notebook.jsonl")))
        .contains("Temperature coefficient of north stated");
    assertThat(text(made(bench, BenchTask.TEMPERATURE))).contains("-38.0");
    form.wire(TemperatureForm.ALL);
    form.source(TemperatureForm.Source.OFF);
    bench.store(made(bench, BenchTask.TEMPERATURE).fact().orElseThrow());
    assertThat(text(made(bench, BenchTask.TEMPERATURE))).contains("none is learnt");
    form.source(TemperatureForm.Source.LEARNT);
    bench.store(made(bench, BenchTask.TEMPERATURE).fact().orElseThrow());
    assertThat(Files.readString(season.resolve("station.json"))).isEqualTo(before);
  }
}
