package org.rimebook.record;

import java.nio.file.Path;

/**
 * A file of the record.
 *
 * @param name path relative to the season folder, with {@code /}
 * @param path where it is
 */
record RecordFile(String name, Path path) {

  // Written out: what a record does by itself is linked when it is first needed, which takes a part
  // of the start that can be seen.
  @Override
  public boolean equals(Object other) {
    return other instanceof RecordFile file && name.equals(file.name) && path.equals(file.path);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }
}
