package org.rimebook.desk.model.against;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;

class BrushTest {

  private static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  private static Brush.Found over(Bucket bucket, Range departureMm) {
    Readings readings = Fixtures.readings(bucket);
    return Brush.over(
        List.of(readings.pair(0, 1)),
        new Brush.Rectangle(ANY, departureMm),
        Fixtures.all(readings),
        readings.record());
  }

  private static Bucket pulled(Bucket bucket, double from, double to) {
    return bucket.pull(0, from, 2).pull(0, to, -2);
  }

  @Test
  void readingsThatFollowEachOtherMakeOneStretchUpToTheReadingAfter() {
    Bucket bucket = pulled(pulled(Bucket.every(30, 24), 3, 5), 10, 12);

    Brush.Found found = over(bucket, new Range(1.5, 2.5));

    assertThat(found.stretches()).containsExactly(Bucket.span(3, 5), Bucket.span(10, 12));
    assertThat(found.readings()).isEqualTo(8);
    assertThat(found.words()).isEqualTo("8 readings in 2 stretches selected");
  }

  @Test
  void aGapPartsStretches() {
    Brush.Found found = over(Bucket.every(30, 24).silent(6, 12), new Range(-1, 1));

    assertThat(found.stretches()).containsExactly(Bucket.span(0, 6.5), Bucket.span(12, 24.5));
  }

  @Test
  void aMissingReadingPartsNothing() {
    Brush.Found found = over(Bucket.every(30, 24).silent(6, 7), new Range(-1, 1));

    assertThat(found.stretches()).containsExactly(Bucket.span(0, 24.5));
  }

  @Test
  void aReadingOutsideTheRectanglePartsStretches() {
    Brush.Found found = over(pulled(Bucket.every(30, 24), 6, 6.5), new Range(-1, 1));

    assertThat(found.stretches()).containsExactly(Bucket.span(0, 6), Bucket.span(6.5, 24.5));
  }

  @Test
  void ofTooManyStretchesTheLongestAreTakenAndItIsSaid() {
    Bucket bucket = Bucket.every(30, 600);
    for (int hour = 0; hour < 500; hour += 2) {
      pulled(bucket, hour, hour + 0.5);
    }
    pulled(bucket, 500, 510);

    Brush.Found found = over(bucket, new Range(1.5, 2.5));

    assertThat(found.found()).isEqualTo(251);
    assertThat(found.stretches()).hasSize(Brush.MOST_STRETCHES).contains(Bucket.span(500, 510));
    assertThat(found.words()).contains("the 200 longest are selected");
  }

  @Test
  void whereNothingLiesItIsSaid() {
    Brush.Found found = over(Bucket.every(30, 24), new Range(50, 60));

    assertThat(found.stretches()).isEmpty();
    assertThat(found.words()).startsWith("No readings there");
  }
}
