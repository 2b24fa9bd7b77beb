package org.rimebook.accumulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.rimebook.depth.AirTemperature;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.Robust;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.Column;
import org.rimebook.station.Channel;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * What may move the level at each node without anything falling: the air temperature, which moves
 * the reading in proportion to the load, and the departures of the wires from each other, which
 * follow the sun and whatever else pulls at them unequally. The departures are smoothed over an
 * hour, so that their own noise doesn't come in, and taken without what is slower than a day.
 *
 * <p>Limits are our own choice.
 */
final class Covariates {

  private static final long HALF_HOUR_MS = 1_800_000;
  private static final long DAY_AND_A_HALF_MS = 36 * 3_600_000;

  /** Departures beyond this many times their usual size are a fault, not the sun. */
  private static final double USUAL = 5;

  private static final Range AIR = new Range(AirTemperature.LEAST_DEG_C, AirTemperature.MOST_DEG_C);

  /**
   * Standard uncertainty of the temperature depths are right at, rectangular (JCGM 100:2008, 4.3.7)
   * [°C].
   */
  static final double CALIBRATED_U_C = 10 / Math.sqrt(3);

  /** No wind lasts a minute that is stronger [m/s]. */
  private static final Range WIND = new Range(0, 100);

  private final LevelNodes nodes;
  private final NodeMeans means;
  private final List<double[]> columns = new ArrayList<>();
  private final List<String> departures = new ArrayList<>();
  private final List<Double> mostMm = new ArrayList<>();
  private final List<Double> tilts = new ArrayList<>();
  private boolean temperature;
  private Optional<double[]> wind = Optional.empty();

  /** What a sensor may say. */
  private record Range(double least, double most) {
    double valueOrNaN(double value) {
      return value >= least && value <= most ? value : Double.NaN;
    }
  }

  private Covariates(LevelNodes nodes) {
    this.nodes = nodes;
    this.means = new NodeMeans(nodes);
  }

  /** None. */
  static Covariates none(LevelNodes nodes) {
    return new Covariates(nodes);
  }

  static Covariates of(LevelNodes nodes, LevelEvidence evidence) {
    Covariates covariates = new Covariates(nodes);
    StationSheet sheet = evidence.sheet();
    WireDepths depths = evidence.depths();
    LevelSeries level = evidence.level();
    if (!sheet.statesTemperature()) {
      covariates.takeTemperature(evidence);
    }
    covariates.wind = covariates.channel(Channel.WIND_SPEED, WIND, evidence);
    for (int wire = 0; wire + 1 < depths.wires(); wire++) {
      if (covariates.addDeparture(wire, depths, level)) {
        covariates.departures.add(sheet.wires().get(wire).name());
      }
    }
    return covariates;
  }

  /** The air temperature and nothing else. */
  static Covariates ofTemperature(LevelNodes nodes, LevelEvidence evidence) {
    Covariates covariates = new Covariates(nodes);
    covariates.takeTemperature(evidence);
    return covariates;
  }

  private void takeTemperature(LevelEvidence evidence) {
    channel(Channel.AIR_TEMPERATURE, AIR, evidence).ifPresent(this::addTemperature);
  }

  /**
   * The covariates of some nodes of a season.
   *
   * @param nodes the nodes
   * @param evidence what there is
   * @param season the covariates of the season as it was
   * @param twin of each node, its like in the season or the last before it
   * @param fresh the nodes at which departures are taken anew; elsewhere the season's hold
   */
  static Covariates within(
      LevelNodes nodes, LevelEvidence evidence, Covariates season, int[] twin, IntPredicate fresh) {
    Covariates here = new Covariates(nodes);
    StationSheet sheet = evidence.sheet();
    if (season.temperature) {
      double[] held = season.columns.get(0);
      here.channel(Channel.AIR_TEMPERATURE, AIR, evidence)
          .ifPresentOrElse(here::addTemperature, () -> here.hold(held, twin));
    }
    here.wind =
        season.wind.map(
            held -> here.channel(Channel.WIND_SPEED, WIND, evidence).orElse(at(held, twin)));
    List<String> names = sheet.wires().stream().map(Wire::name).toList();
    int first = season.temperature ? 1 : 0;
    for (int d = 0; d < season.departures.size(); d++) {
      double[] values =
          here.departures(
              names.indexOf(season.departures.get(d)), evidence.depths(), evidence.level());
      boolean known = here.means.fill(values);
      double[] column = known ? here.daily(here.upright(values, season.tilts.get(d))) : values;
      double most = season.mostMm.get(d);
      double[] held = season.columns.get(first + d);
      for (int i = 0; i < column.length; i++) {
        boolean anew = known && fresh.test(i);
        column[i] = anew ? Math.max(-most, Math.min(most, column[i])) : held[twin[i]];
      }
      here.columns.add(column);
    }
    return here;
  }

