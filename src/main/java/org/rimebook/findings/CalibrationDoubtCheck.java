package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Calibration;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;
import org.rimebook.station.Words;

/**
 * Calibrations that don't suit the record: depths that are impossible or stand apart from the
 * start, increments that differ in proportion, and coefficients no taut wire has.
 */
final class CalibrationDoubtCheck implements Check {

  /**
   * A/(2 f0 B) of an ideal taut string is 1: f = (1/2L)√(T/μ). The tolerance is the same own choice
   * as that of the alert on the sheet.
   */
  private static final double STRING_TOLERANCE = 0.15;

  /** A bucket that has just been hung up may read this far below zero [mm]; own choice. */
  private static final double BELOW_ZERO_MM = -5;

  @Override
  public FindingKind kind() {
    return FindingKind.CALIBRATION;
  }

  @Override
  public String method() {
    return "Depths of the first two days against the middle wire's (3 mm and 1.5 % of the depth,"
        + " own choice), the rise of each wire in precipitation against the middle one's (2.5 %"
        + " beyond 2.5 standard errors, own choice; tilt alone makes about 1 %), and A/(2 f0 B)"
        + " against 1, which an ideal taut string has (15 %, own choice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    Optional<Interval> season = SharedHours.season(scene);
    if (season.isEmpty()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    SharedHours hours = SharedHours.of(scene);
    int from = 0;
    for (int to : bounds(scene, hours)) {
      Interval span =
          new Interval(
              from == 0 ? season.get().fromMs() : hours.startMs(from),
              to == hours.size() ? season.get().toMs() : hours.startMs(to));
      WireComparison comparison = new WireComparison(scene, hours, from, to);
      findings.addAll(impossible(comparison, span));
      findings.addAll(odd(scene, comparison, span));
      from = to;
    }
    return findings;
  }

  /** Hours at which a stretch of the same calibrations ends. */
  private static List<Integer> bounds(Scene scene, SharedHours hours) {
    return IntStream.concat(
            scene.sheet().wires().stream()
                .flatMap(wire -> wire.calibrations().stream())
                .flatMap(calibration -> calibration.from().stream())
                .mapToInt(from -> hourAfter(hours, from.toEpochMilli()))
                .filter(hour -> hour > 0 && hour < hours.size()),
            IntStream.of(hours.size()))
        .sorted()
        .distinct()
        .boxed()
        .toList();
  }

  private static int hourAfter(SharedHours hours, long epochMs) {
    return (int) IntStream.range(0, hours.size()).filter(h -> hours.startMs(h) < epochMs).count();
  }

  private List<Finding> impossible(WireComparison comparison, Interval span) {
    double depthMm = comparison.startMm();
    double capacityMm = comparison.capacityMm();
    if (!(depthMm < BELOW_ZERO_MM || depthMm > capacityMm)) {
      return List.of();
    }
    String limit =
        depthMm > capacityMm
            ? Words.text("the bucket holds %.0f mm", capacityMm)
            : "an empty bucket reads about 0 mm";
    String reason =
        Words.text("The wires read %.1f mm at the start; ", depthMm)
            + limit
            + ". Compare A, B and f0 of all wires with their sheets.";
    Finding.Subject bucket = Finding.Subject.bucket(span);
    return List.of(
        Finding.harmless(kind(), bucket, reason, 0.7, Proposals.remark(span, "Start depth.")));
  }

  private List<Finding> odd(Scene scene, WireComparison comparison, Interval span) {
    List<Finding> findings = new ArrayList<>();
    Optional<WireComparison.Odd> odd = comparison.odd();
    for (int wire = 0; wire < scene.sheet().wires().size(); wire++) {
      int own = wire;
      if (scene.leftOut(wire, span)) {
        continue;
      }
      String law = law(scene.sheet().wires().get(wire), span.fromMs());
      Optional<WireComparison.Odd> about = odd.filter(o -> o.wires().contains(own));
      boolean first = about.isEmpty() || about.get().wires().get(0) == wire;
      if (first && (about.isPresent() || !law.isEmpty())) {
        findings.add(finding(scene, about, List.of(own), new Said(span, law)));
      }
    }
    return findings;
  }

  /** What else is said of a span. */
  private record Said(Interval span, String law) {}

  private Finding finding(
      Scene scene, Optional<WireComparison.Odd> about, List<Integer> own, Said said) {
    List<String> names =
        about.map(WireComparison.Odd::wires).orElse(own).stream().map(scene::wireName).toList();
    Finding.Subject subject = new Finding.Subject(said.span(), names);
    String reason =
        (about.map(WireComparison.Odd::words).orElse("") + " " + said.law()).trim()
            + " Compare A, B and f0 with the sheet of "
            + Wording.names(names)
            + ".";
    if (about.isPresent() && about.get().harmful()) {
      Entry proposal =
          Proposals.bad(said.span(), names, BadReason.OTHER, "The calibration doesn't suit.");
      return Finding.doubting(kind(), subject, reason, about.get().strength(), proposal);
    }
    double strength = about.map(WireComparison.Odd::strength).orElse(0.4);
    Entry remark = Proposals.remark(said.span(), "Calibration to be checked.");
    return Finding.harmless(kind(), subject, reason, strength, remark);
  }

  private static String law(Wire wire, long epochMs) {
    Calibration calibration = wire.calibrationAt(epochMs);
    double ratio = CalibrationCurve.of(calibration).stringRatio();
    if (Double.isFinite(ratio) && Math.abs(ratio - 1) <= STRING_TOLERANCE) {
      return "";
    }
    return Double.isFinite(ratio)
        ? Words.text(
            "A/(2 f0 B) of %s is %.2f; a taut wire has 1.00, more than %.2f off is rare.",
            wire.name(), ratio, STRING_TOLERANCE)
        : Words.text("The curve of %s is a straight line; a taut wire's isn't.", wire.name());
  }
}
