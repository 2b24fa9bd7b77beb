package org.rimebook.station;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** Why a file can't be read or written, in words for a person. */
public final class FileFault {

  private FileFault() {}

  /**
   * The words, after the name of the file at fault unless it is the one that was named before.
   *
   * @param fault why
   * @param named the file or folder that was named before
   */
  public static String words(IOException fault, Path named) {
    if (fault instanceof FileSystemException told && told.getFile() != null) {
      Path file = Path.of(told.getFile());
      boolean same = file.toAbsolutePath().normalize().equals(named.toAbsolutePath().normalize());
      return same ? reason(fault) : file.getFileName() + ": " + reason(fault);
    }
    return reason(fault);
  }

  private static String reason(IOException fault) {
    if (fault instanceof NoSuchFileException) {
      return "it isn't there";
    }
    if (fault instanceof AccessDeniedException) {
      return "you may not";
    }
    if (fault instanceof FileAlreadyExistsException || fault instanceof NotDirectoryException) {
      return "a file stands where a folder is needed";
    }
    if (fault instanceof DirectoryNotEmptyException) {
      return "a folder of that name is in the way";
    }
    if (fault instanceof FileSystemLoopException) {
      return "a link leads back to a folder around it";
    }
    String why =
        fault instanceof FileSystemException told && told.getReason() != null
            ? told.getReason()
            : fault.getMessage();
    return why == null || why.isBlank() ? "the disk doesn't say why" : why;
  }
}
