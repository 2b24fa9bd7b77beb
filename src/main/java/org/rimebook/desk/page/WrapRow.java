package org.rimebook.desk.page;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import org.rimebook.desk.look.Look;

/** Puts components beside each other and begins another row where the width is used up. */
final class WrapRow extends FlowLayout {

  private static final long serialVersionUID = 1;

  WrapRow() {
    super(LEADING, Look.px(8), Look.px(4));
    setAlignOnBaseline(true);
  }

  @Override
  public Dimension preferredLayoutSize(Container target) {
    Insets insets = target.getInsets();
    int width = target.getWidth() == 0 ? Integer.MAX_VALUE : target.getWidth();
    int room = width - insets.left - insets.right - 2 * getHgap();
    int used = 0;
    int widest = 0;
    int row = 0;
    int height = insets.top + insets.bottom + getVgap();
    for (Component part : target.getComponents()) {
      if (part.isVisible()) {
        Dimension size = part.getPreferredSize();
        if (used > 0 && used + getHgap() + size.width > room) {
          height += row + getVgap();
          used = 0;
          row = 0;
        }
        used += (used > 0 ? getHgap() : 0) + size.width;
        widest = Math.max(widest, used);
        row = Math.max(row, size.height);
      }
    }
    return new Dimension(widest + 2 * getHgap(), height + row + getVgap());
  }

  @Override
  public Dimension minimumLayoutSize(Container target) {
    return new Dimension(0, preferredLayoutSize(target).height);
  }
}
