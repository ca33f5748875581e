package io.github.seamstead.shared.work.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LaterTest {

  @Test
  void whatNobodyBeganIsWorkedOutOnceByWhoeverAsks() {
    AtomicInteger worked = new AtomicInteger();
    Later<Integer> later = Later.whenAsked(worked::incrementAndGet);
    assertThat(worked).hasValue(0);
    assertThat(later.get()).isEqualTo(1);
    assertThat(later.get()).isEqualTo(1);
    assertThat(worked).hasValue(1);
  }

  @Test
  void anExecutorDoesTheWork() {
    List<Runnable> tasks = new ArrayList<>();
    Later<String> later = Later.started(() -> "done", tasks::add);
    assertThat(tasks).hasSize(1);
    tasks.get(0).run();
    assertThat(later.get()).isEqualTo("done");
    assertThat(Later.started(() -> "here", Runnable::run).get()).isEqualTo("here");
  }

  @Test
  void whatIsOfferedToABusyExecutorIsWorkedOutByWhoeverAsks() {
    List<Runnable> tasks = new ArrayList<>();
    AtomicInteger worked = new AtomicInteger();
    Later<Integer> later = Later.offered(worked::incrementAndGet, tasks::add);
    assertThat(worked).hasValue(0);
    assertThat(later.get()).isEqualTo(1);
    tasks.get(0).run();
    assertThat(later.get()).isEqualTo(1);
    assertThat(worked).hasValue(1);
  }

  @Test
  void whatIsOfferedIsWorkedOutByTheExecutorIfNobodyAsksBefore() {
    List<Runnable> tasks = new ArrayList<>();
    AtomicInteger worked = new AtomicInteger();
    Later<Integer> later = Later.offered(worked::incrementAndGet, tasks::add);
    tasks.get(0).run();
    assertThat(worked).hasValue(1);
    assertThat(later.get()).isEqualTo(1);
    assertThat(Later.offered("beside", () -> "done").get()).isEqualTo("done");
  }

  @Test
  void readersWaitForAnotherThread() throws InterruptedException {
    CountDownLatch go = new CountDownLatch(1);
    Later<String> later =
        Later.started(
            () -> {
              awaited(go);
              return Thread.currentThread().getName();
            },
            LaterTest::beside);
    List<String> read = new ArrayList<>();
    Thread reader = new Thread(() -> read.add(later.get()));
    reader.start();
    go.countDown();
    reader.join();
    assertThat(read).containsExactly("beside");
  }

  @Test
  void anInterruptDoesNotEndTheWaitAndStaysSet() {
    CountDownLatch go = new CountDownLatch(1);
    Later<String> later =
        Later.started(
            () -> {
              awaited(go);
              return "done";
            },
            LaterTest::beside);
    Thread.currentThread().interrupt();
    new Thread(go::countDown).start();
    assertThat(later.get()).isEqualTo("done");
    assertThat(Thread.interrupted()).isTrue();
  }

  @Test
  void whatTheWorkThrowsIsThrownToEveryReader() {
    Later<String> later =
        Later.whenAsked(
            () -> {
              throw new UnsupportedOperationException("refused");
            });
    for (int i = 0; i < 2; i++) {
      assertThatThrownBy(later::get)
          .isInstanceOf(UnsupportedOperationException.class)
          .hasMessage("refused");
    }
    Later<String> broken =
        Later.started(
            () -> {
              throw new AssertionError("defect");
            },
            Runnable::run);
    assertThatThrownBy(broken::get).isInstanceOf(AssertionError.class);
  }

  private static void beside(Runnable task) {
    new Thread(task, "beside").start();
  }

  private static void awaited(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
