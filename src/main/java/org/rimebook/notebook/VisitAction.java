package org.rimebook.notebook;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  /** The action a notebook word stands for. */
  static Optional<VisitAction> ofCode(String code) {
    return Stream.of(values()).filter(value -> value.code.equals(code)).findFirst();
  }

  /** Every word, for messages. */
  static String codes() {
    return Stream.of(values()).map(VisitAction::code).collect(Collectors.joining(", "));
  }

  /** The word in the notebook. */
  public String code() {
    return code;
  }
}
