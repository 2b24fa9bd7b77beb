package org.rimebook.desk.scatter;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import org.rimebook.desk.look.Look;

/** Controls over plots: as high as there is room for, but scrolling before plots can't be read. */
final class Scrolled extends JPanel implements Scrollable {

  /** Height a plot needs with the line of words under it, at 100 %. */
  private static final int PLOT = 176;

  private final JComponent controls;

  Scrolled(JComponent controls, JComponent plots) {
    super(new BorderLayout());
    this.controls = controls;
    add(controls, BorderLayout.NORTH);
    add(plots);
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(0, controls.getPreferredSize().height + Look.px(PLOT));
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return Look.px(24);
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return visible.height - Look.px(24);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent().getHeight() >= getPreferredSize().height;
  }
}
