package org.rimebook.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The packages under one base package, lowest first: a package may use only those before it. The
 * rules take a layout so that they hold {@link #MAIN} and are proved on {@link #WRONG} alike.
 */
record Layout(String base, JavaClasses classes) {

  /** Every package there may be, in the one direction of use. */
  static final List<String> ORDER =
      List.of(
          "station",
          "record",
          "notebook",
          "depth",
          "accumulation",
          "findings",
          "undercatch",
          "totals",
          "season",
          "upkeep",
          "export",
          "practice",
          "command",
          "desk",
          "launch");

  static final String ENTRY_POINT = "Rimebook";

  /** The program itself. */
  static final Layout MAIN =
      new Layout(
          "org.rimebook",
          new ClassFileImporter()
              .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
              .importPackages("org.rimebook"));

  /** Classes that break the rules on purpose. */
  static final Layout WRONG =
      new Layout(
          "org.rimebook.architecture.wrong",
          new ClassFileImporter().importPackages("org.rimebook.architecture.wrong"));

  boolean holds(JavaClass type) {
    return (type.getPackageName() + ".").startsWith(base + ".");
  }

  boolean isEntryPoint(JavaClass type) {
    return outermost(type).getFullName().equals(base + "." + ENTRY_POINT);
  }

  /** The listed package a class belongs to, itself or through a package beneath it. */
  Optional<String> packageOf(JavaClass type) {
    String name = type.getPackageName();
    return ORDER.stream()
        .filter(listed -> (name + ".").startsWith(base + "." + listed + "."))
        .findFirst();
  }

  /** Whether a class belongs to one of the listed packages. */
  boolean isIn(JavaClass type, String... packages) {
    return packageOf(type).filter(Arrays.asList(packages)::contains).isPresent();
  }

  private static JavaClass outermost(JavaClass type) {
    return type.getEnclosingClass().map(Layout::outermost).orElse(type);
  }
}
