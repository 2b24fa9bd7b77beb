package org.rimebook.station;

/** What stands around the gauge against the wind; chooses the undercatch function. */
public enum WindShield {
  UNSHIELDED("unshielded"),
  SINGLE_ALTER("single-alter"),
  OTHER("other");

  private final String code;

  WindShield(String code) {
    this.code = code;
  }

  /** The word in the station sheet. */
  public String code() {
    return code;
  }
}
