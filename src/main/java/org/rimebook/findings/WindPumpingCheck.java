package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.rimebook.depth.Robust;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

/**
 * Hours in which the wind shakes the bucket: all wires are noisy alike, more than is usual at the
 * site. Only the strongest episodes of a season are told.
 */
final class WindPumpingCheck implements Check {

  /** Noise of a reading that matters [mm], and how many times the season's usual; own choice. */
  private static final double NOISY_MM = 0.5;

  private static final double TIMES_USUAL = 3;

  /** The quietest wire has this share of the noise of the noisiest; own choice. */
  private static final double ALIKE = 0.4;

  /** Episodes nearer than this are one, and one lasts at least so long [ms]; own choice. */
  private static final long NEAR_MS = 6 * 3_600_000L;

  private static final long LEAST_MS = 2 * 3_600_000L;

  /** Share of an episode's blocks that have to be noisy; own choice. */
  private static final double LEAST_SHARE = 0.4;

  /** The wind blows this many times as hard as usual; own choice. */
  private static final double WINDIER = 1.3;

  /** Most episodes told of a season; own choice. */
  private static final int MOST = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.WIND_PUMPING;
  }

  @Override
  public String method() {
    return "Noise from differences of successive readings, in blocks of ten minutes: beyond 0.5 mm"
        + " and three times the season's median on all wires alike for two hours, with more wind"
        + " than usual where it is measured; the five strongest episodes of a season (own choice)."
        + " That noise grows with the wind is from Duchon 2005.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    if (scene.record().size() == 0 || scene.sheet().wires().size() < 2) {
      return List.of();
    }
    Blocks blocks = scene.blocks();
    double[] noise = new double[blocks.size()];
    Arrays.setAll(noise, block -> common(blocks, block));
    double[] known = Arrays.stream(noise).filter(Double::isFinite).toArray();
    if (known.length == 0) {
      return List.of();
    }
    double usualMm = Robust.medianInPlace(known, known.length);
    double limitMm = Math.max(NOISY_MM, TIMES_USUAL * usualMm);
    Wind wind = Wind.of(blocks);
    return episodes(blocks, noise, limitMm).stream()
        .filter(episode -> wind.blows(episode))
        .sorted(Comparator.comparingDouble(episode -> -episode.noisyMs() * episode.noiseMm()))
        .limit(MOST)
        .sorted(Comparator.comparingInt(Episode::from))
        .map(episode -> finding(scene, episode, usualMm, wind))
        .toList();
  }

  /** Noise all wires have [mm]; 0 when they aren't alike, NaN when it isn't known of all. */
  private static double common(Blocks blocks, int block) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    double sum = 0;
    int wires = blocks.wires();
    for (int wire = 0; wire < wires; wire++) {
      double noise = blocks.noiseMm(wire, block);
      least = Math.min(least, noise);
      most = Math.max(most, noise);
      sum += noise;
    }
    return Double.isNaN(sum) ? Double.NaN : least < ALIKE * most ? least : sum / wires;
  }

  /**
   * Blocks in which the wind shakes the bucket.
   *
   * @param from first block
   * @param to first block after
   * @param noiseMm median noise of the noisy ones [mm]
   * @param noisyMs their length [ms]
   */
  private record Episode(int from, int to, double noiseMm, long noisyMs) {}

  private static List<Episode> episodes(Blocks blocks, double[] noise, double limitMm) {
    List<Episode> episodes = new ArrayList<>();
    int near = (int) (NEAR_MS / blocks.lengthMs());
    int block = 0;
    while (block < noise.length) {
      if (noise[block] > limitMm) {
        int last = block;
        for (int next = block + 1; next < noise.length && next <= last + near; next++) {
          last = noise[next] > limitMm ? next : last;
        }
        double[] noisy =
            Arrays.stream(noise, block, last + 1).filter(value -> value > limitMm).toArray();
        long noisyMs = noisy.length * blocks.lengthMs();
        if (noisyMs >= LEAST_MS && noisy.length >= LEAST_SHARE * (last + 1 - block)) {
          double medianMm = Robust.medianInPlace(noisy, noisy.length);
          episodes.add(new Episode(block, last + 1, medianMm, noisyMs));
        }
        block = last + 1;
      } else {
        block++;
      }
    }
    return episodes;
  }

  /**
   * The wind, where it is measured.
   *
   * @param ms speed by block [m/s]; empty when it isn't measured
   * @param usualMs median speed [m/s]
   */
  private record Wind(double[] ms, double usualMs) {

    static Wind of(Blocks blocks) {
      double[] ms = blocks.channel(Channel.WIND_SPEED);
      double[] known = Arrays.stream(ms).filter(Double::isFinite).toArray();
      return new Wind(
          ms, known.length == 0 ? Double.NaN : Robust.medianInPlace(known, known.length));
    }

    double at(Episode episode) {
      return ms.length == 0
          ? Double.NaN
          : Arrays.stream(ms, episode.from(), episode.to())
              .filter(Double::isFinite)
              .average()
              .orElse(Double.NaN);
    }

    boolean blows(Episode episode) {
      double speed = at(episode);
      return Double.isNaN(speed) || speed > WINDIER * usualMs;
    }
  }

  private Finding finding(Scene scene, Episode episode, double usualMm, Wind wind) {
    Interval span = scene.blocks().span(episode.from(), episode.to());
    double speed = wind.at(episode);
    String reason =
        Wording.text(
                "All wires are noisy alike: readings scatter by %.2f mm, %.2f mm being usual.",
                episode.noiseMm(), usualMm)
            + (Double.isNaN(speed)
                ? " The wind isn't measured."
                : Wording.text(
                    " The wind blew at %.1f m/s, %.1f m/s being usual.", speed, wind.usualMs()));
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        Math.min(0.5, 0.1 * episode.noiseMm() / NOISY_MM + 0.1),
        Proposals.remark(span, "Wind shakes the bucket."));
  }
}
