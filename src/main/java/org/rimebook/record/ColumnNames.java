package org.rimebook.record;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds columns by name: as written, else without regard to case and blanks around. */
final class ColumnNames {

  private static final int NAMES_SHOWN = 3;

  private ColumnNames() {}

  /** Where a name stands in a header; more than one when the header repeats it. */
  static List<Integer> find(List<String> header, String wanted) {
    List<Integer> exact =
        IntStream.range(0, header.size())
            .filter(i -> header.get(i).equals(wanted))
            .boxed()
            .toList();
    if (!exact.isEmpty()) {
      return exact;
    }
    String loose = loose(wanted);
    return IntStream.range(0, header.size())
        .filter(i -> loose(header.get(i)).equals(loose))
        .boxed()
        .toList();
  }

  /** The names of a header nearest to one it lacks, in words. */
  static String nearest(List<String> header, String wanted) {
    return header.stream()
        .filter(name -> !name.isEmpty())
        .distinct()
        .sorted(Comparator.comparingInt(name -> distance(loose(name), loose(wanted))))
        .limit(NAMES_SHOWN)
        .map(name -> "\"" + name + "\"")
        .collect(Collectors.joining(", "));
  }

  private static String loose(String name) {
    String bare = name.startsWith("#") ? name.substring(1) : name;
    return bare.strip().toLowerCase(Locale.ROOT);
  }

  /** Letters to insert, leave out or change to make one name the other (Levenshtein 1966). */
  private static int distance(String from, String to) {
    int[] row = IntStream.rangeClosed(0, to.length()).toArray();
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
