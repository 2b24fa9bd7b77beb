package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.findings.Findings;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.Notebook;
import org.rimebook.practice.bench.InMemory;
import org.rimebook.practice.bench.MarkedSeason;
import org.rimebook.practice.bench.Planted;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/**
 * How the checks did on one winter whose notebook is empty.
 *
 * @param of the class
 * @param seed the seed
 * @param tallies by kind
 * @param findings what was found
 * @param missed what had to be found and wasn't
 * @param untouchedPct error of the season's total with nothing marked [%]
 * @param acceptedPct the same with every proposal accepted unseen [%]
 */
public record FaultScore(
    FaultClass of,
    long seed,
    Map<FindingKind, Tally> tallies,
    List<Finding> findings,
    List<Planted> missed,
    double untouchedPct,
    double acceptedPct) {

  public FaultScore {
    tallies = Map.copyOf(tallies);
    findings = List.copyOf(findings);
    missed = List.copyOf(missed);
  }

  /** Scores a winter of a class. */
  public static FaultScore of(FaultClass of, long seed, int days) {
    MarkedSeason winter = of.winter(seed, days);
    try {
      Season season = InMemory.of(winter).with(Notebook.EMPTY);
      SeasonResult untouched = SeasonResult.of(season);
      Findings findings = untouched.findings();
      Map<FindingKind, Tally> tallies = new EnumMap<>(FindingKind.class);
      for (FindingKind kind : FindingKind.values()) {
        tallies.put(kind, Tally.of(kind, winter.planted(), findings.open()));
      }
      SeasonResult accepted =
          SeasonResult.of(season.with(new Notebook(entries(findings.open()), List.of())));
      return new FaultScore(
          of,
          seed,
          tallies,
          findings.open(),
          Tally.missed(winter.planted(), findings.open()),
          errorPct(untouched, winter),
          errorPct(accepted, winter));
    } catch (InputException e) {
      throw new IllegalStateException("a simulated season was refused: " + of + seed, e);
    }
  }

  private static List<Entry> entries(Collection<Finding> findings) {
    List<Entry> entries = new ArrayList<>();
    for (Finding finding : findings) {
      Entry.Header header = new Entry.Header("accepted-" + entries.size(), "", "rb", "");
      entries.add(EntryCopy.with(finding.proposal(), header));
    }
    return entries;
  }

  private static double errorPct(SeasonResult result, MarkedSeason winter) {
    Interval span =
        new Interval(result.series().fromMs(0), result.series().toMs(result.series().size() - 1));
    double truthMm = winter.season().truth().catchMm(span);
    double totalMm =
        result.totals(Resolution.HUNDREDTH).seasonUnits().orElse(0) * Resolution.HUNDREDTH.mm();
    return 100 * (totalMm / truthMm - 1);
  }
}
