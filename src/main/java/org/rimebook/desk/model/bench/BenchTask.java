package org.rimebook.desk.model.bench;

/** What the bench is for. */
public enum BenchTask {
  CALIBRATION("Calibration", 'C', "Fits a wire to check weights, or takes a new sheet"),
  TEMPERATURE("Temperature", 'T', "What the air does to each wire: learnt, stated or left alone"),
  CHARGE("Charge", 'H', "Compares the litres poured in with what the wires show"),
  NEXT_VISIT("Next visit", 'N', "When it is due, what to bring, and the sheet to take along"),
  INSTALLATION("Installation", 'I', "Checks a gauge by a few minutes of readings at rest"),
  VISIT_DONE("Visit done", 'V', "Puts what was written down at a visit into the notebook");

  private final String words;
  private final char mnemonic;
  private final String sentence;

  BenchTask(String words, char mnemonic, String sentence) {
    this.words = words;
    this.mnemonic = mnemonic;
    this.sentence = sentence;
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }

  /** The letter that chooses it in an open menu. */
  public char mnemonic() {
    return mnemonic;
  }

  /** What it does, in a sentence. */
  public String sentence() {
    return sentence;
  }
}
