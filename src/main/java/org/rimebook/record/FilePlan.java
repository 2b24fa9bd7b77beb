package org.rimebook.record;

/**
 * All that is settled about a file before its rows are read.
 *
 * @param file the file
 * @param dialect its layout
 * @param headerFrom name of the file whose header it is read under, empty for its own
 * @param form how its stamps are written
 */
record FilePlan(RecordFile file, Dialect dialect, String headerFrom, StampForm form) {}
