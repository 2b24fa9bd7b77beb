package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileFaultTest {

  @TempDir private Path folder;

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    IOException fault =
        catchThrowableOfType(
            IOException.class, () -> Files.readAllBytes(folder.resolve("nothing.csv")));
    assertThat(FileFault.words(fault, folder.resolve("nothing.csv"))).isEqualTo("it isn't there");
    assertThat(FileFault.words(fault, folder)).isEqualTo("nothing.csv: it isn't there");
  }

  @Test
  void aFileInPlaceOfAFolderIsSaidSo() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    IOException fault =
        catchThrowableOfType(IOException.class, () -> Files.createDirectories(file));
    assertThat(FileFault.words(fault, file)).isEqualTo("a file stands where a folder is needed");
  }

  @Test
  void whatTheDiskSaysIsPassedOnWithoutTheNameOfTheFile() {
    assertThat(
            FileFault.words(
                new FileSystemException("a", null, "No space left on device"), Path.of("a")))
        .isEqualTo("No space left on device");
    assertThat(FileFault.words(new IOException("Input/output error"), folder))
        .isEqualTo("Input/output error");
    assertThat(FileFault.words(new IOException((String) null), folder)).contains("doesn't say");
  }
}
