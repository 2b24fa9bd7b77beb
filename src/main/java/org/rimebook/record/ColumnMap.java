package org.rimebook.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the wanted columns stand in the rows of a file.
 *
 * @param time index of the stamp, -1 when the header lacks it
 * @param indexes index of each wanted value, -1 when the header lacks it
 */
record ColumnMap(int time, List<Integer> indexes) {

  ColumnMap {
    indexes = List.copyOf(indexes);
  }

  static ColumnMap of(List<String> header, Wanted wanted) {
    List<Integer> indexes = new ArrayList<>();
    for (String column : wanted.values()) {
      indexes.add(first(header, column));
    }
    return new ColumnMap(first(header, wanted.time()), indexes);
  }

  private static int first(List<String> header, String name) {
    List<Integer> found = ColumnNames.find(header, name);
    return found.isEmpty() ? -1 : found.get(0);
  }

  /** Whether any wanted value stands there. */
  boolean hasValues() {
    return indexes.stream().anyMatch(index -> index >= 0);
  }

  /** For each field of a row the wanted value it holds, -1 for none. */
  int[] valueOfField(int fields) {
    int[] values = new int[fields];
    Arrays.fill(values, -1);
    for (int value = 0; value < indexes.size(); value++) {
      if (indexes.get(value) >= 0 && indexes.get(value) < fields) {
        values[indexes.get(value)] = value;
      }
    }
    return values;
  }
}
