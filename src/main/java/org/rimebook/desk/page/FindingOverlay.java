package org.rimebook.desk.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.strip.Overlay;
import org.rimebook.desk.strip.StackGeometry;
import org.rimebook.findings.Finding;

/** The span of the finding under review over the strips: shaded between dashed edges. */
final class FindingOverlay implements Overlay {

  private final Workspace workspace;

  FindingOverlay(Workspace workspace) {
    this.workspace = workspace;
  }

  @Override
  public void paint(Graphics2D graphics, StackGeometry geometry) {
    workspace.findings().get().reviewed().ifPresent(finding -> paint(graphics, geometry, finding));
  }

  private static void paint(Graphics2D graphics, StackGeometry geometry, Finding finding) {
    Rectangle plots = geometry.plots();
    int from = geometry.xAt(finding.span().fromMs());
    int to = geometry.xAt(finding.span().toMs());
    Rectangle area =
        new Rectangle(from, plots.y, Math.max(1, to - from), plots.height).intersection(plots);
    if (area.isEmpty()) {
      return;
    }
    Graphics2D own = Ink.of(graphics);
    Color ink = Look.faint(Look.ink(), 0.7);
    own.setColor(Look.faint(Look.ink(), 0.05));
    own.fill(area);
    for (int x : new int[] {from, to}) {
      if (x >= plots.x && x <= plots.x + plots.width) {
        Ink.outline(own, new Line2D.Double(x, plots.y, x, plots.y + plots.height), ink, true);
      }
    }
    own.dispose();
  }
}
