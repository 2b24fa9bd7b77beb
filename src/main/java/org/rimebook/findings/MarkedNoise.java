package org.rimebook.findings;

import java.util.List;
import org.rimebook.depth.Robust;
import org.rimebook.depth.Screening;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/** What the notebook leaves out of a wire as noise, and how noisy it was. */
record MarkedNoise(Scene scene, int wire, List<Interval> spans) {

  static MarkedNoise of(Scene scene, int wire) {
    String name = scene.wireName(wire);
    return new MarkedNoise(
        scene,
        wire,
        scene.notebook().inForce().stream()
            .filter(Entry.BadInterval.class::isInstance)
            .map(Entry.BadInterval.class::cast)
            .filter(bad -> bad.reason() == BadReason.NOISE)
            .filter(bad -> bad.wires().isEmpty() || bad.wires().contains(name))
            .map(Entry.BadInterval::interval)
            .toList());
  }

  /** Whether part of a span is left out. */
  boolean in(Interval span) {
    return spans.stream().anyMatch(span::overlaps);
  }

  /** Noise of the readings in some rows, whether left out or not [mm]; NaN when they are few. */
  double noiseMm(int fromRow, int toRow, int leastDifferences) {
    double[] steps = new double[toRow - fromRow];
    int count = 0;
    double before = Double.NaN;
    for (int row = fromRow; row < toRow; row++) {
      Screening screening = scene.depths().screening(wire, row);
      boolean counts = screening == Screening.USED || screening == Screening.BAD_INTERVAL;
      double mm = counts ? scene.depths().depthMm(wire, row) : Double.NaN;
      if (Double.isFinite(mm - before)) {
        steps[count++] = Math.abs(mm - before);
      }
      before = mm;
    }
    return count < leastDifferences
        ? Double.NaN
        : Robust.sdFromMagnitudesInPlace(steps, count) / Math.sqrt(2);
  }
}
