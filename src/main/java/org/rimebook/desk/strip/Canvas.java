package org.rimebook.desk.strip;

import java.awt.Rectangle;
import org.rimebook.station.Interval;

/**
 * The plot of one strip in pixels of the device, so that columns are columns at any scale.
 *
 * @param plot where it lies on the device
 * @param visible the time it shows
 * @param low value at its bottom
 * @param high value at its top
 * @param scale device pixels a pixel
 */
record Canvas(Rectangle plot, Interval visible, double low, double high, double scale) {

  /** Where an instant lies; may be far outside. */
  double x(long epochMs) {
    return plot.x + (epochMs - visible.fromMs()) * (double) plot.width / visible.lengthMs();
  }

  /** Where a value lies; at most a height outside, so that lines stay drawable. */
  double y(double value) {
    double share = (value - low) / (high - low);
    return plot.y + plot.height * (1 - Math.max(-1, Math.min(2, share)));
  }

  /** The pixel row of a value. */
  int row(double value) {
    return (int) Math.floor(Math.min(y(value), 1e8));
  }

  /** Device pixels of a length in pixels, at least one. */
  int thick(double length) {
    return Math.max(1, (int) Math.round(length * scale));
  }
}
