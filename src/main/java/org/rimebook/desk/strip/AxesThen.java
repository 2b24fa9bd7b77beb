package org.rimebook.desk.strip;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.model.StripSetting.Kind;

/**
 * How the axes of values stood at a time, so that going back to a view brings them back too.
 *
 * @param strips the strips they are of
 * @param fitting the strips whose axis fitted what was in view
 * @param staying what the axes of the others spanned
 */
record AxesThen(Strips strips, Set<Kind> fitting, Map<Kind, Extent> staying) implements Runnable {

  /** How they stand now. */
  static AxesThen of(Strips strips) {
    Set<Kind> fitting = EnumSet.noneOf(Kind.class);
    Map<Kind, Extent> staying = new EnumMap<>(Kind.class);
    for (Strips.Shown strip : strips.shown()) {
      Kind kind = strip.setting().kind();
      if (strip.setting().fits()) {
        fitting.add(kind);
      } else {
        staying.put(kind, strip.plot().range());
      }
    }
    return new AxesThen(strips, fitting, staying);
  }

  /** Has them stand so again; strips not on screen then are left as they are. */
  @Override
  public void run() {
    for (Strips.Shown strip : strips.shown()) {
      Kind kind = strip.setting().kind();
      if (staying.containsKey(kind)) {
        strips.change(strip.setting().staying(staying.get(kind)));
      } else if (fitting.contains(kind) && !strip.setting().fits()) {
        strips.change(strip.setting().fitting(true));
      }
    }
  }
}
