package org.rimebook.desk.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.util.List;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.strip.Overlay;
import org.rimebook.desk.strip.StackGeometry;
import org.rimebook.station.Interval;

/** The span of the finding under review over the strips: shaded between dashed edges. */
final class FindingOverlay implements Overlay {

  private final Workspace workspace;

  FindingOverlay(Workspace workspace) {
    this.workspace = workspace;
  }

  @Override
  public void paint(Graphics2D graphics, StackGeometry geometry) {
    workspace
        .findings()
        .get()
        .reviewed()
        .ifPresent(finding -> paint(graphics, geometry, finding.span()));
  }

  /** What is selected is shaded already. */
  private void paint(Graphics2D graphics, StackGeometry geometry, Interval span) {
    boolean selected = workspace.selection().get().intervals().equals(List.of(span));
    Rectangle plots = geometry.plots();
    int from = geometry.xAt(span.fromMs());
    int to = geometry.xAt(span.toMs());
    Rectangle area =
        new Rectangle(from, plots.y, Math.max(1, to - from), plots.height).intersection(plots);
    if (area.isEmpty()) {
      return;
    }
    Graphics2D own = Ink.of(graphics);
    Color ink = Look.faint(Look.ink(), 0.7);
    if (!selected) {
      own.setColor(Look.faint(Look.ink(), 0.06));
      own.fill(area);
    }
    for (int x : new int[] {from, to}) {
      if (x >= plots.x && x <= plots.x + plots.width) {
        Ink.outline(own, new Line2D.Double(x, plots.y, x, plots.y + plots.height), ink, true);
      }
    }
    own.dispose();
  }
}
