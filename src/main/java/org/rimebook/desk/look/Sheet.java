package org.rimebook.desk.look;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** A panel as wide as the place it is shown in, so that its text wraps; it scrolls in height. */
public class Sheet extends JPanel implements Scrollable {

  /**
   * @param layout lays it out
   */
  public Sheet(LayoutManager layout) {
    super(layout);
    setOpaque(false);
  }

  /** A scroll pane without an edge around a sheet. */
  public static JScrollPane scrolling(Sheet sheet) {
    JScrollPane scroll = new JScrollPane(sheet);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    return scroll;
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
    return false;
  }
}
