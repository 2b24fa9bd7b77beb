package org.rimebook.desk.form;

import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JTextArea;

/** Labels whose colour and type follow the theme. */
public final class Words {

  private Words() {}

  /** A label; its colour and font are asked for anew when the theme changes. */
  public static JLabel label(String text, Supplier<Font> font, Supplier<Color> colour) {
    return new JLabel(text) {
      @Override
      public void updateUI() {
        super.updateUI();
        setFont(font.get());
        setForeground(colour.get());
      }
    };
  }

  /** Text over several lines that can be selected and copied. */
  public static JTextArea text(String text, Supplier<Font> font, Supplier<Color> colour) {
    JTextArea area =
        new JTextArea(text) {
          /** A page scrolls where its reader scrolls it, not to words that change. */
          @Override
          public void scrollRectToVisible(Rectangle place) {
            // stays where it is
          }

          @Override
          public void updateUI() {
            super.updateUI();
            setFont(font.get());
            setForeground(colour.get());
            setBorder(null);
            setOpaque(false);
          }
        };
    area.setEditable(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFocusable(false);
    return area;
  }
}
