package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

class AccountProperties {

  private static final int ROWS = 60;
  private static Path folder;

  @BeforeContainer
  static void makeFolder() throws IOException {
    folder = Files.createTempDirectory("season");
  }

  @AfterContainer
  static void emptyFolder() throws IOException {
    clear();
    Files.deleteIfExists(folder.resolve("records"));
    Files.delete(folder);
  }

  private static Season season() throws IOException {
    Season season = Season.in(folder);
    clear();
    return season;
  }

  private static void clear() throws IOException {
    try (var files = Files.list(folder.resolve("records"))) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  private static List<String> rows() {
    return List.of(Season.tenMinutes("2024-11-30", 0, ROWS).split("\n"));
  }

  private static String file(List<String> lines) {
    return Season.HEADER + String.join("\n", lines) + "\n";
  }

  @Provide
  Arbitrary<String> garbage() {
    return Arbitraries.strings()
        .withChars("\"\"\r\n\0,;#0123456789-:. aé\ufffd")
        .ofMaxLength(40)
        .injectDuplicates(0.1);
  }

  @Property(tries = 300)
  void everyLineIsUsedOrSetAside(
      @ForAll @Size(max = 8) List<@net.jqwik.api.From("garbage") String> garbage,
      @ForAll Random random)
      throws Exception {
    List<String> lines = new ArrayList<>(rows());
    garbage.forEach(line -> lines.add(random.nextInt(lines.size()), line));
    String text = Season.HEADER + String.join("\n", lines);
    checkAccount(season().file("a.csv", text).read(), text);
  }

  @Property(tries = 200)
  void noByteKeepsTheGoodRowsOfOtherFilesFromBeingRead(@ForAll byte[] bytes) throws Exception {
    SeasonRecord record = season().bytes("b.csv", bytes).file("a.csv", file(rows())).read();
    assertThat(record.size()).isGreaterThanOrEqualTo(ROWS);
    FileAccount account = record.provenance().files().get(1);
    assertThat(account.used() + setAside(account)).isEqualTo(account.lines());
  }

  @Property(tries = 200)
  void bytesInTheMiddleOfAFileAreAccountedFor(@ForAll byte[] bytes) throws Exception {
    String noise = new String(bytes, StandardCharsets.ISO_8859_1);
    String text =
        file(rows().subList(0, 30))
            + noise
            + "\n"
            + String.join("\n", rows().subList(30, ROWS))
            + "\n";
    SeasonRecord record = season().file("a.csv", text, StandardCharsets.ISO_8859_1).read();
    checkAccount(record, text);
    assertThat(record.size()).isEqualTo(ROWS);
  }

  private static void checkAccount(SeasonRecord record, String text) {
    FileAccount account = record.provenance().files().get(0);
    assertThat(account.lines()).isEqualTo(lines(text));
    assertThat(account.used() + setAside(account)).isEqualTo(account.lines());
    long next = 0;
    for (SetAside run : account.setAside()) {
      assertThat(run.firstLine()).isGreaterThan(next);
      assertThat(run.lastLine()).isBetween(run.firstLine(), account.lines());
      next = run.lastLine();
    }
  }

  private static long setAside(FileAccount account) {
    return account.setAside().stream().mapToLong(SetAside::lines).sum();
  }

  private static long lines(String text) {
    long ends = Pattern.compile("\r\n|\r|\n").matcher(text).results().count();
    boolean open = !text.isEmpty() && !text.endsWith("\n") && !text.endsWith("\r");
    return ends + (open ? 1 : 0);
  }

  @Property(tries = 60)
  void shufflingLinesChangesNothing(@ForAll Random random) throws Exception {
    List<String> shuffled = new ArrayList<>(rows());
    Collections.shuffle(shuffled, random);
    SeasonRecord plain = season().file("a.csv", file(rows())).read();
    SeasonRecord record = season().file("a.csv", file(shuffled)).read();
    assertThat(Season.rows(record)).isEqualTo(Season.rows(plain));
    assertThat(record.sampling()).isEqualTo(plain.sampling());
  }

  @Property(tries = 60)
  void splittingAFileAtAnyLineChangesNothing(
      @ForAll @IntRange(min = 1, max = ROWS - 1) int at, @ForAll boolean swap, @ForAll boolean head)
      throws Exception {
    SeasonRecord plain = season().file("a.csv", file(rows())).read();
    String second = String.join("\n", rows().subList(at, ROWS)) + "\n";
    SeasonRecord record =
        season()
            .file(swap ? "b.csv" : "a.csv", file(rows().subList(0, at)))
            .file(swap ? "a.csv" : "b.csv", (head ? Season.HEADER : "") + second)
            .read();
    assertThat(Season.rows(record)).isEqualTo(Season.rows(plain));
    assertThat(record.sampling()).isEqualTo(plain.sampling());
  }

  @Property(tries = 1000)
  void quickNumbersAreTheNearestDoubles(
      @ForAll double value, @ForAll @IntRange(max = 6) int places) {
    String text = String.format(java.util.Locale.ROOT, "%." + places + "f", value % 1e8);
    NumberReader numbers = NumberReader.withDecimal('.');
    double read = numbers.value(text.toCharArray(), 0, text.length());
    assertThat(read).isEqualTo(Double.parseDouble(text));
  }
}
