package org.rimebook.export;

import java.util.List;
import java.util.stream.Stream;

/** Columns of the hourly and daily tables, in their order. */
enum TableColumn {
  START("start", "datetime", "start of the interval, station time"),
  END("end", "datetime", "end of the interval, outside it, station time"),
  CATCH_MM("catch_mm", "number", "what the bucket caught [mm]; empty when missing"),
  UNCERTAINTY_MM("uncertainty_mm", "number", "standard uncertainty of the catch, k = 1 [mm]"),
  QUALITY("quality", "string", "quality in the words of OGC WaterML 2.0"),
  COMPLETENESS_PCT(
      "completeness_pct", "number", "share of the interval covered by usable readings [%]"),
  WIRES("wires", "string", "names of the wires used, joined by +"),
  ACCUMULATED_SINCE(
      "accumulated_since",
      "datetime",
      "set when the catch holds all that fell since this time; the rows back to it are missing"),
  ADJUSTED_MM(
      "adjusted_mm",
      "number",
      "catch adjusted for wind undercatch [mm]; never instead of catch_mm"),
  PHASE("phase", "string", "rain, mixed or snow, by air temperature"),
  REASONS("reasons", "string", "codes of how the total came about, joined by ;");

  private final String columnName;
  private final String type;
  private final String meaning;

  TableColumn(String columnName, String type, String meaning) {
    this.columnName = columnName;
    this.type = type;
    this.meaning = meaning;
  }

  static List<String> names() {
    return Stream.of(values()).map(TableColumn::columnName).toList();
  }

  String columnName() {
    return columnName;
  }

  String type() {
    return type;
  }

  String meaning() {
    return meaning;
  }
}
