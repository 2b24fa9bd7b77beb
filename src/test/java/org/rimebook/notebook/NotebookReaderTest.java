package org.rimebook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.rimebook.notebook.Lines.FILE;
import static org.rimebook.notebook.Lines.SPAN;
import static org.rimebook.notebook.Lines.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.Interval;
import org.rimebook.station.Problem;

class NotebookReaderTest {

  private static final Interval TWO_HOURS =
      Entries.span("2025-01-15T10:00:00-07:00", "2025-01-15T12:00:00-07:00");

  private static Notebook read(String... lines) {
    return NotebookReader.read(String.join("\n", lines) + "\n", FILE);
  }

  private static Entry only(String line) {
    Notebook notebook = read(line);
    assertThat(notebook.notes()).isEmpty();
    assertThat(notebook.history()).hasSize(1);
    return notebook.history().get(0);
  }

  private static Entry.Header header(String id) {
    return new Entry.Header(id, "2025-02-01T09:00:00-07:00", "ab", "as seen");
  }

  @Test
  void everyKindIsReadWithItsMembers() {
    assertThat(
            only(
                entry(
                    "v",
                    "service-visit",
                    SPAN,
                    "\"actions\": [\"emptied\", \"recharged\"], \"antifreeze_l\": 6, \"oil_l\": 0.4")))
        .isEqualTo(
            new Entry.ServiceVisit(
                header("v"),
                TWO_HOURS,
                List.of(VisitAction.EMPTIED, VisitAction.RECHARGED),
                OptionalDouble.of(6),
                OptionalDouble.of(0.4)));
    assertThat(
            only(entry("b", "bad-interval", SPAN, "\"wires\": [\"north\"], \"reason\": \"noise\"")))
        .isEqualTo(new Entry.BadInterval(header("b"), TWO_HOURS, Set.of("north"), BadReason.NOISE));
    assertThat(only(entry("l", "late-catch", SPAN)))
        .isEqualTo(new Entry.LateCatch(header("l"), TWO_HOURS));
    assertThat(only(entry("d", "dry-spell", SPAN)))
        .isEqualTo(new Entry.DrySpell(header("d"), TWO_HOURS));
    assertThat(only(entry("e", "estimate", SPAN, "\"total_mm\": 12.5, \"source\": \"next gauge\"")))
        .isEqualTo(new Entry.Estimate(header("e"), TWO_HOURS, 12.5, "next gauge"));
    assertThat(only(entry("r", "remark", SPAN)))
        .isEqualTo(new Entry.Remark(header("r"), Optional.of(TWO_HOURS)));
    assertThat(only(entry("r", "remark")))
        .isEqualTo(new Entry.Remark(header("r"), Optional.empty()));
    assertThat(only(entry("x", "dismissal", "\"finding\": \"step-3\"")))
        .isEqualTo(new Entry.Dismissal(header("x"), "step-3"));
    assertThat(
            only(
                entry(
                    "s",
                    "sign-off",
                    "\"record_sha256\": \"0a\", \"station_sha256\": \"0b\", \"entries\": [\"v\"]")))
        .isEqualTo(new Entry.SignOff(header("s"), "0a", "0b", List.of("v")));
  }

  @Test
  void wiresLeftOutMeanAllOfThem() {
    Entry entry = only(entry("b", "bad-interval", SPAN, "\"reason\": \"power\""));
    assertThat(((Entry.BadInterval) entry).wires()).isEmpty();
  }

  @Test
  void anEntryAboutNoSpanMayCarryOneAndHasNone() {
    assertThat(only(entry("x", "dismissal", SPAN, "\"finding\": \"step-3\"")).span()).isEmpty();
  }

  @Test
  void theSpanIsTheSameInstantWhateverTheOffsetItIsWrittenIn() {
    Entry entry =
        only(
            entry(
                "d",
                "dry-spell",
                "\"from\": \"2025-01-15T17:00Z\", \"to\": \"2025-01-15T20:00+01:00\""));
    assertThat(entry.span()).contains(TWO_HOURS);
  }

