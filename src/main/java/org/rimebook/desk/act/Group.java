package org.rimebook.desk.act;

/** The menus, in their order. */
public enum Group {
  SEASON("Season", 'S'),
  VIEW("View", 'V'),
  MARK("Mark", 'M'),
  NOTEBOOK("Notebook", 'N'),
  FINDINGS("Findings", 'F'),
  TOTALS("Totals", 'T'),
  BENCH("Bench", 'B'),
  HELP("Help", 'H');

  private final String words;
  private final char mnemonic;

  Group(String words, char mnemonic) {
    this.words = words;
    this.mnemonic = mnemonic;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }

  /** The letter that opens it. */
  public char mnemonic() {
    return mnemonic;
  }
}
