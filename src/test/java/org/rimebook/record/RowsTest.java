package org.rimebook.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RowsTest {

  private static Rows of(long... stampsMs) {
    Rows rows = new Rows(1, 0);
    for (int i = 0; i < stampsMs.length; i++) {
      rows.add(stampsMs[i], i + 1, new double[] {stampsMs[i] / 2.0}, i);
    }
    return rows;
  }

  @Test
  void rowsOfSeveralFilesAreAsIfReadOneAfterAnother() {
    Rows joined = of();
    joined.append(of(1, 2, 5));
    joined.append(of());
    joined.append(of(9, 10));
    assertThat(joined.stampsMs()).containsExactly(1, 2, 5, 9, 10);
    assertThat(joined.lines()).containsExactly(1, 2, 3, 1, 2);
    assertThat(joined.value(0, 3)).isEqualTo(4.5);
    assertThat(joined.missingFields(4)).isEqualTo(1);
    assertThat(joined.inOrder()).isTrue();
    assertThat(joined.longestStepMs()).isEqualTo(4);
  }

  @Test
  void aFileThatStartsBeforeTheLastOneEndsIsOutOfOrder() {
    Rows joined = of(1, 5);
    joined.append(of(5, 6));
    assertThat(joined.inOrder()).isFalse();
  }

  @Test
  void aFileOutOfOrderIsSoAmongOthers() {
    Rows joined = of(1);
    joined.append(of(3, 2));
    joined.append(of(4));
    assertThat(joined.inOrder()).isFalse();
  }

  @Test
  void moreRowsThanExpectedFit() {
    Rows joined = of(1);
    Rows many = new Rows(1, 0);
    for (int i = 2; i < 3000; i++) {
      many.add(i, i, new double[] {i}, 0);
    }
    joined.append(many);
    assertThat(joined.size()).isEqualTo(2999);
    assertThat(joined.value(0, 2998)).isEqualTo(2999);
  }
}
