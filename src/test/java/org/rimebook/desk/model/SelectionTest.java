package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class SelectionTest {

  @Test
  void stretchesThatTouchBecomeOne() {
    Selection selection =
        Selection.NONE
            .only(new Interval(10, 20))
            .and(new Interval(40, 50))
            .and(new Interval(15, 30))
            .and(new Interval(30, 35));

    assertThat(selection.intervals()).containsExactly(new Interval(10, 35), new Interval(40, 50));
  }

  @Test
  void aWireIsChosenAndLetGoAgain() {
    Selection north = Selection.NONE.toggled("north");

    assertThat(north.wires()).containsExactly("north");
    assertThat(north.toggled("north")).isEqualTo(Selection.NONE);
  }

  @Test
  void anotherStretchLetsTheEntryGoButKeepsTheWires() {
    Selection chosen = Selection.NONE.toggled("north").of("entry-1", List.of(new Interval(0, 5)));

    Selection next = chosen.only(new Interval(7, 9));

    assertThat(next.entry()).isEmpty();
    assertThat(next.wires()).containsExactly("north");
    assertThat(next.holds(7)).isTrue();
    assertThat(next.holds(9)).isFalse();
  }
}
