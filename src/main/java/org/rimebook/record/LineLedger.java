package org.rimebook.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Keeps account of the lines of one file that aren't taken. */
final class LineLedger {

  private static final int LONGEST_QUOTE = 40;

  private final String file;
  private final List<SetAside> entries = new ArrayList<>();

  LineLedger(String file) {
    this.file = file;
  }

  /** Sets lines aside; lines that follow on one another for one reason make one entry. */
  void setAside(long firstLine, long lastLine, LineReason reason, String detail) {
    if (!entries.isEmpty() && continues(last(), firstLine, reason, detail)) {
      long first = entries.remove(entries.size() - 1).firstLine();
      entries.add(new SetAside(file, first, lastLine, reason, detail));
    } else {
      entries.add(new SetAside(file, firstLine, lastLine, reason, detail));
    }
  }

  private static boolean continues(
      SetAside before, long firstLine, LineReason reason, String detail) {
    return before.lastLine() + 1 == firstLine
        && before.reason() == reason
        && before.detail().equals(detail);
  }

  private SetAside last() {
    return entries.get(entries.size() - 1);
  }

  /** Gives the last line set aside another reason. */
  void lastIs(long firstLine, LineReason reason) {
    SetAside last = entries.remove(entries.size() - 1);
    if (last.firstLine() < firstLine) {
      entries.add(
          new SetAside(file, last.firstLine(), firstLine - 1, last.reason(), last.detail()));
    }
    entries.add(new SetAside(file, firstLine, last.lastLine(), reason, last.detail()));
  }

  /** The entries in the order of the file. */
  List<SetAside> inOrder() {
    List<SetAside> sorted = new ArrayList<>(entries);
    sorted.sort(Comparator.comparingLong(SetAside::firstLine));
    LineLedger merged = new LineLedger(file);
    for (SetAside entry : sorted) {
      merged.setAside(entry.firstLine(), entry.lastLine(), entry.reason(), entry.detail());
    }
    return merged.entries;
  }

  /** Lines set aside for a reason so far. */
  long lines(LineReason reason) {
    return entries.stream().filter(e -> e.reason() == reason).mapToLong(SetAside::lines).sum();
  }

  /** Text of a file for a message: short, without characters that can't be shown. */
  static String quote(String text) {
    String shown = text.replaceAll("\\p{Cntrl}", "\u00b7").strip();
    boolean whole = shown.length() <= LONGEST_QUOTE;
    return "\"" + (whole ? shown : shown.substring(0, LONGEST_QUOTE) + "\u2026") + "\"";
  }
}
