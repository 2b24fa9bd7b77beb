package org.rimebook.desk.model.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.rimebook.desk.model.Numbers;
import org.rimebook.upkeep.LoadReading;

/** Rows of check weights as they are typed: what was put on, and the frequency read under it. */
public final class Loads {

  /** Columns of a row. */
  public enum Column {
    LOAD,
    FREQUENCY
  }

  private static final int FIRST_ROWS = 6;
  private static final int MOST_ROWS = 500;

  private final List<String[]> rows = new ArrayList<>();
  private final Runnable changed;

  /**
   * @param changed run after each change
   */
  Loads(Runnable changed) {
    this.changed = changed;
    for (int row = 0; row < FIRST_ROWS; row++) {
      rows.add(blank());
    }
  }

  private static String[] blank() {
    return new String[] {"", ""};
  }

  /** How many rows there are, blank ones included. */
  public int size() {
    return rows.size();
  }

  /** A cell as typed. */
  public String text(int row, Column column) {
    return rows.get(row)[column.ordinal()];
  }

  /** Types into a cell. */
  public void type(int row, Column column, String text) {
    if (!text(row, column).equals(text)) {
      rows.get(row)[column.ordinal()] = text;
      changed.run();
    }
  }

  /** Adds a blank row at the end. */
  public void add() {
    rows.add(blank());
    changed.run();
  }

  /** Takes rows out; a blank one stays when none would. */
  public void remove(int... places) {
    int[] last = places.clone();
    Arrays.sort(last);
    for (int i = last.length - 1; i >= 0; i--) {
      rows.remove(last[i]);
    }
    if (rows.isEmpty()) {
      rows.add(blank());
    }
    changed.run();
  }

  /**
   * Puts lines of a spreadsheet or a text into the rows from one on: two columns apart by tabs,
   * semicolons or spaces, or by commas where the numbers have points. A first line of names is left
   * out.
   *
   * @return how many rows were filled
   */
  public int paste(String lines, int from) {
    List<String[]> cells =
        lines
            .lines()
            .filter(line -> !line.isBlank())
            .map(Loads::cells)
            .limit(MOST_ROWS)
            .collect(Collectors.toCollection(ArrayList::new));
    if (cells.size() > 1 && Arrays.stream(cells.get(0)).noneMatch(Loads::isNumber)) {
      cells.remove(0);
    }
    for (int i = 0; i < cells.size(); i++) {
      while (rows.size() <= from + i) {
        rows.add(blank());
      }
      rows.set(from + i, cells.get(i));
    }
    if (!cells.isEmpty()) {
      changed.run();
    }
    return cells.size();
  }

  private static String[] cells(String line) {
    String text = line.strip();
    String apart = "\\s+";
    if (line.contains("\t")) {
      apart = "\\s*\t\\s*";
    } else if (text.contains(";")) {
      apart = "\\s*;\\s*";
    } else if (text.contains(".") && text.contains(",")) {
      apart = "\\s*,\\s*";
    }
    String[] parts = text.split(apart);
    return new String[] {parts[0], parts.length > 1 ? parts[1] : ""};
  }

  private static boolean isNumber(String text) {
    return Numbers.read(text).isPresent();
  }

  private boolean isBlank(int row) {
    return text(row, Column.LOAD).isBlank() && text(row, Column.FREQUENCY).isBlank();
  }

  /** What is wrong with a row, and what to do; empty when nothing is, or when it is blank. */
  public Optional<String> fault(int row) {
    if (isBlank(row)) {
      return Optional.empty();
    }
    OptionalDouble load = Numbers.read(text(row, Column.LOAD));
    OptionalDouble hz = Numbers.read(text(row, Column.FREQUENCY));
    if (load.isEmpty()) {
      return Optional.of("write what was put on as a number, 0 for the empty bucket");
    }
    if (load.getAsDouble() < 0) {
      return Optional.of("what was put on isn't negative");
    }
    if (hz.isEmpty()) {
      return Optional.of("write the frequency as a number, like 1526.4");
    }
    return hz.getAsDouble() > 0 ? Optional.empty() : Optional.of("a frequency is more than 0 Hz");
  }

  /** The first fault of all rows, with the row's number from 1; empty when there is none. */
  public Optional<String> firstFault() {
    for (int row = 0; row < rows.size(); row++) {
      Optional<String> fault = fault(row);
      if (fault.isPresent()) {
        return Optional.of("Row " + (row + 1) + ": " + fault.get());
      }
    }
    return Optional.empty();
  }

  /**
   * The readings of rows without a fault.
   *
   * @param waterDegC temperature of the water where loads are litres of it; empty where they are kg
   */
  List<LoadReading> readings(OptionalDouble waterDegC) {
    List<LoadReading> readings = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      if (!isBlank(row)) {
        double load = Numbers.read(text(row, Column.LOAD)).orElseThrow();
        double hz = Numbers.read(text(row, Column.FREQUENCY)).orElseThrow();
        readings.add(
            waterDegC.isPresent()
                ? LoadReading.ofWater(load, waterDegC.getAsDouble(), hz)
                : new LoadReading(load, hz));
      }
    }
    return readings;
  }
}
