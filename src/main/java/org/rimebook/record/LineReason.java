package org.rimebook.record;

/** Why an input line isn't a reading of the record. */
public enum LineReason {
  BLANK("blank"),
  COMMENT("comment"),
  PREAMBLE("before the header"),
  HEADER("header"),
  UNITS("units or sampling row"),
  REPEATED_HEADER("repeated header"),
  REPEATED_ROW("repeats a reading already taken"),
  CONFLICTING_ROW("same time as a reading already taken, other values"),
  BAD_TIME("time can't be read"),
  BAD_CLOCK("clock far from its neighbours"),
  CUT_LINE("cut last line"),
  FIELD_COUNT("wrong number of fields"),
  UNREADABLE("can't be read");

  private final String words;

  LineReason(String words) {
    this.words = words;
  }

  /** The reason in words. */
  public String words() {
    return words;
  }
}
