package org.rimebook.desk.start;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;

/** Says that something can be dropped, in a frame of dashes. */
final class DropHint extends JPanel {

  DropHint(String words, String more) {
    super(new MigLayout("insets 24, wrap 1, align center center, gapy 4", "[center, fill, grow]"));
    setOpaque(false);
    add(Words.text(words, () -> Look.bold(1), Look::ink), "wmin 0");
    add(Words.text(more, () -> Look.text(1), Look::muted), "wmin 0");
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    double half = Look.px(1);
    g.setColor(Look.paper());
    RoundRectangle2D frame =
        new RoundRectangle2D.Double(
            half, half, getWidth() - 2 * half, getHeight() - 2 * half, Look.px(12), Look.px(12));
    g.fill(frame);
    g.setColor(Look.muted());
    float[] dashes = {Look.px(5), Look.px(4)};
    g.setStroke(
        new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
    g.draw(frame);
    g.dispose();
  }
}