  private static double[] at(double[] held, int[] twin) {
    return Arrays.stream(twin).mapToDouble(t -> held[t]).toArray();
  }

  private void hold(double[] temperatureColumn, int[] twin) {
    columns.add(at(temperatureColumn, twin));
    temperature = true;
  }

  /**
   * Whether the first column is the load times the temperature above that of calibration [mm °C].
   */
  boolean hasTemperature() {
    return temperature;
  }

  /** Wind at each node [m/s], finite; empty when none was recorded. */
  Optional<double[]> windMs() {
    return wind;
  }

  /** Names of the wires whose departures the other columns are. */
  List<String> departures() {
    return departures;
  }

  /** One array a covariate, one element a node; finite. */
  List<double[]> columns() {
    return columns;
  }

  private Optional<double[]> channel(String quantity, Range range, LevelEvidence evidence) {
    Optional<Integer> channel = evidence.sheet().channelIndex(quantity);
    if (channel.isEmpty()) {
      return Optional.empty();
    }
    Column column = evidence.record().channel(channel.get());
    double[] values = means.ofReadings(evidence.level(), row -> range.valueOrNaN(column.get(row)));
    return means.fill(values) ? Optional.of(values) : Optional.empty();
  }

  private void addTemperature(double[] celsius) {
    for (int node = 0; node < nodes.size(); node++) {
      celsius[node] = (celsius[node] - AirTemperature.CALIBRATED_DEG_C) * nodes.levelMm()[node];
    }
    columns.add(celsius);
    temperature = true;
  }

  private boolean addDeparture(int wire, WireDepths depths, LevelSeries level) {
    double[] values = departures(wire, depths, level);
    boolean known = means.fill(values);
    if (known) {
      double tilt = LoadTilt.of(nodes, hourlyLevel(), means.about(values, HALF_HOUR_MS));
      double[] daily = daily(upright(values, tilt));
      double[] magnitudes = Arrays.stream(daily).map(Math::abs).toArray();
      double most = USUAL * Robust.sdFromMagnitudesInPlace(magnitudes, magnitudes.length);
      for (int i = 0; i < daily.length; i++) {
        daily[i] = Math.max(-most, Math.min(most, daily[i]));
      }
      columns.add(daily);
      mostMm.add(most);
      tilts.add(tilt);
    }
    return known;
  }

  private double[] departures(int wire, WireDepths depths, LevelSeries level) {
    return means.ofReadings(level, row -> departure(wire, depths, row));
  }

  private double[] hourlyLevel() {
    return means.about(nodes.levelMm(), HALF_HOUR_MS);
  }

  /** A departure without what goes with the load. */
  private double[] upright(double[] departureMm, double tilt) {
    double[] straight = departureMm.clone();
    for (int i = 0; i < straight.length; i++) {
      straight[i] -= tilt * nodes.levelMm()[i];
    }
    return straight;
  }

  /**
   * What goes to and fro within days: a wire that creeps or jumps is at fault, and its departure
   * says nothing of the others.
   */
  private double[] daily(double[] departureMm) {
    double[] hourly = means.about(departureMm, HALF_HOUR_MS);
    double[] slow = means.about(departureMm, DAY_AND_A_HALF_MS);
    for (int i = 0; i < hourly.length; i++) {
      hourly[i] -= slow[i];
    }
    return hourly;
  }

  /** Departure of a wire from the mean of all [mm]; NaN unless all are used. */
  private static double departure(int wire, WireDepths depths, int row) {
    double sum = 0;
    for (int w = 0; w < depths.wires(); w++) {
      if (!depths.used(w, row)) {
        return Double.NaN;
      }
      sum += depths.depthMm(w, row);
    }
    return depths.depthMm(wire, row) - sum / depths.wires();
  }
}
