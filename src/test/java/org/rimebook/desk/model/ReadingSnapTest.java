package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.span;

import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.station.Interval;

/** Readings every quarter of an hour from hour 0 to hour 10. */
class ReadingSnapTest {

  private final ReadingSnap snap = new ReadingSnap(Bucket.every(15, 10).result().season().record());

  @Test
  void aStartIsTheStampOfTheNearestReading() {
    assertThat(snap.start(ms(1.1))).isEqualTo(ms(1));
    assertThat(snap.start(ms(1.2))).isEqualTo(ms(1.25));
    assertThat(snap.start(ms(-50))).isEqualTo(ms(0));
    assertThat(snap.start(ms(50))).isEqualTo(ms(10));
  }

  @Test
  void anEndLiesASecondAfterTheNearestReading() {
    assertThat(snap.end(ms(1.1))).isEqualTo(ms(1) + 1000);
    assertThat(snap.end(ms(50))).isEqualTo(ms(10) + 1000);
  }

  @Test
  void twoPlacesInEitherOrderGiveTheReadingsFromOneToTheOther() {
    Interval between = new Interval(ms(1), ms(2) + 1000);
    assertThat(snap.between(ms(1.05), ms(1.98))).isEqualTo(between);
    assertThat(snap.between(ms(1.98), ms(1.05))).isEqualTo(between);
    assertThat(snap.between(ms(1.05), ms(1.05))).isEqualTo(new Interval(ms(1), ms(1) + 1000));
  }

  @Test
  void anEdgeMovesReadingByReadingAndLeavesOneInside() {
    Interval first = snap.between(ms(1), ms(1.5));
    assertThat(snap.endMoved(first, 1)).isEqualTo(snap.between(ms(1), ms(1.75)));
    assertThat(snap.endMoved(first, -9)).isEqualTo(snap.between(ms(1), ms(1)));
    assertThat(snap.startMoved(first, -1)).isEqualTo(snap.between(ms(0.75), ms(1.5)));
    assertThat(snap.startMoved(first, 9)).isEqualTo(snap.between(ms(1.5), ms(1.5)));
    assertThat(snap.endMoved(snap.between(ms(9), ms(10)), 5))
        .isEqualTo(snap.between(ms(9), ms(10)));
  }

  @Test
  void edgesWrittenByHandBetweenReadingsMoveToReadings() {
    Interval between = span(1.1, 2.1);
    assertThat(snap.withEnd(between, ms(3))).isEqualTo(new Interval(ms(1.1), ms(3) + 1000));
    assertThat(snap.withStart(between, ms(0.4))).isEqualTo(new Interval(ms(0.5), ms(2.1)));
    assertThat(snap.withStart(between, ms(9))).isEqualTo(new Interval(ms(2), ms(2.1)));
    assertThat(snap.withEnd(between, ms(0))).isEqualTo(new Interval(ms(1.1), ms(1.25) + 1000));
  }

  @Test
  void readingsCloserThanASecondAreToldApart() {
    Interval one = new ReadingSnap(Seconds.record()).between(500_100, 500_100);
    assertThat(one).isEqualTo(new Interval(500_000, 500_500));
  }
}
