package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.Robust;
import org.rimebook.notebook.BadReason;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/**
 * Spells in which the supply stood below what it usually rests at, and whether the readings became
 * noisy or got lost with it.
 */
final class LowSupplyCheck implements Check {

  private static final long DAY_MS = 86_400_000;
  private static final long LEAST_MS = 3 * 3_600_000;
  private static final long TOGETHER_MS = 18 * 3_600_000;

  /** Days on each side that say where the supply rests; own choice. */
  private static final int SIDE_DAYS = 30;

  private static final int FEWEST_DAYS = 10;

  /** How far below its rest a supply is low [V], and in its usual scatter; own choice. */
  private static final double LOW_V = 0.3;

  private static final double LOW_SD = 5;

  /** The noise follows when it is so many times, and at least so much [mm]; own choice. */
  private static final double NOISIER = 3;

  private static final double LEAST_NOISE_MM = 0.1;

  /** So many more of the readings have to get lost; own choice. */
  private static final double LOST = 0.1;

  private static final double WEAK = 0.4;
  private static final double STRONG = 0.8;

  @Override
  public FindingKind kind() {
    return FindingKind.LOW_SUPPLY;
  }

  @Override
  public String method() {
    return "Supply voltage 0.3 V, and five robust standard deviations, below the median of its"
        + " lowest values of the days within a month, for 3 h or more. The readings follow it when"
        + " their noise on the middle wire is three times that of the week around and 0.1 mm or"
        + " more, or 10 % more of them are lost. Own choice.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Blocks blocks = scene.blocks();
    double[] volts = blocks.channel(Channel.SUPPLY_VOLTAGE);
    int day = (int) (DAY_MS / blocks.lengthMs());
    if (day == 0 || volts.length < FEWEST_DAYS * day) {
      return List.of();
    }
    double[] limit = limits(volts, day);
    boolean[] low = new boolean[volts.length];
    for (int block = 0; block < low.length; block++) {
      low[block] = volts[block] < limit[block / day];
    }
    List<Finding> findings = new ArrayList<>();
    for (int[] spell : spells(low, blocks)) {
      Interval span = blocks.span(spell[0], spell[1]);
      Finding finding = finding(scene, new Spell(volts, limit[spell[0] / day], low, spell));
      if (!scene.explained(span) && (finding.strength() > WEAK || !gapSaysSo(scene, span))) {
        findings.add(finding);
      }
    }
    return findings;
  }

  /** Whether the logger fell silent with it, which is a finding by itself or marked already. */
  private static boolean gapSaysSo(Scene scene, Interval span) {
    Interval wide = new Interval(span.fromMs(), span.toMs() + LEAST_MS);
    return scene.explainedInPart(wide)
        || scene.found().stream()
            .anyMatch(f -> f.kind() == FindingKind.GAP && f.span().overlaps(wide));
  }

  /** Voltage below which the supply is low, by day. */
  private static double[] limits(double[] volts, int day) {
    double[] lowest = new double[(volts.length + day - 1) / day];
    for (int i = 0; i < lowest.length; i++) {
      lowest[i] =
          Arrays.stream(volts, i * day, Math.min(volts.length, (i + 1) * day))
              .filter(Double::isFinite)
              .min()
              .orElse(Double.NaN);
    }
    double[] limits = new double[lowest.length];
    for (int i = 0; i < limits.length; i++) {
      int from = Math.max(0, i - SIDE_DAYS);
      double[] near =
          Arrays.stream(lowest, from, Math.min(lowest.length, i + SIDE_DAYS + 1))
              .filter(Double::isFinite)
              .toArray();
      limits[i] = Double.NaN;
      if (near.length >= FEWEST_DAYS) {
        double rest = Robust.medianInPlace(near, near.length);
        limits[i] = rest - Math.max(LOW_V, LOW_SD * Robust.sdInPlace(near, near.length));
      }
    }
    return limits;
  }

  private static List<int[]> spells(boolean[] low, Blocks blocks) {
    List<int[]> spells = new ArrayList<>();
    int together = (int) (TOGETHER_MS / blocks.lengthMs());
    for (int block = 0; block < low.length; block++) {
      if (low[block]) {
        int[] last = spells.isEmpty() ? null : spells.get(spells.size() - 1);
        if (last != null && block - last[1] <= together) {
          last[1] = block + 1;
        } else {
          spells.add(new int[] {block, block + 1});
        }
      }
    }
    int least = (int) Math.max(1, LEAST_MS / blocks.lengthMs());
    spells.removeIf(spell -> count(low, spell) < least);
    return spells;
  }

