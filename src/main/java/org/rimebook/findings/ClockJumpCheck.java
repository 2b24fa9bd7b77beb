package org.rimebook.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.record.FileAccount;
import org.rimebook.record.LineReason;
import org.rimebook.record.SeasonRecord;
import org.rimebook.record.SetAside;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Clocks set back or forward, or that lost the time. */
final class ClockJumpCheck implements Check {

  /** A hole is the other end of a step back that differs by less intervals; own choice. */
  private static final int ALIKE_INTERVALS = 2;

  private static final long LEAST_MS = 2 * 60_000;
  private static final double SURE = 0.9;
  private static final double LIKELY = 0.7;

  @Override
  public FindingKind kind() {
    return FindingKind.CLOCK_JUMP;
  }

  @Override
  public String method() {
    return "Times that a file has twice, other rows of it lying between or set aside as conflicts;"
        + " a hole as long as such a step is taken as its other end. A hole by itself is a jump"
        + " when air temperature and supply go on as if no time had passed, which they would by"
        + " chance once in 300 such holes or less; rows set aside for an impossible clock are"
        + " named. Own choice. Totals are doubted from a quarter of an hour on.";
  }

  @Override
  public List<Finding> look(Scene scene) {
    SeasonRecord record = scene.record();
    Set<ClockSteps.Step> used = new HashSet<>();
    ClockDriftCheck.in(scene).forEach(drift -> used.addAll(drift.steps()));
    List<ClockSteps.Step> holes = new ArrayList<>(ClockSteps.holes(record, 2, LEAST_MS));
    List<Finding> findings = new ArrayList<>();
    for (ClockSteps.Step back : ClockSteps.back(record)) {
      if (!used.contains(back)) {
        Optional<ClockSteps.Step> other = otherEnd(scene, back, holes);
        other.ifPresent(holes::remove);
        findings.add(other.map(hole -> pair(back, hole)).orElseGet(() -> alone(scene, back)));
      }
    }
    holes.removeAll(used);
    findings.addAll(goingOn(scene, holes));
    for (FileAccount file : record.provenance().files()) {
      findings.addAll(resets(record, file));
    }
    findings.removeIf(finding -> scene.found(FindingKind.CLOCK_OFFSET, finding.span()));
    findings.sort(Findings.BY_TIME);
    return findings;
  }

  /** The hole that is the other end of a step back, the nearest as long. */
  static Optional<ClockSteps.Step> otherEnd(
      Scene scene, ClockSteps.Step back, List<ClockSteps.Step> holes) {
    long alikeMs = ALIKE_INTERVALS * scene.record().sampling().get(0).intervalMs();
    return holes.stream()
        .filter(hole -> Math.abs(hole.byMs() + back.byMs()) <= alikeMs)
        .filter(hole -> hole.atMs() < back.resumedMs() || hole.resumedMs() > back.atMs())
        .min((a, b) -> Long.compare(apart(a, back), apart(b, back)));
  }

  private static long apart(ClockSteps.Step one, ClockSteps.Step other) {
    return Math.abs(one.atMs() - other.atMs());
  }

  /** What was stamped wrongly between a step back and the hole that goes with it. */
  static Interval between(ClockSteps.Step back, ClockSteps.Step hole) {
    return hole.atMs() < back.atMs()
        ? new Interval(hole.resumedMs(), Math.max(hole.resumedMs(), back.atMs()))
        : new Interval(Math.min(back.resumedMs(), hole.atMs()), hole.atMs());
  }

  private Finding pair(ClockSteps.Step back, ClockSteps.Step hole) {
    boolean fast = hole.atMs() < back.atMs();
    Interval span = between(back, hole);
    String by = Wording.duration(Math.abs(back.byMs()));
    String reason =
        Words.text(
            "The clock jumped %s by %s and was set %s by the same after %s: there's a hole of that"
                + " length at one end, and times the file has twice at the other.",
            fast ? "forward" : "back",
            by,
            fast ? "back" : "forward",
            Wording.duration(span.lengthMs()));
    String note =
        Words.text(
            "Clock %s by %s: mend the stamps in a copy of the file.", fast ? "fast" : "slow", by);
    return finding(span, back.byMs(), reason, SURE, note);
  }

