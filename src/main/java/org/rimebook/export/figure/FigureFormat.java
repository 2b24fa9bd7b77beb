package org.rimebook.export.figure;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a figure is written as. */
public enum FigureFormat {
  SVG,
  PDF,
  PNG;

  /** The ending of its files, with the dot. */
  public String ending() {
    return "." + name().toLowerCase(Locale.ROOT);
  }

  /** The format a file's name asks for. */
  public static Optional<FigureFormat> of(String fileName) {
    String name = fileName.toLowerCase(Locale.ROOT);
    return Stream.of(values()).filter(format -> name.endsWith(format.ending())).findFirst();
  }
}
