package org.rimebook.record;

import java.nio.file.Path;

/**
 * A file of the record.
 *
 * @param name path relative to the season folder, with {@code /}
 * @param path where it is
 */
record RecordFile(String name, Path path) {}
