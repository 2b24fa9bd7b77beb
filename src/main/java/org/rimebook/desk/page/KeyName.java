package org.rimebook.desk.page;

import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.AbstractButton;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.plaf.basic.BasicGraphicsUtils;
import org.rimebook.desk.look.Look;

/**
 * The key that does what a button does, in bold after the button's words. Drawn, since mark-up in a
 * button's text takes as long to set as the rest of the page.
 */
final class KeyName implements Icon {

  private final AbstractButton button;
  private final String key;

  private KeyName(AbstractButton button, String key) {
    this.button = button;
    this.key = key;
  }

  /** Puts a key after a button's words. */
  static void after(AbstractButton button, String key) {
    button.setIcon(new KeyName(button, key));
    button.setHorizontalTextPosition(SwingConstants.LEADING);
    button.setIconTextGap(0);
  }

  @Override
  public String toString() {
    return key;
  }

  /** Between words and key; part of what is drawn, so that it follows the size of everything. */
  private static int gap() {
    return Look.px(7);
  }

  private FontMetrics metrics() {
    return button.getFontMetrics(Look.bold(1));
  }

  @Override
  public int getIconWidth() {
    return gap() + metrics().stringWidth(key);
  }

  @Override
  public int getIconHeight() {
    return metrics().getHeight();
  }

  @Override
  public void paintIcon(Component on, Graphics g, int x, int y) {
    Graphics2D drawn = (Graphics2D) g.create();
    FontMetrics metrics = metrics();
    drawn.setFont(metrics.getFont());
    drawn.setColor(on.isEnabled() ? on.getForeground() : UIManager.getColor("Button.disabledText"));
    BasicGraphicsUtils.drawString((JComponent) on, drawn, key, x + gap(), y + metrics.getAscent());
    drawn.dispose();
  }
}
