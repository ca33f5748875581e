package io.github.seamstead.assembly.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.Work;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Hundreds of groups take a while, and nobody has to wait for them. */
class CancelledJoiningTest {

  private static final int LEAVES = 60;

  /** Between the switch and the end lies at most what one span costs: k ways to split it. */
  @ParameterizedTest
  @EnumSource(SpanProgramme.Combine.class)
  void theProgrammeEndsWithinOneSpan(SpanProgramme.Combine combine) {
    Cancellation cancellation = new Cancellation();
    AtomicInteger asked = new AtomicInteger();
    int turned = 5000;
    SpanCost cost =
        (first, left, right) -> {
          if (asked.incrementAndGet() == turned) {
            cancellation.cancel();
          }
          return left + right;
        };
    assertThatThrownBy(
            () -> new SpanProgramme(LEAVES, true, cost, (f, l, r) -> 0, combine, cancellation))
        .isInstanceOf(CancellationException.class)
        .hasMessageContaining("order of joining");
    assertThat(asked.get()).isBetween(turned, turned + LEAVES);
  }

  private static PlanOptions stoppedBy(Objective objective, Cancellation cancellation) {
    return PlanOptions.least(objective)
        .searching(
            new Work(
                Budget.ofWork(PlanOptions.USUAL_SEARCH_NODES), 0, Progress.NONE, cancellation));
  }

  @ParameterizedTest
  @EnumSource(Objective.class)
  void everyObjectiveHearsTheSwitch(Objective objective) {
    PieceRing ring = PieceRing.ofEqualPieces(40, 5, 3);
    Cancellation cancelled = new Cancellation();
    cancelled.cancel();
    PlanOptions options = stoppedBy(objective, cancelled);
    assertThatThrownBy(() -> JoinPlanner.plan(ring, options))
        .isInstanceOf(CancellationException.class);
    assertThatThrownBy(() -> JoinPlanner.nearest(ring, options))
        .isInstanceOf(CancellationException.class);
  }

  /** Who is asked to finish still gives the whole order: there is no half of it. */
  @Test
  void aPlanThatIsToFinishIsWhole() {
    Cancellation finishing = new Cancellation();
    finishing.finish();
    PieceRing ring = PieceRing.ofEqualPieces(10, 5, 3.2);
    MergePlan plan = JoinPlanner.plan(ring, stoppedBy(Objective.HANDLED_MASS, finishing)).orThrow();
    assertThat(plan.steps()).hasSize(10);
    // Leaves of a best tree over ten equal pieces lie 34 deep in all: 34 lifts of 5 kg.
    assertThat(plan.cost().mergedMass()).isEqualTo(170);
  }
}
