package org.rimebook.accumulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * How the level moves while nothing falls, learnt from dry time: in proportion to the covariates,
 * and by a daily wave with a mean, which is evaporation. Fitted to changes of hourly means over
 * three hours that lie wholly in dry time, by least squares with small penalties and with Huber's
 * weights, so that drizzle taken for dry time pulls little (Huber 1964, Ann. Math. Stat. 35, 73;
 * citation from memory).
 *
 * <p>Limits and prior spreads are our own choice.
 */
final class DriftModel {

  private static final long HOUR_MS = 3_600_000;
  private static final int FEWEST = 100;
  private static final int ROUNDS = 4;
  private static final double HUBER = 1.5;

  /** Standard deviations the coefficients are expected to have beforehand. */
  private static final double TEMPERATURE_PER_C = 1e-4;

  private static final double DEPARTURE_MM_PER_MM = 2;
  private static final double WAVE_MM_PER_H = 0.05;

  /**
   * Evaporation over wet water in moist air is somewhere between none and as much as on dry days at
   * the same hour: half is taken.
   */
  private static final double WET_SHARE = 0.5;

  private final Covariates covariates;
  private final LevelNodes nodes;
  private final double[] coefficients;
  private final double[] uncertainties;
  private final int dryHours;

  private DriftModel(Covariates covariates, LevelNodes nodes, Solution solution, int dryHours) {
    this.covariates = covariates;
    this.nodes = nodes;
    this.coefficients = solution.coefficients();
    this.uncertainties = solution.uncertainties();
    this.dryHours = dryHours;
  }

  private record Solution(double[] coefficients, double[] uncertainties) {}

  /**
   * Learns the drift.
   *
   * @param nodes the level as read
   * @param covariates what may move it
   * @param varianceMm2 variance of each node's level [mm²]
   * @param wet probability of each link to be wet
   */
  static DriftModel fit(
      LevelNodes nodes, Covariates covariates, double[] varianceMm2, double[] wet) {
    DryChanges changes = DryChanges.of(nodes, covariates, varianceMm2, wet);
    int terms = covariates.columns().size() + DailyTerms.COUNT;
    Solution solution =
        changes.size() >= FEWEST
            ? solve(changes, expectedSd(covariates, terms))
            : new Solution(new double[terms], new double[terms]);
    return new DriftModel(covariates, nodes, solution, changes.size());
  }

  private static double[] expectedSd(Covariates covariates, int terms) {
    double[] sd = new double[terms];
    for (int term = 0; term < terms; term++) {
      sd[term] =
          term >= covariates.columns().size()
              ? WAVE_MM_PER_H
              : term == 0 && covariates.hasTemperature() ? TEMPERATURE_PER_C : DEPARTURE_MM_PER_MM;
    }
    return sd;
  }

  /** Penalised least squares; every term is scaled so that its coefficient is of order one. */
  private static Solution solve(DryChanges changes, double[] expectedSd) {
    int terms = expectedSd.length;
    double[] coefficients = new double[terms];
    double[] uncertainties = new double[terms];
    for (int round = 0; round < ROUNDS; round++) {
      RealVector right = new ArrayRealVector(terms);
      RealMatrix normal = normal(changes, expectedSd, coefficients, right);
      DecompositionSolver solver = new CholeskyDecomposition(normal).getSolver();
      coefficients = solver.solve(right).toArray();
      RealMatrix covariance = solver.getInverse();
      for (int a = 0; a < terms; a++) {
        coefficients[a] *= expectedSd[a];
        uncertainties[a] = expectedSd[a] * Math.sqrt(covariance.getEntry(a, a));
      }
    }
    return new Solution(coefficients, uncertainties);
  }

  /** The normal matrix for residuals of the coefficients; fills in the right-hand side. */
  private static RealMatrix normal(
      DryChanges changes, double[] expectedSd, double[] coefficients, RealVector right) {
    double scale = changes.spread(coefficients);
    RealMatrix normal = MatrixUtils.createRealIdentityMatrix(expectedSd.length);
    for (int s = 0; s < changes.size(); s++) {
      double residual = changes.residual(s, coefficients);
      double pull = HUBER * scale / Math.max(Math.abs(residual), 1e-12);
      // Overlapping three-hour changes tell each hour three times.
      double weight = Math.min(1, pull) / (DryChanges.LAG * scale * scale);
      for (int a = 0; a < expectedSd.length; a++) {
        double wa = weight * changes.term(s, a) * expectedSd[a];
        right.addToEntry(a, wa * changes.changeMm(s));
        for (int b = 0; b <= a; b++) {
          normal.addToEntry(a, b, wa * changes.term(s, b) * expectedSd[b]);
        }
      }
    }
    for (int a = 0; a < expectedSd.length; a++) {
      for (int b = 0; b < a; b++) {
        normal.setEntry(b, a, normal.getEntry(a, b));
      }
    }
    return normal;
  }

