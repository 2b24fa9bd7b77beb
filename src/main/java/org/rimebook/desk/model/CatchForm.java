package org.rimebook.desk.model;

/** How the catch is drawn. */
public enum CatchForm {
  ACCUMULATED("accumulated"),
  HOURLY("hourly"),
  DAILY("daily");

  private final String words;

  CatchForm(String words) {
    this.words = words;
  }

  /** Its name on screen and where it is remembered. */
  public String words() {
    return words;
  }
}
