package org.rimebook.export.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.rimebook.record.RecordSize;

class HeapTest {

  private static final long MIB = 1 << 20;

  @Test
  void aLargerRecordNeedsMoreAndNoneMoreThanThereIs() {
    Heap heap = new Heap(1000 * MIB);
    int small = heap.needMiB(new RecordSize(MIB));
    int large = heap.needMiB(new RecordSize(40 * MIB));
    assertThat(small).isPositive().isLessThan(large);
    assertThat(large).isLessThan(1000);
    assertThat(heap.needMiB(new RecordSize(10_000 * MIB))).isEqualTo(1000);
  }

  @Test
  void seasonsTogetherNeverTakeMoreThanThereIsAndAllOfThemRun()
      throws InterruptedException, ExecutionException {
    Heap heap = new Heap(10 * MIB);
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Future<Integer>> running = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        int need = 1 + i * 7 % 10;
        running.add(
            threads.submit(
                () -> {
                  heap.take(need);
                  int now = taken.addAndGet(need);
                  most.accumulateAndGet(now, Math::max);
                  Thread.yield();
                  taken.addAndGet(-need);
                  heap.giveBack(need);
                  return need;
                }));
      }
      for (Future<Integer> run : running) {
        assertThat(run.get()).isPositive();
      }
    } finally {
      threads.shutdownNow();
    }
    assertThat(most.get()).isBetween(2, 10);
  }
}
