package org.rimebook.export.report;

/** One section of the report. */
public interface ReportSection {

  /** Its heading, which is also its bookmark. */
  String heading();

  /**
   * Writes what stands under the heading.
   *
   * @param flow where to write
   */
  void write(Flow flow);
}
