package org.rimebook.architecture.wrong.totals;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Scanner;
import java.util.function.UnaryOperator;

/** Depends on the machine in most of the ways there are; once names what it means. */
public final class AsksTheMachine {

  private AsksTheMachine() {}

  /** Asks for the zone. */
  public static List<Object> zone() {
    return List.of(
        ZoneId.systemDefault(), LocalDateTime.now(), DateTimeFormatter.ofPattern("d MMM"));
  }

  /** Asks for the locale. */
  public static List<Object> locale(PrintWriter printer) {
    UnaryOperator<String> lower = String::toLowerCase;
    printer.printf("%.1f", 1.5);
    return List.of(
        Locale.getDefault(),
        lower.apply("WIND"),
        String.format("%.1f", 1.5),
        "%.1f".formatted(1.5),
        new DecimalFormat("0.0"),
        new Scanner("1,5").nextDouble());
  }

  /** Asks for the charset and for luck. */
  public static int bytes() {
    return new String("å".getBytes()).length() + new Random().nextInt();
  }

  /** Leaves the last digit to the processor. */
  public static double lastDigit() {
    return Math.exp(1.5);
  }

  /** Names everything. */
  public static byte[] named() {
    String lower = "WIND".toLowerCase(Locale.ROOT);
    return String.format(Locale.ROOT, "%s %.1f", lower, 1.5).getBytes(StandardCharsets.UTF_8);
  }
}
