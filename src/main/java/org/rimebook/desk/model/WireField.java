package org.rimebook.desk.model;

import java.util.Optional;

/** A field of a wire as it is entered in words. */
public enum WireField {
  NAME("Name", "north"),
  LEAD("Lead", "red"),
  A("A, cm/Hz", "0.0172"),
  B("B, cm/Hz²", "8.2e-6"),
  F0("f0, Hz", "1050.1");

  private final String label;
  private final String example;

  WireField(String label, String example) {
    this.label = label;
    this.example = example;
  }

  /** Its name and unit on screen. */
  public String label() {
    return label;
  }

  /** What an entry looks like. */
  public String example() {
    return example;
  }

  /** What is wrong with an entry by itself, in words; empty when nothing is. */
  Optional<String> fault(String text) {
    return switch (this) {
      case LEAD -> Optional.empty();
      case NAME -> nameFault(text);
      default -> numberFault(text);
    };
  }

  private static Optional<String> nameFault(String text) {
    if (text.isBlank()) {
      return Optional.of("Enter it, for example the side it hangs on");
    }
    return text.matches(".*[+;,].*") ? Optional.of("Leave out '+', ';' and ','") : Optional.empty();
  }

  private Optional<String> numberFault(String text) {
    if (text.isBlank()) {
      return Optional.of("Enter it from the wire's sheet");
    }
    return Numbers.read(text).isPresent() ? Optional.empty() : Optional.of(Numbers.fault(example));
  }
}
