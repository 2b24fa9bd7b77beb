package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;

class VisitLitresCheckTest {

  private static final Check CHECK = new VisitLitresCheck();

  private static List<Finding> found(
      double beforeMm, double afterMm, VisitAction action, double antifreezeL, double oilL) {
    return HandMade.every(2, 3)
        .level(h -> h < 34 ? beforeMm : afterMm)
        .entry(
            new Entry.ServiceVisit(
                HandMade.header("a"),
                HandMade.span(33.5, 34.5),
                List.of(action),
                antifreezeL > 0 ? OptionalDouble.of(antifreezeL) : OptionalDouble.empty(),
                oilL > 0 ? OptionalDouble.of(oilL) : OptionalDouble.empty()))
        .found(CHECK);
  }

  @Test
  void anEmptiedBucketShouldReadWhatWasPouredIn() {
    assertThat(found(400, 100, VisitAction.EMPTIED, 2, 0)).isEmpty();
    List<Finding> found = found(400, 100, VisitAction.EMPTIED, 4, 0);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("4.00 L", "156.0 to 224.0 mm", "100.");
    assertThat(found.get(0).doubted()).isEmpty();
  }

  @Test
  void aBucketThatWasntEmptiedShouldRiseByIt() {
    assertThat(found(200, 208, VisitAction.OIL_ADDED, 0, 0.2)).isEmpty();
    List<Finding> found = found(200, 240, VisitAction.OIL_ADDED, 0, 0.2);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).contains("0.20 L", "7.5 to 9.5 mm", "rose by 40.");
  }

  @Test
  void aVisitWithoutLitresSaysNothing() {
    assertThat(found(400, 100, VisitAction.EMPTIED, 0, 0)).isEmpty();
  }
}
