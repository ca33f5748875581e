package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.Work;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a search that is stopped says and does not say, and whose threads it runs on. */
class StoppedLayoutsTest {

  private static final Outline ELL =
      CuttingLayoutTest.outline(0, 0, 1, 0, 1, 0.4, 0.4, 0.4, 0.4, 1, 0, 1);

  private static LayoutRequest ells(int count) {
    return LayoutRequest.of(
        List.of(
            Piece.of("ell", ELL).withCount(count),
            Piece.of("patch", Outline.rectangle(0.3, 0.2)).withCount(count)),
        List.of(Roll.of("canvas", 2.1, 100)));
  }

  private static LayoutResult plan(LayoutRequest request, Work work) {
    LayoutResult result = CuttingLayout.plan(request, work);
    LayoutVerifier.verify(request, result);
    return result;
  }

  @Test
  void whatIsCancelledAdvisesNothing() {
    Cancellation off = new Cancellation();
    off.cancel();
    Work work = new Work(Budget.ofWork(1_000_000), 1, Progress.NONE, off);
    LayoutResult result = plan(ells(20), work);
    assertThat(result.stopped()).contains(LayoutResult.Stop.CANCELLED);
    assertThat(result.furtherStock()).isEmpty();
    assertThat(result.unplaced()).isNotEmpty();
    assertThat(result.unplaced())
        .allSatisfy(
            lack -> {
              assertThat(lack.reason()).isEqualTo(Shortfall.Reason.SEARCH_STOPPED);
              assertThat(lack.message()).contains("stopped").doesNotContain("full");
            });
  }

  @Test
  void aSearchThatIsAskedToFinishGivesItsBestSoFar() {
    Cancellation end = new Cancellation();
    List<Double> heard = new ArrayList<>();
    Progress asked =
        (done, message) -> {
          heard.add(done);
          end.finish();
        };
    LayoutResult early = plan(ells(20), new Work(Budget.ofWork(50_000_000), 1, asked, end));
    assertThat(heard).isNotEmpty();
    assertThat(early.stopped()).contains(LayoutResult.Stop.FINISHED_EARLY);
    assertThat(early.unplaced()).isEmpty();
    assertThat(early.workUsed()).isBetween(1L, 40_000_000L);
  }

  @Test
  void whatNoStockCouldHoldIsSaidEvenThen() {
    Cancellation off = new Cancellation();
    off.cancel();
    LayoutRequest request =
        LayoutRequest.of(
            List.of(Piece.of("big", Outline.rectangle(5, 3))),
            List.of(Sheet.rectangle("sheet", 2, 2)));
    LayoutResult result = plan(request, new Work(Budget.ofWork(10), 1, Progress.NONE, off));
    assertThat(result.stopped()).contains(LayoutResult.Stop.CANCELLED);
    assertThat(result.unplaced().get(0).reason()).isEqualTo(Shortfall.Reason.LARGER_THAN_STOCK);
  }

  /** Thousands of pieces to fill, rows of thousands of panels: each part of the work must hear. */
  @ParameterizedTest
  @ValueSource(ints = {1, 40})
  void aCancellationIsHeard(int kinds) throws InterruptedException {
    secondsToHear(kinds, 100);
  }

  @Tag("soak")
  @ParameterizedTest
  @ValueSource(ints = {1, 40})
  void aCancellationIsHeardSoon(int kinds) throws InterruptedException {
    for (long after = 50; after < 3000; after *= 2) {
      assertThat(secondsToHear(kinds, after)).as("after %d ms", after).isLessThan(0.2);
    }
  }

