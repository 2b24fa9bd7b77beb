package org.rimebook.export.leaflet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.export.report.Table;
import org.rimebook.upkeep.WeightFit;

/**
 * A page or two for those who look after a gauge.
 *
 * @param title what it is
 * @param station the station it is about
 * @param parts what it says, in order
 */
public record Leaflet(String title, String station, List<Part> parts) {

  public Leaflet {
    parts = List.copyOf(parts);
  }

  /** A part of a leaflet. */
  public sealed interface Part {}

  /** A heading. */
  public record Heading(String words) implements Part {}

  /** A paragraph. */
  public record Words(String words) implements Part {}

  /** A paragraph in small type. */
  public record Fine(String words) implements Part {}

  /**
   * A step to be done, with a box to tick on paper.
   *
   * @param words what is to be done
   * @param done whether the box is ticked already
   */
  public record Step(String words, boolean done) implements Part {}

  /** What can hurt. */
  public record Caution(String words) implements Part {}

  /** A table. */
  public record Grid(Table table) implements Part {}

  /**
   * A figure of check weights; on paper only.
   *
   * @param fit the weights and their curve
   * @param sheet the curve of the wire's sheet
   */
  public record Weights(WeightFit fit, CalibrationCurve sheet) implements Part {}

  /** Blanks to be filled in by hand. */
  public record Blanks(List<String> labels) implements Part {

    public Blanks {
      labels = List.copyOf(labels);
    }
  }

  /** Collects a leaflet. */
  static final class Builder {
    private final List<Part> parts = new ArrayList<>();

    Builder heading(String words) {
      parts.add(new Heading(words));
      return this;
    }

    Builder words(String words) {
      parts.add(new Words(words));
      return this;
    }

    Builder fine(String words) {
      parts.add(new Fine(words));
      return this;
    }

    Builder steps(List<String> steps) {
      return steps(steps, Set.of());
    }

    /** Steps of which those at some places, counted from 0, are done. */
    Builder steps(List<String> steps, Set<Integer> done) {
      for (int i = 0; i < steps.size(); i++) {
        parts.add(new Step(steps.get(i), done.contains(i)));
      }
      return this;
    }

    Builder cautions(List<String> cautions) {
      cautions.forEach(caution -> parts.add(new Caution(caution)));
      return this;
    }

    Builder table(Table table) {
      parts.add(new Grid(table));
      return this;
    }

    Builder weights(WeightFit fit, CalibrationCurve sheet) {
      parts.add(new Weights(fit, sheet));
      return this;
    }

    Builder blanks(String... labels) {
      parts.add(new Blanks(List.of(labels)));
      return this;
    }

    Leaflet done(String title, String station) {
      return new Leaflet(title, station, parts);
    }
  }
}
