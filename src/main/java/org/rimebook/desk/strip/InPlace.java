package org.rimebook.desk.strip;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;

/** A small panel over the strips, shown when asked for and put away with Escape. */
abstract class InPlace extends JPanel {

  private final transient StripStack stack;

  /**
   * @param stack what it stands over
   * @param columns columns of its layout
   */
  InPlace(StripStack stack, String columns) {
    super(new MigLayout("", columns));
    this.stack = stack;
    setVisible(false);
    addMouseListener(new MouseAdapter() {});
    KeyStroke escape = KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0);
    getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(escape, "away");
    getActionMap()
        .put(
            "away",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                away();
              }
            });
  }

  @Override
  public void updateUI() {
    super.updateUI();
    ((MigLayout) getLayout()).setLayoutConstraints("insets " + Look.px(8) + ", gapy " + Look.px(4));
    setBackground(Look.paper());
    setBorder(BorderFactory.createLineBorder(Look.hairline(), Look.px(1)));
  }

  /** Shows it, or puts it away when it is shown. */
  void toggle() {
    if (isVisible()) {
      away();
    } else {
      setVisible(true);
      stack.revalidate();
      begin();
    }
  }

  /** Puts it away. */
  void away() {
    setVisible(false);
    stack.requestFocusInWindow();
  }

  /** Called when it has been shown. */
  abstract void begin();

  StripStack stack() {
    return stack;
  }
}
