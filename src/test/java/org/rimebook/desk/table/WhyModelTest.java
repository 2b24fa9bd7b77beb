package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.WhyModel;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.season.why.Explanation;
import org.rimebook.station.Interval;

class WhyModelTest {

  private static Bucket bucket() {
    return Bucket.every(15, 72).level(Bucket.rain(30, 34, 1)).noise(0.01);
  }

  private final Desk desk = Desk.with(bucket(), Path.of("nowhere"));
  private final WhyModel model = new WhyModel(desk.workspace, desk);

  private Optional<Explanation> ask(Interval interval) {
    desk.workspace.asked().set(Optional.of(interval));
    return model.explanation().get();
  }

  @Test
  void anHourAndADayAreExplainedAndAnythingOutsideTheRecordIsnt() {
    assertThat(ask(Bucket.span(31, 32)).map(Explanation::interval)).contains(Bucket.span(31, 32));
    assertThat(ask(Bucket.span(24, 48)).map(Explanation::interval)).contains(Bucket.span(24, 48));
    assertThat(ask(Bucket.span(2400, 2401))).isEmpty();
    desk.workspace.asked().set(Optional.empty());
    assertThat(model.explanation().get()).isEmpty();
  }

  @Test
  void itStaysWhileAnEntryIsBeingMadeAndFollowsOnceItIsMade() {
    Optional<Explanation> before = ask(Bucket.span(31, 32));
    Bucket dry = bucket().entry(new Entry.DrySpell(Bucket.header("d"), Bucket.span(25, 45)));
    desk.compute(dry.result(), Computed.State.FORESEEN);
    assertThat(model.explanation().get()).isEqualTo(before);
    desk.compute(dry.result(), Computed.State.CLOSE);
    assertThat(model.explanation().get()).isPresent().isNotEqualTo(before);
  }
}
