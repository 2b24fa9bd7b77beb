package org.rimebook.accumulation;

/**
 * A parameter learnt from the record.
 *
 * @param value its value
 * @param standardUncertainty standard uncertainty (k = 1), in the unit of the value
 */
public record Fitted(double value, double standardUncertainty) {

  /** The parameter in another unit. */
  public Fitted times(double factor) {
    return new Fitted(factor * value, Math.abs(factor) * standardUncertainty);
  }
}
