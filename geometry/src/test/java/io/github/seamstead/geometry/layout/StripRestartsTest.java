package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.layout.internal.Tuning;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A rectangle of 14 m by 10 m, cut up into fourteen, whose exact fit a search finds or misses. */
class StripRestartsTest {

  private static final double[][] SIZES = {
    {1, 3}, {5, 3}, {6, 2}, {4, 3}, {4, 2}, {2, 5}, {4, 2},
    {4, 2}, {4, 4}, {4, 3}, {1, 3}, {5, 3}, {3, 5}, {3, 1}
  };

  private static final long UNITS = 8_000_000;
  private static final long SEED = 2;
  private static final long NEVER = Long.MAX_VALUE;

  private static StripProblem problem() {
    List<Piece> pieces = new ArrayList<>();
    for (double[] size : SIZES) {
      pieces.add(
          Piece.of("p" + (char) ('a' + pieces.size()), Outline.rectangle(size[0], size[1]))
              .withRotations(Rotations.of(0, Math.PI / 2)));
    }
    return StripProblem.of(10, pieces);
  }

  private static StripResult solve(long patience, Work work) {
    StripResult result = StripLayout.solve(problem(), work, patient(patience));
    LayoutVerifier.verify(problem(), result);
    return result;
  }

  private static Tuning patient(long patience) {
    Tuning c = Tuning.CHOSEN;
    return new Tuning(
        c.wide(),
        c.near(),
        c.touch(),
        c.kept(),
        c.grace(),
        c.record(),
        c.growth(),
        c.fade(),
        c.bias(),
        c.spread(),
        c.reach(),
        c.leastStride(),
        c.rungs(),
        c.reserve(),
        c.widest(),
        patience);
  }

  @Test
  void aSearchThatStandsStillBeginsAnewAndFindsTheExactFit() {
    Work work = Work.of(Budget.ofWork(UNITS), SEED);
    assertThat(solve(NEVER, work).length()).isGreaterThan(14.5);
    assertThat(solve(100_000, work).length()).isCloseTo(14, within(1e-7));
  }

  @Test
  void theThreadsDoNotMatter() {
    Work work = Work.of(Budget.ofWork(UNITS / 8), SEED);
    assertThat(solve(100_000, work)).isEqualTo(solve(100_000, work.on(Runnable::run)));
  }
}
