package org.rimebook.desk;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.rimebook.desk.look.Look;

/** Something to read beside the window, gone with Escape. */
final class ReadingDialog {

  private ReadingDialog() {}

  /** Shows it, no larger than the screen. */
  static void show(JFrame window, String title, JComponent content, Dimension at100) {
    JDialog dialog = new JDialog(window, title, false);
    JScrollPane scroll = new JScrollPane(content);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    Rectangle screen = window.getGraphicsConfiguration().getBounds();
    scroll.setPreferredSize(
        new Dimension(
            Math.min(Look.px(at100.width), screen.width - Look.px(48)),
            Math.min(Look.px(at100.height), screen.height - Look.px(96))));
    dialog.setContentPane(scroll);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.pack();
    dialog.setLocationRelativeTo(window);
    dialog.setVisible(true);
  }
}
