package org.rimebook.notebook;

/** What was done at a service visit. */
public enum VisitAction {
  EMPTIED("emptied"),
  RECHARGED("recharged"),
  ANTIFREEZE_ADDED("antifreeze-added"),
  OIL_ADDED("oil-added"),
  LEVELLED("levelled"),
  WIRE_REPLACED("wire-replaced"),
  CHECK_WEIGHTS("check-weights"),
  INSPECTED("inspected");

  private final String code;

  VisitAction(String code) {
    this.code = code;
  }

  /** The word in the notebook. */
  public String code() {
    return code;
  }
}
