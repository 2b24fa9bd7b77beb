package org.rimebook.findings;

import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/** Whether what was found before is about a wire at some time. */
final class WireSpans {

  private WireSpans() {}

  /** Whether the sheet's calibration of a wire was found not to suit in part of a span. */
  static boolean calibrationDoubted(Scene scene, int wire, Interval span) {
    return found(scene, FindingKind.EXCHANGED_WIRES, wire, span)
        || found(scene, FindingKind.CALIBRATION, wire, span);
  }

  /** Whether somebody has said that the zero of a wire shifts in part of a span. */
  static boolean shifted(Scene scene, int wire, Interval span) {
    return scene.notebook().inForce().stream()
        .filter(Entry.BadInterval.class::isInstance)
        .map(Entry.BadInterval.class::cast)
        .filter(bad -> bad.reason() == BadReason.WIRE_FAULT && bad.interval().overlaps(span))
        .filter(bad -> bad.interval().lengthMs() <= 2 * Moments.ABOUT_MS)
        .anyMatch(bad -> bad.wires().contains(scene.wireName(wire)));
  }

  /** Whether something touches a wire in part of a span: it was found, or has been said. */
  static boolean touched(Scene scene, int wire, Interval span) {
    return found(scene, FindingKind.FRICTION, wire, span)
        || scene.notebook().inForce().stream()
            .filter(Entry.BadInterval.class::isInstance)
            .map(Entry.BadInterval.class::cast)
            .filter(bad -> bad.reason() == BadReason.OBSTRUCTION && bad.interval().overlaps(span))
            .anyMatch(bad -> bad.wires().contains(scene.wireName(wire)));
  }

  /** Whether something of a kind about a wire, or about all, was found over part of a span. */
  static boolean found(Scene scene, FindingKind kind, int wire, Interval span) {
    String name = scene.wireName(wire);
    return scene.found().stream()
        .filter(finding -> finding.kind() == kind && finding.span().overlaps(span))
        .anyMatch(finding -> finding.wires().isEmpty() || finding.wires().contains(name));
  }
}
