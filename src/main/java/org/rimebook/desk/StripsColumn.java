package org.rimebook.desk;

import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.rimebook.desk.look.Look;

/**
 * The lane over the strips over the overview. The strips come first: where there is little height
 * the lane keeps to one row, then the overview goes.
 */
final class StripsColumn extends JPanel {

  /** Height that strips and their time axis want, at 100 %. */
  private static final int WANTED = 160;

  /** Height at which one strip can be read over its time axis, at 100 %. */
  private static final int LEAST = 96;

  private final JComponent lane;
  private final JComponent stack;
  private final JComponent overview;

  StripsColumn(JComponent lane, JComponent stack, JComponent overview) {
    super(null);
    this.lane = lane;
    this.stack = stack;
    this.overview = overview;
    add(lane);
    add(stack);
    add(overview);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(Look.px(360), lane.getMinimumSize().height + Look.px(LEAST));
  }

  @Override
  public void doLayout() {
    int above = lane.getPreferredSize().height;
    int below = overview.getPreferredSize().height;
    int free = getHeight() - Look.px(WANTED);
    if (above + below > free) {
      above = lane.getMinimumSize().height;
    }
    if (above + below > free) {
      below = 0;
    }
    int middle = Math.max(0, getHeight() - above - below);
    lane.setBounds(0, 0, getWidth(), above);
    stack.setBounds(0, above, getWidth(), middle);
    overview.setBounds(0, above + middle, getWidth(), below);
  }
}
