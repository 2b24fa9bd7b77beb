package org.rimebook.export.leaflet;

import org.rimebook.export.figure.WeightsFigure;
import org.rimebook.export.report.Flow;
import org.rimebook.export.report.Paper;

/** A leaflet on paper. */
public final class LeafletPdf {

  private static final double FIGURE_PT = 170;

  private LeafletPdf() {}

  /** The leaflet as PDF; the same bytes for the same leaflet. */
  public static byte[] of(Leaflet leaflet) {
    String title = leaflet.title() + ": " + leaflet.station();
    return Paper.pdf(title, title, leaflet.toString(), flow -> write(flow, leaflet));
  }

  private static void write(Flow flow, Leaflet leaflet) {
    flow.title(leaflet.title());
    flow.paragraph(leaflet.station());
    for (Leaflet.Part part : leaflet.parts()) {
      if (part instanceof Leaflet.Heading heading) {
        flow.heading2(heading.words());
      } else if (part instanceof Leaflet.Words words) {
        flow.paragraph(words.words());
      } else if (part instanceof Leaflet.Fine fine) {
        flow.small(fine.words());
      } else if (part instanceof Leaflet.Step step) {
        flow.step(step.words(), step.done());
      } else if (part instanceof Leaflet.Caution caution) {
        flow.small("Caution: " + caution.words());
      } else if (part instanceof Leaflet.Grid grid) {
        flow.table(grid.table());
      } else if (part instanceof Leaflet.Weights weights) {
        flow.figure(
            WeightsFigure.of(weights.fit(), weights.sheet(), flow.width(), FIGURE_PT),
            "What each check weight misses the fitted curve by, and the sheet beside it.",
            "Weights and the wire's sheet against the fitted curve; dotted, its standard uncertainty.");
      } else if (part instanceof Leaflet.Blanks blanks) {
        flow.blanks(blanks.labels());
      }
    }
  }
}
