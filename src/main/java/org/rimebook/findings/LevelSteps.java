package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.Robust;

/** Where the level stands still, steps up within a few readings and stands still again. */
final class LevelSteps {

  private static final double STEP_MM = 0.3;
  private static final double STEP_SD = 6;

  /** Blocks of standstill on each side, and how still; own choice. */
  private static final int STILL = 1;

  private static final double STILL_SHARE = 0.2;

  /** Share of a step that readings this far apart show; a burst of rain lasts longer. */
  private static final double AT_ONCE_SHARE = 0.75;

  private static final int AT_ONCE_ROWS = 2;

  /** Share of a step that each wire makes at least; own choice. */
  private static final double ALIKE_SHARE = 0.7;

  /** More isn't friction but somebody at the bucket [mm]; own choice. */
  private static final double MOST_MM = 5;

  /** Slower sampling can't tell a step from a burst [ms]. */
  private static final long SLOWEST_MS = 120_000;

  /** A standstill reaches back this many blocks at most; own choice. */
  private static final int BACK = 144;

  private final Scene scene;
  private final Blocks blocks;
  private final HourlyNoise noise;

  LevelSteps(Scene scene, HourlyNoise noise) {
    this.scene = scene;
    this.noise = noise;
    this.blocks = scene.blocks();
  }

  List<Slip> find() {
    List<Slip> steps = new ArrayList<>();
    double limitMm = limitMm();
    boolean quick =
        scene.record().sampling().stream().allMatch(run -> run.intervalMs() <= SLOWEST_MS);
    if (!quick || Double.isNaN(limitMm)) {
      return steps;
    }
    for (int block = STILL + 1; block + STILL + 1 < blocks.size(); block++) {
      double stepMm = blocks.levelMm(block + 1) - blocks.levelMm(block - 1);
      boolean stands = stepMm > limitMm && stepMm < MOST_MM && still(block, stepMm);
      if (stands && atOnce(block, stepMm) && alike(block, stepMm) && !noisy(block, stepMm)) {
        steps.add(new Slip(blocks.span(stillSince(block, stepMm), block + 2), stepMm));
        block++;
      }
    }
    return steps;
  }

  private double limitMm() {
    double[] changes = new double[Math.max(0, blocks.size() - 1)];
    Arrays.setAll(changes, b -> blocks.levelMm(b + 1) - blocks.levelMm(b));
    double[] known = Arrays.stream(changes).filter(Double::isFinite).toArray();
    return known.length == 0
        ? Double.NaN
        : Math.max(STEP_MM, STEP_SD * Robust.sdInPlace(known, known.length));
  }

  private boolean still(int block, double stepMm) {
    double before = blocks.levelMm(block - 1) - blocks.levelMm(block - 1 - STILL);
    double after = blocks.levelMm(block + 1 + STILL) - blocks.levelMm(block + 1);
    return Math.abs(before) < STILL_SHARE * stepMm && Math.abs(after) < STILL_SHARE * stepMm;
  }

  /** Whether every wire steps: one alone moves the level too. */
  private boolean alike(int block, double stepMm) {
    boolean alike = true;
    for (int wire = 0; wire < blocks.wires(); wire++) {
      double own = blocks.depthMm(wire, block + 1) - blocks.depthMm(wire, block - 1);
      alike &= Double.isNaN(own) || own > ALIKE_SHARE * stepMm;
    }
    return alike;
  }

  /** Whether wind alone could make it; it shakes all wires together, so that none evens it out. */
  private boolean noisy(int block, double stepMm) {
    double most = 0;
    for (int wire = 0; wire < blocks.wires(); wire++) {
      double usual = noise.changeMm(wire, block);
      most = usual > most ? usual : most;
    }
    return stepMm <= STEP_SD * most;
  }

  private int stillSince(int block, double stepMm) {
    int from = block - 1 - STILL;
    double levelMm = blocks.levelMm(block - 1);
    while (from > 0
        && block - from < BACK
        && Math.abs(blocks.levelMm(from - 1) - levelMm) < STILL_SHARE * stepMm) {
      from--;
    }
    return from;
  }

  private boolean atOnce(int block, double stepMm) {
    LevelSeries level = scene.level();
    int from = level.indexAtOrAfter(blocks.firstRow(block - 1));
    int to = Math.min(level.size(), level.indexAtOrAfter(blocks.firstRow(block + 2)));
    double most = 0;
    for (int i = from; i + AT_ONCE_ROWS < to; i++) {
      most = Math.max(most, level.levelMm(i + AT_ONCE_ROWS) - level.levelMm(i));
    }
    return most > AT_ONCE_SHARE * stepMm;
  }
}
