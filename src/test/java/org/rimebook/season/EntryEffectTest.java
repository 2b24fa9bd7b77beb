package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

class EntryEffectTest {

  private static Bucket bucket() {
    return Bucket.every(10, 24 * 8).level(Bucket.rain(50, 54, 2.5, 120, 124, 1)).noise(0.02);
  }

  @Test
  void anEntrysEffectIsTheTotalWithItLessThatWithoutIt() {
    Entry dry = new Entry.DrySpell(Bucket.header("dry"), Bucket.span(48, 60));
    SeasonResult with = bucket().entry(dry).result();
    EntryEffect effect = EntryEffect.all(with, Resolution.HUNDREDTH, Progress.NONE).get(0);
    long without = bucket().totals().seasonUnits().orElseThrow();
    assertThat(effect.withUnits()).isEqualTo(with.totals(Resolution.HUNDREDTH).seasonUnits());
    assertThat(effect.withoutUnits().orElseThrow()).isBetween(without - 10, without + 10);
    assertThat(effect.units().orElseThrow()).isBetween(-1010L, -990L);
  }

  @Test
  void onlyEntriesAboutTimeAreTriedWithout() {
    SeasonResult result =
        bucket()
            .entry(new Entry.Dismissal(Bucket.header("no"), "silence/a/b"))
            .entry(new Entry.LateCatch(Bucket.header("late"), Bucket.span(50, 54)))
            .result();
    List<EntryEffect> effects = EntryEffect.all(result, Resolution.TENTH, Progress.NONE);
    assertThat(effects).extracting(e -> e.entry().header().id()).containsExactly("late");
  }

  @Test
  void aSeasonWithoutAnEntryComesToWhatItsHoursAddUpTo() throws InputException {
    SeasonResult result = SeasonResult.of(Season.open(Path.of("sample-sets", "hard-winter")));
    for (EntryEffect effect : EntryEffect.all(result, Resolution.HUNDREDTH, Progress.NONE)) {
      List<Entry> others =
          result.season().notebook().history().stream().filter(e -> e != effect.entry()).toList();
      SeasonResult without = result.revised(new Notebook(others, List.of()));
      assertThat(effect.withoutUnits())
          .as(effect.entry().header().id())
          .isEqualTo(without.totals(Resolution.HUNDREDTH).seasonUnits());
    }
  }
}