  private static double secondsToHear(int kinds, long afterMillis) throws InterruptedException {
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      pieces.add(
          Piece.of("p" + k, CuttingLayoutTest.outline(0, 0, 0.9, 0, 0.35 + 0.01 * k, 1.05))
              .withCount(4000 / kinds)
              .withRotations(Rotations.anyAngle()));
    }
    LayoutRequest request = LayoutRequest.of(pieces, List.of(Roll.of("wide", 13, 1000)));
    Cancellation off = new Cancellation();
    long[] cancelledAt = new long[1];
    Thread timer =
        new Thread(
            () -> {
              try {
                Thread.sleep(afterMillis);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
              cancelledAt[0] = System.nanoTime();
              off.cancel();
            });
    timer.start();
    LayoutResult result =
        CuttingLayout.plan(request, new Work(Budget.ofWork(100_000_000), 1, Progress.NONE, off));
    long ended = System.nanoTime();
    timer.join();
    assertThat(result.stopped()).contains(LayoutResult.Stop.CANCELLED);
    return (ended - cancelledAt[0]) / 1e9;
  }

  @Test
  void cancelledWhilePressingKeepsEveryPlace() {
    Cancellation off = new Cancellation();
    Work work = new Work(Budget.ofWork(3_000_000), 1, (done, message) -> off.cancel(), off);
    LayoutResult result = plan(ells(10), work);
    assertThat(result.stopped()).contains(LayoutResult.Stop.CANCELLED);
    assertThat(result.isComplete()).isTrue();
    assertThat(result.workUsed()).isLessThan(2_000_000);
  }

  @Test
  void theTimeLimitEndsTheFillingToo() {
    LayoutResult none = plan(ells(20), Work.of(Budget.ofTime(Duration.ZERO), 1));
    assertThat(none.stopped()).contains(LayoutResult.Stop.TIME_LIMIT);
    assertThat(none.furtherStock()).isEmpty();
    LayoutResult some = plan(ells(5), Work.of(Budget.ofTime(Duration.ofMillis(400)), 1));
    assertThat(some.stopped()).contains(LayoutResult.Stop.TIME_LIMIT);
  }

  @Test
  void aFinishedSearchWasNotStopped() {
    assertThat(plan(ells(3), Work.of(Budget.ofWork(2_000), 1)).stopped()).isEmpty();
  }

  @Test
  void anInterruptEndsThisCallAlone() {
    Work work = Work.of(Budget.ofWork(3_000_000), 1);
    Thread.currentThread().interrupt();
    try {
      LayoutResult result = plan(ells(10), work);
      assertThat(result.stopped()).contains(LayoutResult.Stop.INTERRUPTED);
      assertThat(result.furtherStock()).isEmpty();
      assertThat(Thread.currentThread().isInterrupted()).isTrue();
      assertThat(work.cancellation().isCancelled()).isFalse();
    } finally {
      Thread.interrupted();
    }
    LayoutResult next = plan(ells(3), work.within(Budget.ofWork(5_000)));
    assertThat(next.stopped()).isEmpty();
    assertThat(next.isComplete()).isTrue();
  }

  @Test
  void anInterruptWhileItWaitsEndsThisCallAlone() {
    Thread caller = Thread.currentThread();
    Work work = Work.of(Budget.ofWork(30_000_000), 1).heardBy((d, m) -> caller.interrupt());
    try {
      LayoutResult result = plan(ells(10), work);
      assertThat(result.stopped()).contains(LayoutResult.Stop.INTERRUPTED);
      assertThat(result.isComplete()).isTrue();
      assertThat(work.cancellation().isCancelled()).isFalse();
    } finally {
      Thread.interrupted();
    }
  }

  @Test
  void theResultIsTheSameOnWhosesoeverThreads() {
    LayoutRequest request = ells(4);
    Work work = Work.of(Budget.ofWork(500_000), 3);
    LayoutResult own = plan(request, work);
    Set<String> seen = new ConcurrentSkipListSet<>();
    Executor direct =
        task -> {
          seen.add(Thread.currentThread().getName());
          task.run();
        };
    assertThat(plan(request, work.on(direct))).isEqualTo(own);
    assertThat(seen).containsExactly(Thread.currentThread().getName());
    Executor busy =
        task -> {
          throw new RejectedExecutionException();
        };
    assertThat(plan(request, work.on(busy))).isEqualTo(own);
    ExecutorService one = Executors.newSingleThreadExecutor();
    try {
      assertThat(plan(request, work.on(one))).isEqualTo(own);
    } finally {
      one.shutdown();
    }
  }
}
