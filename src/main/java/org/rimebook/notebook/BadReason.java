package org.rimebook.notebook;

/** Why readings are not to be believed. */
public enum BadReason {
  WIRE_FAULT("wire-fault"),
  NOISE("noise"),
  POWER("power"),
  LOGGER("logger"),
  OBSTRUCTION("obstruction"),
  INTERFERENCE("interference"),
  OTHER("other");

  private final String code;

  BadReason(String code) {
    this.code = code;
  }

  /** The word in the notebook. */
  public String code() {
    return code;
  }
}
