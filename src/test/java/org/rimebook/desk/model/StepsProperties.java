package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;

class StepsProperties {

  private Path folder;
  private KeptSeason season;
  private final Deque<Set<Entry>> before = new ArrayDeque<>();
  private final Deque<Set<Entry>> undone = new ArrayDeque<>();

  @BeforeTry
  void open() throws IOException {
    folder = Files.createTempDirectory("steps");
    season = KeptSeason.in(folder);
    before.clear();
    undone.clear();
  }

  @AfterTry
  void close() throws IOException {
    try (var files = Files.walk(folder)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Deeds by number: 0 to 3 mark, change, withdraw and bring back, 4 and 5 undo and redo. */
  @Property(tries = 60)
  void anySequenceOfStepsIsUndoneAndDoneAgainExactly(
      @ForAll @Size(max = 25) List<@IntRange(max = 7) Integer> deeds,
      @ForAll @IntRange(max = 9) int reopened)
      throws IOException {
    for (int i = 0; i < deeds.size(); i++) {
      String file = Files.exists(season.notebook()) ? Files.readString(season.notebook()) : "";
      deed(deeds.get(i), i);
      assertThat(season.notebook().toFile().exists() ? Files.readString(season.notebook()) : "")
          .startsWith(file);
      if (i % 10 == reopened) {
        List<Entry> shown = season.history();
        season = season.again();
        assertThat(season.history()).isEqualTo(shown);
      }
    }
  }

  private void deed(int deed, int number) {
    Set<Entry> now = Set.copyOf(season.inForce());
    switch (deed) {
      case 4, 5, 6 -> undo(now);
      case 7 -> redo(now);
      default -> {
        if (mark(deed, number)) {
          before.addLast(now);
          undone.clear();
        }
      }
    }
  }

  private boolean mark(int deed, int number) {
    SeasonKeeper keeper = season.keeper();
    if (deed == 1 && !season.inForce().isEmpty()) {
      return keeper.replace(season.last(), KeptSeason.noise(0, number + 1));
    } else if (deed == 2 && !season.inForce().isEmpty()) {
      return keeper.withdraw(List.of(season.inForce().get(0).header().id()), "");
    } else if (deed == 3 && !season.history().isEmpty()) {
      Standing standing = Standing.of(season.workspace().opened().get().get().season().notebook());
      return keeper.withdraw(List.of(standing.counting().iterator().next()), "");
    }
    return keeper.write(List.of(KeptSeason.remark("n" + number), KeptSeason.noise(0, 1)));
  }

  private void undo(Set<Entry> now) {
    season.keeper().undo();
    if (before.isEmpty()) {
      assertThat(season.inForce()).isEmpty();
    } else {
      assertThat(Set.copyOf(season.inForce())).isEqualTo(before.removeLast());
      undone.addLast(now);
    }
  }

  private void redo(Set<Entry> now) {
    season.keeper().redo();
    if (!undone.isEmpty()) {
      before.addLast(now);
      assertThat(Set.copyOf(season.inForce())).isEqualTo(undone.removeLast());
    } else {
      assertThat(Set.copyOf(season.inForce())).isEqualTo(now);
    }
  }
}
