package org.rimebook.notebook;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  /** The reason a notebook word stands for. */
  static Optional<BadReason> ofCode(String code) {
    return Stream.of(values()).filter(value -> value.code.equals(code)).findFirst();
  }

  /** Every word, for messages. */
  static String codes() {
    return Stream.of(values()).map(BadReason::code).collect(Collectors.joining(", "));
  }

  /** The word in the notebook. */
  public String code() {
    return code;
  }
}