  private static int count(boolean[] low, int[] spell) {
    int count = 0;
    for (int block = spell[0]; block < spell[1]; block++) {
      count += low[block] ? 1 : 0;
    }
    return count;
  }

  private Finding finding(Scene scene, Spell spell) {
    Blocks blocks = scene.blocks();
    Interval span = blocks.span(spell.blocks[0], spell.blocks[1]);
    int week = (int) (7 * DAY_MS / blocks.lengthMs());
    int[] around = {
      Math.max(0, spell.blocks[0] - week), Math.min(blocks.size(), spell.blocks[1] + week)
    };
    double lowNoise = noise(blocks, spell, spell.blocks, true);
    double usualNoise = noise(blocks, spell, around, false);
    double lost = lost(scene, spell, spell.blocks, true);
    double usualLost = lost(scene, spell, around, false);
    boolean noisy = lowNoise > LEAST_NOISE_MM && lowNoise > NOISIER * usualNoise;
    boolean losing = lost > usualLost + LOST;
    String reason =
        Words.text(
            "The supply fell to %.2f V, below %.2f V, for %s.",
            spell.lowest(), spell.limitV, Wording.duration(span.lengthMs()));
    reason +=
        noisy
            ? Words.text(
                " The noise of a reading is %.2f mm then, and %.2f mm in the week around.",
                lowNoise, usualNoise)
            : "";
    reason +=
        losing
            ? Words.text(
                " %.0f %% of the readings are lost then, %.0f %% in the week around.",
                100 * lost, 100 * usualLost)
            : "";
    return noisy ? bad(span, reason) : remark(span, reason, losing);
  }

  private Finding bad(Interval span, String reason) {
    return Finding.doubting(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        STRONG,
        Proposals.bad(span, List.of(), BadReason.POWER, "Supply low, readings noisy."));
  }

  private Finding remark(Interval span, String reason, boolean losing) {
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        losing ? STRONG : WEAK,
        Proposals.remark(span, losing ? "Supply low, readings lost." : "Supply low."));
  }

  private static double noise(Blocks blocks, Spell spell, int[] range, boolean low) {
    double[] values = new double[range[1] - range[0]];
    int count = 0;
    for (int block = range[0]; block < range[1]; block++) {
      if (spell.low[block] != low) {
        continue;
      }
      double[] wires = new double[blocks.wires()];
      for (int wire = 0; wire < wires.length; wire++) {
        wires[wire] = blocks.noiseMm(wire, block);
      }
      double middle = Disturbance.median(wires);
      if (!Double.isNaN(middle)) {
        values[count++] = middle;
      }
    }
    return count == 0 ? Double.NaN : Robust.medianInPlace(values, count);
  }

  /** Share of readings without a frequency, or without a row. */
  private static double lost(Scene scene, Spell spell, int[] range, boolean low) {
    Blocks blocks = scene.blocks();
    double expected = 0;
    double there = 0;
    for (int block = range[0]; block < range[1]; block++) {
      int first = blocks.firstRow(block);
      int end = blocks.firstRow(block + 1);
      if (spell.low[block] == low && end > first) {
        expected += end - first;
        for (int row = first; row < end; row++) {
          there += given(scene, row);
        }
      }
    }
    return expected == 0 ? 0 : 1 - there / expected;
  }

  private static double given(Scene scene, int row) {
    int wires = scene.depths().wires();
    double given = 0;
    for (int wire = 0; wire < wires; wire++) {
      given += scene.record().frequency(wire).get(row) > 0 ? 1 : 0;
    }
    return given / wires;
  }

  /** Blocks from the first to the last with a low supply. */
  private static final class Spell {

    private final double[] volts;
    private final double limitV;
    private final boolean[] low;
    private final int[] blocks;

    Spell(double[] volts, double limitV, boolean[] low, int[] blocks) {
      this.volts = volts;
      this.limitV = limitV;
      this.low = low;
      this.blocks = blocks;
    }

    double lowest() {
      return Arrays.stream(volts, blocks[0], blocks[1])
          .filter(Double::isFinite)
          .min()
          .orElse(Double.NaN);
    }
  }
}
