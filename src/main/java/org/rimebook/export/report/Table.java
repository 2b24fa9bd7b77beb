package org.rimebook.export.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table: what its columns are called and what stands in its rows.
 *
 * @param columns the columns
 * @param rows the rows, each with a cell for every column
 * @param dense whether it is set small, with columns of figures alike
 */
public record Table(List<Column> columns, List<Row> rows, boolean dense) {

  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      if (row.cells().size() != columns.size()) {
        throw new IllegalArgumentException("a row has a cell for every column: " + row);
      }
    }
  }

  /**
   * A column.
   *
   * @param head what stands at its head, with the unit
   * @param figures whether it holds figures, which stand at the right
   */
  public record Column(String head, boolean figures) {}

  /**
   * A row.
   *
   * @param cells its cells; empty where there is nothing
   * @param sum whether it sums up the rows above
   */
  public record Row(List<String> cells, boolean sum) {

    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** Collects a table. */
  public static final class Builder {
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private boolean dense;

    /** Adds a column of words. */
    public Builder words(String head) {
      columns.add(new Column(head, false));
      return this;
    }

    /** Adds a column of figures. */
    public Builder figures(String head) {
      columns.add(new Column(head, true));
      return this;
    }

    /** Sets it small. */
    public Builder small() {
      dense = true;
      return this;
    }

    /** Adds a row. */
    public Builder row(String... cells) {
      rows.add(new Row(List.of(cells), false));
      return this;
    }

    /** Adds a row that sums up those above. */
    public Builder sum(String... cells) {
      rows.add(new Row(List.of(cells), true));
      return this;
    }

    /** The table. */
    public Table done() {
      return new Table(columns, rows, dense);
    }
  }
}
