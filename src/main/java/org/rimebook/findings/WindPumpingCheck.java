package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

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

  /** Longest lull within an episode, and least time that is noisy in one [ms]; own choice. */
  private static final long LULL_MS = 6 * 3_600_000L;

  private static final long LEAST_MS = 3 * 3_600_000L;

  /** The wind blows this many times as hard as usual; own choice. */
  private static final double WINDIER = 1.3;

  /** Most episodes told of a season; own choice. */
  private static final int MOST = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.WIND_PUMPING;
  }

  @Override
  public boolean aside() {
    return true;
  }

  @Override
  public String method() {
    return "Noise from differences of successive readings, hour by hour in medians of three: beyond"
        + " 0.5 mm and three times the season's median on all wires alike for three hours, with"
        + " more wind than usual where it is measured; readings fall by as much, which"
        + " precipitation doesn't make. The five episodes of a season with the most variance"
        + " beyond that are told (own choice). That noise grows with the wind is from Duchon 2005."
        + " Read every ten minutes at least.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    if (scene.record().size() == 0 || scene.sheet().wires().size() < 2) {
      return List.of();
    }
    HourlyNoise hours = new HourlyNoise(scene);
    double[] noise = new double[hours.hours()];
    Arrays.setAll(noise, hour -> common(hours, hour));
    noise = smooth(noise);
    double[] known = Arrays.stream(noise).filter(Double::isFinite).toArray();
    if (known.length == 0) {
      return List.of();
    }
    double usualMm = Robust.medianInPlace(known, known.length);
    double limitMm = Math.max(NOISY_MM, TIMES_USUAL * usualMm);
    Wind wind = Wind.of(scene.blocks());
    return episodes(hours, noise, limitMm).stream()
        .filter(episode -> !scene.explained(episode.span()))
        .filter(episode -> wind.blows(scene.blocks(), episode.span()))
        .sorted(Comparator.comparingDouble(episode -> -episode.beyond(limitMm)))
        .limit(MOST)
        .sorted(Comparator.comparingLong(episode -> episode.span().fromMs()))
        .map(episode -> finding(scene, episode, usualMm, wind))
        .toList();
  }

  /** Medians of three hours: one alone tells noise to a third when readings are few. */
  private static double[] smooth(double[] noise) {
    double[] smooth = new double[noise.length];
    for (int hour = 0; hour < noise.length; hour++) {
      double[] known =
          Arrays.stream(noise, Math.max(0, hour - 1), Math.min(noise.length, hour + 2))
              .filter(Double::isFinite)
              .toArray();
      smooth[hour] = known.length == 0 ? Double.NaN : Robust.medianInPlace(known, known.length);
    }
    return smooth;
  }

  /** Noise all wires have [mm]; 0 when they aren't alike, NaN when it isn't known of all. */
  private static double common(HourlyNoise hours, int hour) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    double sum = 0;
    int wires = hours.wires();
    for (int wire = 0; wire < wires; wire++) {
      double noise = hours.mm(wire, hour);
      least = Math.min(least, noise);
      most = Math.max(most, noise);
      sum += noise;
    }
    return Double.isNaN(sum) ? Double.NaN : least < ALIKE * most ? 0 : sum / wires;
  }

  /**
   * Hours in which the wind shakes the bucket.
   *
   * @param span from the first to the last
   * @param noiseMm noise of the noisy ones, as readings fall by it too [mm]
   * @param noisyMs their length [ms]
   */
  private record Episode(Interval span, double noiseMm, long noisyMs) {

    /** Variance beyond that of a limit, over time [mm² ms]. */
    double beyond(double limitMm) {
      return noisyMs * (noiseMm * noiseMm - limitMm * limitMm);
    }
  }

  private static List<Episode> episodes(HourlyNoise hours, double[] noise, double limitMm) {
    List<Episode> episodes = new ArrayList<>();
    int lull = (int) (LULL_MS / hours.lengthMs());
    for (JoinedRuns.Run run : JoinedRuns.of(hour -> noise[hour] > limitMm, noise.length, lull)) {
      long noisyMs = run.hits() * hours.lengthMs();
      int[] noisy =
          IntStream.range(run.fromRow(), run.toRow()).filter(h -> noise[h] > limitMm).toArray();
      double fallingMm =
          IntStream.range(0, hours.wires())
              .mapToDouble(wire -> hours.fallingMm(wire, IntStream.of(noisy)))
              .average()
              .orElse(0);
      if (noisyMs >= LEAST_MS && fallingMm > limitMm) {
        episodes.add(new Episode(hours.span(run.fromRow(), run.toRow()), fallingMm, noisyMs));
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

    double at(Blocks blocks, Interval span) {
      return ms.length == 0
          ? Double.NaN
          : Arrays.stream(ms, blocks.at(span.fromMs()), blocks.at(span.toMs() - 1) + 1)
              .filter(Double::isFinite)
              .average()
              .orElse(Double.NaN);
    }

    boolean blows(Blocks blocks, Interval span) {
      double speed = at(blocks, span);
      return Double.isNaN(speed) || speed > WINDIER * usualMs;
    }
  }

  private Finding finding(Scene scene, Episode episode, double usualMm, Wind wind) {
    Interval span = episode.span();
    double speed = wind.at(scene.blocks(), span);
    String reason =
        Words.text(
                "All wires are noisy alike: readings scatter by %.2f mm, %.2f mm being usual.",
                episode.noiseMm(), usualMm)
            + (Double.isNaN(speed)
                ? " The wind isn't measured."
                : Words.text(
                    " The wind blew at %.1f m/s, %.1f m/s being usual.", speed, wind.usualMs()));
    return Finding.harmless(
        kind(),
        Finding.Subject.bucket(span),
        reason,
        Math.min(0.5, 0.1 * episode.noiseMm() / NOISY_MM + 0.1),
        Proposals.remark(span, "Wind shakes the bucket."));
  }
}
