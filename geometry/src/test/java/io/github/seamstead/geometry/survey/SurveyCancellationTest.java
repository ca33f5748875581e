package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.work.Cancellation;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Thousands of readings are let go of soon, wherever their adjustment is. */
@Tag("dear")
class SurveyCancellationTest {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  /** Processor time after the switch, so that a busy machine makes no difference. */
  private static final double MOST_SECONDS = 0.2;

  private static final int READINGS = 3000;

  private static Survey large() {
    int sides = 48;
    Map<Node, Vector3D> nodes = TestFrames.bent(sides, true, 5, 4, 0.02, 7);
    List<Node> names = List.copyOf(nodes.keySet());
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      for (int k = 0; k < i; k++) {
        Node from = names.get(i);
        Node to = names.get(k);
        readings.add(Reading.distance(from, to, nodes.get(from).distance(nodes.get(to)), 0.002));
      }
    }
    Collections.shuffle(readings, new Random(8));
    readings.subList(READINGS, readings.size()).clear();
    // A few that are wrong, for the search to find.
    for (int i = 0; i < 5; i++) {
      readings.set(i, readings.get(i).withValue(readings.get(i).value() + 0.3));
    }
    return Survey.of(TestFrames.shape(sides, true), readings);
  }

  @Test
  void whatIsCancelledBeforehandDoesNotBegin() {
    Cancellation cancellation = new Cancellation();
    Survey survey = TestFrames.survey(6, false, 0.02, 0.001, 3);
    Adjustment adjustment = survey.adjust(cancellation).orThrow();
    assertThat(adjustment.weightedSquares()).isEqualTo(survey.adjust().orThrow().weightedSquares());
    cancellation.cancel();
    assertThatThrownBy(() -> survey.adjust(cancellation))
        .isInstanceOf(CancellationException.class)
        .hasMessageContaining("readings were adjusted");
    assertThatThrownBy(() -> survey.findBlunders(cancellation))
        .isInstanceOf(CancellationException.class);
    assertThatThrownBy(() -> adjustment.control(cancellation))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void thousandsOfReadingsAreLetGoOfAtWhateverMoment() throws InterruptedException {
    Survey survey = large();
    secondsAfterTheSwitch(30, survey::adjust);
    secondsAfterTheSwitch(300, survey::findBlunders);
  }

  @Tag("soak")
  @Test
  void oneAdjustmentOfThousandsOfReadingsIsLetGoOf() throws InterruptedException {
    Survey survey = large();
    // Switched at several moments of the way, from its beginning on.
    for (long after = 1; after < 1000; after *= 4) {
      assertThat(secondsAfterTheSwitch(after, survey::adjust)).isLessThan(MOST_SECONDS);
    }
  }

  @Tag("soak")
  @Test
  void aSearchForBlundersIsLetGoOf() throws InterruptedException {
    Survey survey = large();
    for (long after = 10; after < 2000; after *= 5) {
      assertThat(secondsAfterTheSwitch(after, survey::findBlunders)).isLessThan(MOST_SECONDS);
    }
  }

  /** Processor seconds that the work still takes once it is switched off. */
  private static double secondsAfterTheSwitch(long millis, Consumer<Cancellation> work)
      throws InterruptedException {
    Cancellation cancellation = new Cancellation();
    CountDownLatch begun = new CountDownLatch(1);
    AtomicLong end = new AtomicLong();
    AtomicReference<String> heard = new AtomicReference<>("cancelled while it was done already");
    Thread worker =
        new Thread(
            () -> {
              begun.countDown();
              try {
                work.accept(cancellation);
              } catch (CancellationException e) {
                heard.set(e.getMessage());
              } catch (RuntimeException e) {
                heard.set(e.toString());
              } finally {
                end.set(THREADS.getCurrentThreadCpuTime());
              }
            });
    worker.start();
    begun.await();
    // By processor time too: on a busy machine the moments would all be the beginning.
    long most = millis * 1_000_000;
    long seen = THREADS.getThreadCpuTime(worker.getId());
    while (worker.isAlive() && seen >= 0 && seen < most) {
      Thread.sleep(1);
      seen = THREADS.getThreadCpuTime(worker.getId());
    }
    cancellation.cancel();
    long switched = seen;
    worker.join(60_000);
    assertThat(worker.isAlive()).isFalse();
    assertThat(heard.get()).startsWith("cancelled while");
    return switched < 0 ? 0 : (end.get() - switched) / 1e9;
  }
}
