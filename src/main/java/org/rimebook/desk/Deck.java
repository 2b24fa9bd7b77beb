package org.rimebook.desk;

import java.awt.CardLayout;
import java.awt.Dimension;
import javax.swing.JPanel;
import org.rimebook.desk.look.Look;

/** Pages of which one shows; it keeps room for it, whatever the pages would like. */
final class Deck extends JPanel {

  private final transient CardLayout cards = new CardLayout();
  private final int leastWidth;
  private final int leastHeight;

  /**
   * @param leastWidth at 100 % [px]
   * @param leastHeight at 100 % [px]
   */
  Deck(int leastWidth, int leastHeight) {
    this.leastWidth = leastWidth;
    this.leastHeight = leastHeight;
    setLayout(cards);
  }

  void show(String name) {
    cards.show(this, name);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(Look.px(leastWidth), Look.px(leastHeight));
  }
}