  private Finding alone(Scene scene, ClockSteps.Step back) {
    Interval twice = new Interval(back.atMs() + back.byMs(), back.atMs());
    String by = Wording.duration(Math.abs(back.byMs()));
    String reason =
        Words.text(
            "The clock was set back by %s: the file has the times from %s twice.",
            by, Wording.span(twice, scene.sheet().utcOffset()));
    String note =
        Words.text(
            "Clock set back by %s here: either the readings before are stamped late or those after"
                + " early; mend the stamps in a copy of the file, which brings back the readings"
                + " set aside.",
            by);
    return finding(twice, back.byMs(), reason, SURE, note);
  }

  private Finding finding(Interval span, long byMs, String reason, double strength, String note) {
    boolean matters = Math.abs(byMs) >= ClockDriftCheck.MATTERS_MS;
    return new Finding(
        kind(),
        span,
        List.of(),
        reason,
        strength,
        Proposals.remark(span, note),
        matters ? Optional.of(span) : Optional.empty());
  }

  private List<Finding> goingOn(Scene scene, List<ClockSteps.Step> holes) {
    List<Finding> findings = new ArrayList<>();
    Continuity continuity = new Continuity(scene);
    for (ClockSteps.Step hole : holes) {
      Interval span = new Interval(hole.atMs(), hole.resumedMs());
      Optional<String> words = continuity.goesOn(hole);
      if (words.isPresent() && !scene.explained(span)) {
        String by = Wording.duration(hole.byMs());
        findings.add(
            Finding.harmless(
                kind(),
                Finding.Subject.bucket(span),
                "There's a hole of " + by + ", and " + words.get() + ": the clock jumped forward.",
                LIKELY,
                Proposals.remark(
                    span,
                    "Clock jumped forward by "
                        + by
                        + ", it seems: what follows is stamped late until it was set; mend the"
                        + " stamps in a copy of the file.")));
      }
    }
    return findings;
  }

  private List<Finding> resets(SeasonRecord record, FileAccount file) {
    List<Finding> findings = new ArrayList<>();
    for (SetAside lines : file.setAside()) {
      Optional<Interval> hole =
          lines.reason() == LineReason.BAD_CLOCK ? around(record, file, lines) : Optional.empty();
      if (hole.isPresent()) {
        String reason =
            Words.text(
                "The clock had lost the time: %d lines of %s, from line %d on, have the %s.",
                lines.lines(), lines.file(), lines.firstLine(), lines.detail());
        findings.add(
            Finding.harmless(
                kind(),
                Finding.Subject.bucket(hole.get()),
                reason,
                SURE,
                Proposals.remark(
                    hole.get(),
                    "Clock reset: give the readings set aside their time in a copy of the file.")));
      }
    }
    return findings;
  }

  /** The time between the readings of a file before and after some lines. */
  private static Optional<Interval> around(
      SeasonRecord record, FileAccount account, SetAside lines) {
    int file = record.provenance().files().indexOf(account);
    long before = Long.MIN_VALUE;
    long after = Long.MAX_VALUE;
    for (int row = 0; row < record.size(); row++) {
      if (record.provenance().fileOfRow().get(row) == file) {
        int line = record.provenance().lineOfRow().get(row);
        if (line < lines.firstLine()) {
          before = record.stampMs(row);
        } else if (line > lines.lastLine() && after == Long.MAX_VALUE) {
          after = record.stampMs(row);
        }
      }
    }
    return before < after && before != Long.MIN_VALUE && after != Long.MAX_VALUE
        ? Optional.of(new Interval(before, after))
        : Optional.empty();
  }
}
