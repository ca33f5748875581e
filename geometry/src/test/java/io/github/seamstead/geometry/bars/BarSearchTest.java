package io.github.seamstead.geometry.bars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the search says of itself: a bound, and whether it saw all. */
class BarSearchTest {

  private static final int BAR = 100_000;

  private static WorkMeter meter() {
    return new WorkMeter(Work.of(Budget.ofWork(100_000), 1));
  }

  private static BarProblem endless(int count, long width) {
    return new BarProblem(
        new long[] {width},
        new int[] {count},
        new long[] {BAR},
        new long[] {BAR},
        new int[] {BarProblem.UNLIMITED});
  }

  private static BarSearch search(BarProblem problem, BarBound bound) {
    return new BarSearch(problem, bound, new CostGrid(problem.cost, 20L * BAR), meter());
  }

  /** Pieces just over half a bar: each asks for a bar of its own, twice what their area says. */
  @Test
  void piecesOverHalfABarAreBoundByTheirCount() {
    BarProblem problem = endless(7, 51_000);
    BarBound bound = new BarBound(problem, meter());
    bound.run();
    assertThat(bound.bound()).isCloseTo(7.0 * BAR, within(1.0));
    for (int rest = 0; rest <= 7; rest++) {
      assertThat(bound.boundFor(new int[] {rest}, problem.available))
          .as("bound for the last %s", rest)
          .isCloseTo((double) rest * BAR, within(1.0));
    }
  }

  /** One free bar on hand saves its own length and no more. */
  @Test
  void barsOnHandAreRentedOnce() {
    BarProblem problem =
        new BarProblem(
            new long[] {51_000},
            new int[] {7},
            new long[] {BAR, BAR},
            new long[] {BAR, BAR / 2},
            new int[] {BarProblem.UNLIMITED, 2});
    BarBound bound = new BarBound(problem, meter());
    bound.run();
    // Two at half the cost, five at the whole.
    assertThat(bound.bound()).isCloseTo(6.0 * BAR, within(1.0));
    int[] none = {BarProblem.UNLIMITED, 0};
    assertThat(bound.boundFor(new int[] {3}, none)).isCloseTo(3.0 * BAR, within(1.0));
    assertThat(bound.boundFor(new int[] {3}, problem.available)).isCloseTo(2.0 * BAR, within(1.0));
  }

  @Test
  void aSearchThatWasCutShortDoesNotSayThatItSawAll() {
    BarProblem problem = endless(7, 51_000);
    BarBound bound = new BarBound(problem, meter());
    bound.run();
    int[] demand = problem.demand.clone();
    BarSearch search = search(problem, bound);
    assertThat(search.run(demand, problem.available.clone(), 8L * BAR, 0, 1)).isEmpty();
    assertThat(search.wasExhaustive()).as("one unit of work for seven bars").isFalse();
    List<BarPattern> found = search.run(demand, problem.available.clone(), 8L * BAR, 0, 10_000);
    assertThat(found).hasSize(7);
    assertThat(search.wasExhaustive()).as("the same search with work enough").isTrue();
  }

  /** What the bound rules out costs no work: it is cut off before the first bar is filled. */
  @Test
  void whatTheBoundRulesOutCostsNoWork() {
    BarProblem problem = endless(7, 51_000);
    BarBound bound = new BarBound(problem, meter());
    bound.run();
    BarSearch search = search(problem, bound);
    assertThat(search.run(problem.demand.clone(), problem.available.clone(), 7L * BAR, 0, 0))
        .isEmpty();
    assertThat(search.wasExhaustive()).as("no unit of work was asked for").isTrue();
  }
}
