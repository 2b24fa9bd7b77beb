package org.rimebook.desk.table;

import java.awt.RenderingHints;
import java.util.Map;
import javax.swing.JComponent;

/** How text is drawn in components that draw it themselves: as those of the theme draw it. */
final class TextHints {

  private TextHints() {}

  static Map<RenderingHints.Key, Object> of(JComponent component) {
    Object antialiasing = component.getClientProperty(RenderingHints.KEY_TEXT_ANTIALIASING);
    return Map.of(
        RenderingHints.KEY_TEXT_ANTIALIASING,
        antialiasing == null ? RenderingHints.VALUE_TEXT_ANTIALIAS_ON : antialiasing,
        RenderingHints.KEY_ANTIALIASING,
        RenderingHints.VALUE_ANTIALIAS_ON);
  }
}
