package org.rimebook.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * Composes a simulated season: what fell, what the bucket kept of it, what each wire showed and
 * what the logger took down. Effects apply in the order they are added, those on depth before those
 * on frequency. The same calls with the same seed give the same season on every machine.
 */
public final class SeasonBuilder {

  private static final long HOUR_MS = 3_600_000;
  private static final double DAY_MS = 86_400_000;

  private final Surroundings around;
  private final List<Visit> visits = new ArrayList<>();
  private final List<Loss> losses = new ArrayList<>();
  private final List<Cap> caps = new ArrayList<>();
  private final List<DepthEffect> depthEffects = new ArrayList<>();
  private final List<FrequencyEffect> frequencyEffects = new ArrayList<>();
  private final List<Interval> powerFailures = new ArrayList<>();
  private final Map<String, List<Interval>> outages = new HashMap<>();
  private final BitSet logged = new BitSet();
  private Precipitation fell = Precipitation.of(List.of());
  private double chargeMm;

  /**
   * A season without precipitation, charge or any effect.
   *
   * @param sheet the gauge; its calibrations are the true ones
   * @param weather weather at the readings to make
   * @param seed what every effect draws from
   */
  public SeasonBuilder(StationSheet sheet, Weather weather, long seed) {
    this.around = new Surroundings(sheet, weather, seed);
    logged.set(0, weather.sampling().size());
  }

  /** What effects may look at. */
  public Surroundings surroundings() {
    return around;
  }

  /** What falls. Nothing falls while somebody is at the gauge: visitors wait for a dry hour. */
  public SeasonBuilder fell(Precipitation precipitation) {
    this.fell = precipitation;
    return this;
  }

  /** Charge in the bucket at the start [mm]. */
  public SeasonBuilder charge(double mm) {
    this.chargeMm = mm;
    return this;
  }

  /** Somebody empties the bucket and charges it. */
  public SeasonBuilder visit(Visit visit) {
    visits.add(visit);
    return this;
  }

  /** Water evaporates. */
  public SeasonBuilder evaporation(Evaporation evaporation) {
    losses.add(evaporation);
    return this;
  }

  /** Water leaks away. */
  public SeasonBuilder leak(Leak leak) {
    losses.add(leak);
    return this;
  }

  /** What is lost on a mean day no colder than a temperature [mm/d]; 0 when nothing is. */
  public double evaporationMmPerDay(double degC) {
    Sampling sampling = around.sampling();
    int every = (int) Math.max(1, HOUR_MS / sampling.stepMs());
    double lostMm = 0;
    int count = 0;
    for (int i = 0; !losses.isEmpty() && i < sampling.size(); i += every) {
      if (around.weather().airTemperatureDegC(i) >= degC) {
        for (Loss loss : losses) {
          lostMm += loss.lossMm(around, i);
        }
        count++;
      }
    }
    return count == 0 ? 0 : lostMm / count * DAY_MS / sampling.stepMs();
  }

  /** Snow bridges the orifice. */
  public SeasonBuilder cap(Cap cap) {
    caps.add(cap);
    return this;
  }

  /** Wires show another depth than the bucket's. */
  public SeasonBuilder depth(DepthEffect effect) {
    depthEffects.add(effect);
    return this;
  }

  /** Frequencies are spoilt on the way to the logger. */
  public SeasonBuilder frequency(FrequencyEffect effect) {
    frequencyEffects.add(effect);
    return this;
  }

  /** The power fails: nothing is logged from the interval's start up to its end. */
  public SeasonBuilder powerFailure(Interval interval) {
    powerFailures.add(interval);
    return loggedEvery(Integer.MAX_VALUE, interval);
  }

  /** In the interval only stamps that are a whole number of n steps from the start are logged. */
  public SeasonBuilder loggedEvery(int n, Interval interval) {
    for (int i = 0; i < around.sampling().size(); i++) {
      if (interval.contains(around.sampling().stampMs(i)) && (i + 1L) % n != 0) {
        logged.clear(i);
      }
    }
    return this;
  }

  /** A sensor beside the wires gives nothing. */
  public SeasonBuilder outage(String quantity, Interval interval) {
    outages.computeIfAbsent(quantity, q -> new ArrayList<>()).add(interval);
    return this;
  }

  /** The season. */
  public SimulatedSeason build() {
    Precipitation falling = fell;
    for (Visit visit : visits) {
      falling = falling.without(visit.interval());
    }
    Precipitation entering = falling;
    for (Cap cap : caps) {
      entering = cap.through(entering);
    }
    Bucket.Water water = new Bucket(chargeMm, visits, losses).fill(around, entering);
    Truth truth =
        new Truth(
            falling,
            entering,
            chargeMm,
            water.finalMm(),
            water.evaporatedMm(),
            water.removedMm(),
            water.pouredMm());
    List<double[]> frequencies = new ArrayList<>();
    for (int wire = 0; wire < around.sheet().wires().size(); wire++) {
      frequencies.add(frequencyHz(wire, water.shownMm()));
    }
    double[] supplyV = Supply.volts(around, powerFailures);
    return new SimulatedSeason(
        around, truth, frequencies, new Channels(around.weather(), supplyV, outages), logged);
  }

  private double[] frequencyHz(int wireIndex, double[] bucketMm) {
    double[] values = Arrays.copyOf(bucketMm, bucketMm.length);
    depthEffects.forEach(effect -> effect.apply(around, wireIndex, values));
    Wire wire = around.sheet().wires().get(wireIndex);
    for (int i = 0; i < values.length; i++) {
      long stampMs = around.sampling().stampMs(i);
      values[i] = CalibrationCurve.of(wire.calibrationAt(stampMs)).frequencyHz(values[i]);
    }
    frequencyEffects.forEach(effect -> effect.apply(around, wireIndex, values));
    return values;
  }
}
