package org.rimebook.export.report;

/** One section of the report. */
public interface ReportSection {

  /** Its heading, which is also its bookmark. */
  String heading();

  /** What must be left of a page for the heading to stand on it [pt]. */
  default double roomPt() {
    return 110;
  }

  /**
   * Writes what stands under the heading.
   *
   * @param flow where to write
   */
  void write(Flow flow);
}
