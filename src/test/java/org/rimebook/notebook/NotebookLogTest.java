package org.rimebook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rimebook.notebook.Lines.entry;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.Interval;

class NotebookLogTest {

  private static final ZoneOffset STATION = ZoneOffset.ofHours(-7);
  private static final Interval SPAN = Entries.span("2025-01-15T17:00Z", "2025-01-15T19:30Z");

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("notebook.jsonl");
  }

  private static Entry remark(String id) {
    Entry.Header header = new Entry.Header(id, "2025-02-01T09:00:00-07:00", "ab", "caf\u00e9");
    return new Entry.Remark(header, Optional.empty());
  }

  @Test
  void aNotebookThatIsAbsentHasNoEntries() throws IOException {
    assertThat(NotebookLog.read(file)).isEqualTo(Notebook.EMPTY);
  }

  @Test
  void entriesAreReadBackInTheOrderAppended() throws IOException {
    NotebookLog.append(file, List.of(remark("a")), STATION);
    NotebookLog.append(file, List.of(remark("b")), STATION);
    assertThat(NotebookLog.read(file))
        .isEqualTo(new Notebook(List.of(remark("a"), remark("b")), List.of()));
    assertThat(Files.readString(file)).endsWith("}\n").doesNotContain("\r").hasLineCount(2);
  }

  @Test
  void whatIsAlreadyThereKeepsItsBytes() throws IOException {
    byte[] before = (entry("p", "remark") + "\r\n\r\nscribble\n").getBytes(StandardCharsets.UTF_8);
    Files.write(file, before);
    NotebookLog.append(file, List.of(remark("a")), STATION);
    assertThat(Files.readAllBytes(file)).startsWith(before);
    assertThat(NotebookLog.read(file).history())
        .extracting(e -> e.header().id())
        .containsExactly("p", "a");
  }

  @Test
  void anEntryNeverJoinsALineThatWasCutOff() throws IOException {
    String cut = entry("p", "remark").substring(0, 40);
    Files.writeString(file, cut);
    NotebookLog.append(file, List.of(remark("a")), STATION);
    assertThat(Files.readString(file)).startsWith(cut + "\n{\"id\": \"a\"");
    Notebook notebook = NotebookLog.read(file);
    assertThat(notebook.history()).containsExactly(remark("a"));
    assertThat(notebook.notes()).hasSize(1);
  }

  @Test
  void aLineCutInsideACharacterDoesNotStopTheNotebook() throws IOException {
    byte[] whole = EntryWriter.line(remark("p"), STATION).getBytes(StandardCharsets.UTF_8);
    Files.write(file, Arrays.copyOf(whole, whole.length - 3));
    NotebookLog.append(file, List.of(remark("a")), STATION);
    assertThat(NotebookLog.read(file).history()).containsExactly(remark("a"));
  }

  @Test
  void aFolderThatIsNotThereIsAnErrorAndMakesNothing() {
    Path lost = folder.resolve("gone").resolve("notebook.jsonl");
    assertThatThrownBy(() -> NotebookLog.append(lost, List.of(remark("a")), STATION))
        .isInstanceOf(NoSuchFileException.class);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aLineHasTheMembersOfTheContractInItsOrderAndStationTime() {
    Entry.Header header = new Entry.Header("v1", "2025-01-16T08:00:00-07:00", "ab", "cold");
    Entry visit =
        new Entry.ServiceVisit(
            header,
            SPAN,
            List.of(VisitAction.RECHARGED, VisitAction.INSPECTED),
            OptionalDouble.of(6),
            OptionalDouble.empty());
    assertThat(EntryWriter.line(visit, STATION))
        .isEqualTo(
            "{\"id\": \"v1\", \"at\": \"2025-01-16T08:00:00-07:00\", \"by\": \"ab\", "
                + "\"kind\": \"service-visit\", \"from\": \"2025-01-15T10:00:00-07:00\", "
                + "\"to\": \"2025-01-15T12:30:00-07:00\", \"note\": \"cold\", "
                + "\"actions\": [\"recharged\", \"inspected\"], \"antifreeze_l\": 6}");
  }

  @Test
  void wiresAreWrittenInOneOrderAndLeftOutWhenAllAreMeant() {
    Entry.Header header = new Entry.Header("b1", "2025-01-16T08:00:00-07:00", "ab", "");
    assertThat(
            EntryWriter.line(
                new Entry.BadInterval(
                    header, SPAN, Set.of("west", "north", "east"), BadReason.WIRE_FAULT),
                STATION))
        .endsWith("\"wires\": [\"east\", \"north\", \"west\"], \"reason\": \"wire-fault\"}")
        .doesNotContain("note");
    assertThat(
            EntryWriter.line(
                new Entry.BadInterval(header, SPAN, Set.of(), BadReason.POWER), STATION))
        .doesNotContain("wires");
  }
}
