package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.rimebook.desk.model.WindowState.Place;

class WindowStateTest {

  @Test
  void aPlaceLargerThanTheScreenIsCutToIt() {
    assertThat(new Place(-8, 40, 1600, 1000).on(1280, 800)).isEqualTo(new Place(0, 0, 1280, 800));
    assertThat(new Place(30, 40, 1600, 700).on(1280, 800)).isEqualTo(new Place(0, 40, 1280, 700));
  }

  @Test
  void aPlaceThatFitsTheScreenStays() {
    assertThat(new Place(700, 40, 900, 600).on(1280, 800)).isEqualTo(new Place(700, 40, 900, 600));
  }
}