  /** The same drift at other nodes. */
  DriftModel at(LevelNodes otherNodes, Covariates there) {
    return new DriftModel(there, otherNodes, new Solution(coefficients, uncertainties), dryHours);
  }

  /** What was learnt, with standard uncertainties from the inverse of the normal matrix. */
  DriftLaw law() {
    if (dryHours < FEWEST) {
      return new DriftLaw(dryHours, Optional.empty(), List.of(), List.of());
    }
    int first = covariates.hasTemperature() ? 1 : 0;
    List<DriftLaw.Departure> departures = new ArrayList<>();
    for (int d = 0; d < covariates.departures().size(); d++) {
      departures.add(new DriftLaw.Departure(covariates.departures().get(d), fitted(first + d)));
    }
    return new DriftLaw(
        dryHours,
        covariates.hasTemperature() ? Optional.of(fitted(0)) : Optional.empty(),
        departures,
        IntStream.range(covariates.columns().size(), coefficients.length)
            .mapToObj(this::fitted)
            .toList());
  }

  /**
   * Standard uncertainty of all catch together, as a share of it, from not knowing at what
   * temperature the depths are right.
   *
   * @param statedPerDegC mean of what the wires' sheets state was taken off before [1/°C]
   */
  double calibrationShare(double statedPerDegC) {
    boolean known = dryHours >= FEWEST && covariates.hasTemperature();
    double learnt = known ? coefficients[0] : 0;
    double doubt = known ? uncertainties[0] : 0;
    return Covariates.CALIBRATED_U_C * Math.hypot(statedPerDegC + learnt, doubt);
  }

  private Fitted fitted(int term) {
    return new Fitted(coefficients[term], uncertainties[term]);
  }

  /**
   * The level without its drift [mm].
   *
   * @param wet probability of each link to be wet
   */
  double[] corrected(double[] wet) {
    double[] level = nodes.levelMm().clone();
    double[] wave = waveMm(wet);
    List<double[]> columns = covariates.columns();
    for (int i = 0; i < level.length; i++) {
      double moved = wave[i];
      for (int c = 0; c < columns.size(); c++) {
        moved += coefficients[c] * columns.get(c)[i];
      }
      level[i] -= moved;
    }
    return level;
  }

  /**
   * The drift that {@link #corrected} takes off, by what goes with it.
   *
   * @param wet probability of each link to be wet
   */
  LevelJudgement.Drift drift(double[] wet) {
    double[] temperature = new double[nodes.size()];
    double[] departures = new double[nodes.size()];
    for (int c = 0; c < covariates.columns().size(); c++) {
      double[] part = c == 0 && covariates.hasTemperature() ? temperature : departures;
      for (int i = 0; i < part.length; i++) {
        part[i] += coefficients[c] * covariates.columns().get(c)[i];
      }
    }
    return new LevelJudgement.Drift(temperature, departures, waveMm(wet));
  }

  /** What the daily wave has added by each node [mm]. */
  private double[] waveMm(double[] wet) {
    double[] moist = MoistAir.of(nodes, wet);
    double[] wave = new double[nodes.size()];
    for (int i = 1; i < wave.length; i++) {
      double share = 1 - (1 - WET_SHARE) * moist[i - 1];
      wave[i] = wave[i - 1] + share * waveMm(i);
    }
    return wave;
  }

  /**
   * How much evaporation may have been taken for too little or too much while it fell [mm], by
   * link: the share of the daily wave that was taken there.
   *
   * @param wet probability of each link to be wet
   */
  double[] wetDoubtMm(double[] wet) {
    double[] moist = MoistAir.of(nodes, wet);
    double[] doubt = new double[nodes.size()];
    for (int i = 1; i < doubt.length; i++) {
      if (nodes.links()[i - 1] == LevelNodes.Link.STEP) {
        doubt[i - 1] = WET_SHARE * moist[i - 1] * waveMm(i);
      }
    }
    return doubt;
  }

  /** Daily wave over the link before a node, added up hour by hour where the link is long. */
  private double waveMm(int node) {
    double hours = nodes.hours(node - 1);
    int parts = (int) Math.ceil(hours);
    double sum = 0;
    for (int part = 0; part < parts; part++) {
      double middle = hours * (part + 0.5) / parts;
      sum += waveMmPerH(nodes.timeMs()[node - 1] + Math.round(middle * HOUR_MS));
    }
    return sum * hours / Math.max(1, parts);
  }

  private double waveMmPerH(long epochMs) {
    double rate = 0;
    double[] basis = new double[DailyTerms.COUNT];
    DailyTerms.addTo(basis, 0, epochMs);
    for (int w = 0; w < basis.length; w++) {
      rate += coefficients[covariates.columns().size() + w] * basis[w];
    }
    return rate;
  }
}
