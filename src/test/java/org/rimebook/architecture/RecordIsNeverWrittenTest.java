package org.rimebook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Of the packages that see the record, none can write a file. */
class RecordIsNeverWrittenTest {

  private static final String[] READERS =
      Layout.ORDER.stream()
          .takeWhile(name -> !name.equals("export"))
          .filter(name -> !name.equals("notebook"))
          .toArray(String[]::new);

  private static final Accesses WRITING =
      Accesses.to(
          List.of(
              "java\\.nio\\.file\\.Files\\.(write|new(BufferedWriter|OutputStream|ByteChannel)|copy"
                  + "|move|delete|create|set).*",
              "java\\.nio\\.file\\.StandardOpenOption\\.(?!READ).*",
              "java\\.nio\\.channels\\.[A-Za-z]*Channel\\.(write|truncate|transferFrom)\\(.*",
              "java\\.util\\.zip\\.[A-Za-z]*OutputStream\\.<init>\\(.*",
              "java\\.io\\.(FileOutputStream|FileWriter|RandomAccessFile)\\.<init>\\(.*",
              "java\\.io\\.Print(Writer|Stream)\\.<init>\\(java\\.(lang\\.String|io\\.File)[,)].*"));

  @Test
  void noPackageThatSeesTheRecordCanWriteAFile() {
    rule(Layout.MAIN).check(Layout.MAIN.classes());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Files.writeString(",
        "Files.newOutputStream(",
        "Files.deleteIfExists(",
        "Files.move(",
        "StandardOpenOption.APPEND",
        "FileChannel.write("
      })
  void aStageThatWritesIsFound(String call) {
    assertThatThrownBy(() -> rule(Layout.WRONG).check(Layout.WRONG.classes()))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining(call)
        .hasMessageNotContaining("Files.newInputStream(")
        .hasMessageNotContaining("wrong.notebook.");
  }

  private static ArchRule rule(Layout layout) {
    return classes()
        .should(
            new Condition(
                "not write files",
                type -> layout.isIn(type, READERS) ? WRITING.of(type) : Stream.empty()))
        .because("the record is evidence");
  }
}
