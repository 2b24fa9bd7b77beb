package org.rimebook.upkeep;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.rimebook.depth.LevelsBeside;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.SeasonDepths;

/**
 * What is in the bucket at the end of the record.
 *
 * @param atMs the last reading [ms since epoch]
 * @param depthMm depth [mm]
 * @param antifreezeL pure antifreeze poured in since the bucket was last emptied [L]
 * @param waterL water: what came with the antifreeze and what was caught since [L]
 * @param chargedMs end of the visit at which it was last emptied, or the start of the record [ms
 *     since epoch]
 */
public record BucketNow(
    long atMs, double depthMm, double antifreezeL, double waterL, long chargedMs) {

  /**
   * What is in the bucket.
   *
   * @param season the season
   * @param like the antifreeze and oil that are used there; its litres are those in the bucket when
   *     the record begins, which count when no visit empties it
   * @throws IllegalArgumentException in words when it can't be told
   */
  public static BucketNow of(SeasonDepths season, Poured like) {
    SeasonRecord record = season.season().record();
    LevelsBeside levels = new LevelsBeside(record, season.depths());
    int wires = season.season().sheet().wires().size();
    double areaCm2 = season.season().sheet().gauge().orificeAreaCm2();
    double depthMm = known(LastLevels.of(season).meanMm(), "at the end of the record");
    List<Entry.ServiceVisit> visits = visits(season);
    int emptied = lastEmptied(visits);
    if (emptied < 0 && !(like.antifreezeL() > 0)) {
      throw new IllegalArgumentException(
          "no visit of the notebook empties the bucket, so what is in it isn't known: add the"
              + " visit, or give the litres in it when the record begins (on the command line,"
              + " --antifreeze-l)");
    }
    Poured first = emptied < 0 ? like : like.at(visits.get(emptied));
    double chargedMm =
        emptied < 0
            ? known(LevelsBeside.mean(wires(wires, levels::first)), "when the record begins")
            : known(
                LevelsBeside.mean(
                    wires(wires, w -> levels.after(w, visits.get(emptied).interval()))),
                "after the visit that emptied the bucket");
    double pureL = first.pureL();
    double withL = first.waterL();
    double laterMm = 0;
    for (Entry.ServiceVisit visit : visits.subList(emptied + 1, visits.size())) {
      pureL += like.at(visit).pureL();
      withL += like.at(visit).waterL();
      laterMm += like.at(visit).riseMm(areaCm2);
    }
    double caughtMm = Math.max(0, depthMm - chargedMm - laterMm);
    long sinceMs = emptied < 0 ? record.stampMs(0) : visits.get(emptied).interval().toMs();
    return new BucketNow(
        record.stampMs(record.size() - 1),
        depthMm,
        pureL,
        withL + Water.massKg(caughtMm, areaCm2),
        sinceMs);
  }

  private static double known(OptionalDouble mm, String when) {
    return mm.orElseThrow(
        () -> new IllegalArgumentException("no wire can be read " + when + ": mark it, or wait"));
  }

  private interface Reading {
    OptionalDouble of(int wire);
  }

  private static OptionalDouble[] wires(int count, Reading reading) {
    return IntStream.range(0, count).mapToObj(reading::of).toArray(OptionalDouble[]::new);
  }

  private static List<Entry.ServiceVisit> visits(SeasonDepths season) {
    return season.season().notebook().inForce().stream()
        .filter(Entry.ServiceVisit.class::isInstance)
        .map(Entry.ServiceVisit.class::cast)
        .sorted((a, b) -> Long.compare(a.interval().fromMs(), b.interval().fromMs()))
        .toList();
  }

  private static int lastEmptied(List<Entry.ServiceVisit> visits) {
    return IntStream.range(0, visits.size())
        .filter(i -> visits.get(i).actions().contains(VisitAction.EMPTIED))
        .max()
        .orElse(-1);
  }
}