  /** Each row: kind, members, start of the note; the entry has no effect. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "late-catch | \"to\": \"2025-01-15T12:00Z\" | from is absent or null",
        "late-catch | \"from\": \"2025-01-15T12:00Z\" | to is absent or null",
        "late-catch | \"from\": null, \"to\": \"2025-01-15T12:00Z\" | from is absent or null",
        "late-catch | \"from\": \"2025-01-15T10:00\", \"to\": \"2025-01-15T12:00Z\" | from has no offset",
        "late-catch | \"from\": \"15.1.2025\", \"to\": \"2025-01-15T12:00Z\" | from isn't a time",
        "late-catch | \"from\": \"2025-02-29T10:00Z\", \"to\": \"2025-03-15T12:00Z\" | from isn't a time",
        "late-catch | \"from\": 5, \"to\": \"2025-01-15T12:00Z\" | from must be a text, not 5.0",
        "dry-spell | \"from\": \"2025-01-15T12:00Z\", \"to\": \"2025-01-15T10:00Z\" | to isn't later than from",
        "dry-spell | \"from\": \"2025-01-15T12:00Z\", \"to\": \"2025-01-15T12:00Z\" | to isn't later than from",
        "dry-spell | \"from\": \"2025-01-15T12:00Z\", \"to\": \"+999999999-01-01T00:00Z\" | to lies in the year",
        "estimate | SPAN, \"source\": \"a\" | total_mm is absent or null",
        "estimate | SPAN, \"total_mm\": -0.1, \"source\": \"a\" | total_mm is -0.1",
        "estimate | SPAN, \"total_mm\": \"9\", \"source\": \"a\" | total_mm must be a number",
        "estimate | SPAN, \"total_mm\": 1e999, \"source\": \"a\" | total_mm must be a number",
        "bad-interval | SPAN, \"reason\": \"noise\", \"wires\": \"north\" | wires must be a list",
        "bad-interval | SPAN, \"reason\": \"noise\", \"wires\": [] | wires names no wire",
        "dismissal | \"finding\": \"\" | finding is empty",
        "withdrawal | \"finding\": \"f\" | entry is absent or null",
        "sign-off | \"station_sha256\": \"b\" | record_sha256 is absent or null"
      })
  void anEntryInDoubtIsNotedAndHasNoEffect(String kind, String members, String what) {
    Notebook notebook = read("", entry("x", kind, members.replace("SPAN", SPAN)));
    assertThat(notebook.history()).isEmpty();
    assertThat(notebook.notes())
        .allSatisfy(note -> assertThat(note.line()).isEqualTo(2))
        .anySatisfy(
            note -> {
              assertThat(note.what()).startsWith(what);
              assertThat(note.column()).isPositive();
              assertThat(note.remedy()).isNotBlank();
            })
        .last()
        .extracting(Problem::what)
        .isEqualTo("the entry has no effect until it is mended");
  }

  /** Each row: kind, members, start of the note; the entry counts all the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "service-visit | \"actions\": [\"emptied\", \"painted\"] | actions names \"painted\"",
        "service-visit | \"actions\": \"emptied\" | actions must be a list",
        "service-visit | \"antifreeze_l\": -2 | antifreeze_l is -2.0",
        "service-visit | \"oil_l\": \"some\" | oil_l must be a number",
        "bad-interval | \"reason\": \"gnomes\" | reason is \"gnomes\"",
        "bad-interval | \"wires\": [\"north\"] | reason is absent or null",
        "estimate | \"total_mm\": 3 | source is absent or null",
        "late-catch | \"colour\": \"red\" | colour isn't a member this version knows",
        "late-catch | \"total_mm\": 3 | total_mm isn't a member this version knows"
      })
  void whatIsNotUnderstoodIsNotedAndTheRestOfTheEntryCounts(
      String kind, String members, String what) {
    Notebook notebook = read(entry("x", kind, SPAN, members));
    assertThat(notebook.history()).hasSize(1);
    assertThat(notebook.history().get(0).span()).contains(TWO_HOURS);
    assertThat(notebook.notes()).hasSize(1);
    assertThat(notebook.notes().get(0).toString()).startsWith(FILE + ", line 1, column ");
    assertThat(notebook.notes().get(0).what()).startsWith(what);
  }

  @Test
  void knownActionsAndTheReasonOtherStandInForUnknownWords() {
    Notebook notebook =
        read(
            entry("v", "service-visit", SPAN, "\"actions\": [\"painted\", \"emptied\"]"),
            entry("b", "bad-interval", SPAN, "\"reason\": \"gnomes\""));
    assertThat(((Entry.ServiceVisit) notebook.history().get(0)).actions())
        .containsExactly(VisitAction.EMPTIED);
    assertThat(((Entry.BadInterval) notebook.history().get(1)).reason()).isEqualTo(BadReason.OTHER);
  }

  @Test
  void aRemarkWithABrokenSpanIsKeptWithoutOne() {
    Notebook notebook = read(entry("r", "remark", "\"from\": \"2025-01-15T10:00Z\""));
    assertThat(notebook.history()).containsExactly(new Entry.Remark(header("r"), Optional.empty()));
    assertThat(notebook.notes()).extracting(Problem::what).containsExactly("to is absent or null");
  }

  @Test
  void anUnknownKindIsKeptAndNotedOnce() {
    Notebook notebook = read(entry("u", "frost-flowers", SPAN, "\"petals\": 5"));
    assertThat(notebook.history()).containsExactly(new Entry.Unknown(header("u"), "frost-flowers"));
    assertThat(notebook.notes())
        .extracting(Problem::what)
        .containsExactly("kind is \"frost-flowers\", which this version doesn't know");
  }

  @Test
  void anEntryThatDoesNotSayWhoWroteItWhenStillCounts() {
    Notebook notebook =
        read(
            "{\"id\": \"r\", \"kind\": \"remark\"}",
            "{\"id\": \"s\", \"at\": \"May\", \"by\": \"q\", \"kind\": \"remark\"}");
    assertThat(notebook.history()).extracting(e -> e.header().at()).containsExactly("", "May");
    assertThat(notebook.notes())
        .extracting(Problem::what)
        .containsExactly(
            "at is absent or null", "by is absent or null", "at isn't a time: \"May\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"kind\": \"remark\"}",
        "{\"id\": \" \", \"kind\": \"remark\"}",
        "{\"id\": 7, \"kind\": \"remark\"}",
        "{\"id\": \"a\"}",
        "{\"id\": \"a\", \"kind\": [\"remark\"]}",
        "{\"id\": \"a\", \"id\": \"b\", \"kind\": \"remark\"}",
        "{\"id\": \"a\", \"kind\": \"remark\"} {}",
        "{\"id\": \"a\" \"kind\": \"remark\"}",
        "{}",
        "[]",
        "7",
        "null",
        "# remember the oil",
        "\u0000\u0000\u0000"
      })
  void aLineThatIsNoEntryNeverTakesTheOthersWithIt(String line) {
    Notebook notebook = read(entry("p", "remark"), line, entry("q", "remark"));
    assertThat(notebook.history()).extracting(e -> e.header().id()).containsExactly("p", "q");
    assertThat(notebook.notes()).isNotEmpty();
    assertThat(notebook.notes())
        .allSatisfy(
            note -> {
              assertThat(note.file()).isEqualTo(FILE);
              assertThat(note.line()).isEqualTo(2);
            });
  }

  @Test
  void aLastLineCutOffIsSaidToBe() {
    String whole = entry("p", "remark");
    Notebook notebook =
        NotebookReader.read(whole + "\n" + whole.substring(0, whole.length() - 4), FILE);
    assertThat(notebook.history()).hasSize(1);
    assertThat(notebook.notes())
        .extracting(Problem::what, Problem::line)
        .containsExactly(tuple("the last line is cut off and isn't a whole entry", 2L));
  }

  @Test
  void aWholeLastLineWithoutALineEndCounts() {
    assertThat(NotebookReader.read(entry("p", "remark"), FILE))
        .isEqualTo(read(entry("p", "remark")));
  }

  @Test
  void blankLinesAByteOrderMarkAndOtherLineEndsMakeNoDifference() {
    String text =
        "\uFEFF\r\n" + entry("p", "remark") + "\r\n  \t\r\n" + entry("q", "remark") + "\r\n";
    assertThat(NotebookReader.read(text, FILE))
        .isEqualTo(read(entry("p", "remark"), entry("q", "remark")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "\uFEFF"})
  void anEmptyFileIsANotebookNobodyHasWrittenIn(String text) {
    assertThat(NotebookReader.read(text, FILE)).isEqualTo(Notebook.EMPTY);
  }

  @Test
  void ofOneIdTheFirstCountsAndLaterOnesAreNoted() {
    Notebook notebook =
        read(entry("a", "dry-spell", SPAN), entry("b", "remark"), entry("a", "late-catch", SPAN));
    assertThat(notebook.history()).extracting(Entry::kind).containsExactly("dry-spell", "remark");
    assertThat(notebook.notes())
        .extracting(Problem::toString)
        .containsExactly(
            FILE
                + ", line 3, column 8: id \"a\" is used on line 1 already. Give this entry an id of"
                + " its own; until then only the first one counts");
  }
}
