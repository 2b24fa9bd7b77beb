package org.rimebook.upkeep;

import java.util.List;

/** What a careful person does at a gauge, step by step; common practice. */
public final class Steps {

  private Steps() {}

  /** Setting a gauge up. */
  public static List<String> installation() {
    return List.of(
        "The post stands plumb and doesn't move when pushed; its foundation reaches below frost.",
        "The gauge's base is level in both directions; so is the rim of the inlet.",
        "Write down which wire hangs where: north first, then clockwise; and its lead's colour.",
        "Compare each wire's number with its calibration sheet, and enter A, B and f0 from it.",
        "Turn out the set screws that hold the hanger for transport.",
        "Hang the dish and the bucket with its mark over the gauge's; nothing touches.",
        "Each wire hums and repeats within its noise; the empty bucket reads near 0 mm.",
        "Tap the rim beside each wire in turn: that wire answers first and most.",
        "Read for ten minutes at rest and compare the noise with the wind.",
        "Put on one or two known masses and compare.",
        "Pour in antifreeze and oil, write down the litres, and compare with the rise.");
  }

  /** Looking after it at a visit. */
  public static List<String> visit() {
    return List.of(
        "Note the time of arrival, snow on rim and shield, what the wires show, supply voltage.",
        "Clear rim and inlet; look for ice, insects, leaves, and anything that touches.",
        "If the bucket is emptied: weigh or measure what comes out, and keep it for disposal.",
        "Pour in antifreeze and oil; write down the litres of each.",
        "Put on a known mass and compare, if anything was changed.",
        "Note what the wires show at rest, and the time of leaving.");
  }
}
