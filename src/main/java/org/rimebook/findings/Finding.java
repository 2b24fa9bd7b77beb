package org.rimebook.findings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/**
 * Something that looks wrong over a span of time.
 *
 * @param kind what it is
 * @param span where it is
 * @param wires names of the wires it is about, in the order of the station sheet; empty = the
 *     bucket as a whole
 * @param reason why it looks wrong, in words with numbers and units
 * @param strength how sure it is, from 0 to 1; findings are walked by it
 * @param proposal the entry that would settle it; its id, time and initials are empty
 * @param doubted the span whose totals aren't to be trusted until somebody decides; empty when the
 *     totals stand as they are
 */
public record Finding(
    FindingKind kind,
    Interval span,
    List<String> wires,
    String reason,
    double strength,
    Entry proposal,
    Optional<Interval> doubted) {

  public Finding {
    wires = List.copyOf(wires);
    if (!(strength >= 0 && strength <= 1)) {
      throw new IllegalArgumentException("a strength lies from 0 to 1: " + strength);
    }
  }

  /** A finding that leaves the totals as they are. */
  public static Finding harmless(
      FindingKind kind, Subject subject, String reason, double strength, Entry proposal) {
    return new Finding(
        kind, subject.span(), subject.wires(), reason, strength, proposal, Optional.empty());
  }

  /** A finding that puts the totals of its span in doubt. */
  public static Finding doubting(
      FindingKind kind, Subject subject, String reason, double strength, Entry proposal) {
    return new Finding(
        kind,
        subject.span(),
        subject.wires(),
        reason,
        strength,
        proposal,
        Optional.of(subject.span()));
  }

  /**
   * What it is called in a dismissal: kind, span and wires. The same thing found again after other
   * entries may be a little longer or shorter; {@link Settled} sees to that.
   */
  public String id() {
    String named = wires.stream().collect(Collectors.joining("+"));
    return kind.code() + "/" + span.from() + "/" + span.to() + (named.isEmpty() ? "" : "/" + named);
  }

  /**
   * What a finding is about.
   *
   * @param span where it is
   * @param wires names of the wires; empty = the bucket as a whole
   */
  public record Subject(Interval span, List<String> wires) {

    public Subject {
      wires = List.copyOf(wires);
    }

    /** The bucket as a whole. */
    public static Subject bucket(Interval span) {
      return new Subject(span, List.of());
    }

    /** One wire. */
    public static Subject wire(Interval span, String wire) {
      return new Subject(span, List.of(wire));
    }
  }
}
