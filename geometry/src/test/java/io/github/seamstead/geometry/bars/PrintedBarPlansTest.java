package io.github.seamstead.geometry.bars;

import static io.github.seamstead.geometry.bars.BarsByHandTest.meter;
import static io.github.seamstead.geometry.bars.BarsByHandTest.problem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Cutting plans that textbooks print, and bounds and searches that a pencil follows. */
class PrintedBarPlansTest {

  private static final Offset<Double> CLOSE = within(1e-9);
  private static final int MANY = BarProblem.UNLIMITED;

  private static final Source PAPER =
      Source.found("AMPL book", "paper rolls of width 110", "", "cutting stock example");
  private static final Source ROLLS =
      Source.derived("rolls of 30 ft in six widths: data of a printed exercise, recomputed");
  private static final Source BOARDS =
      Source.fromMemory("W. Winston", "Operations Research", "", "boards of 17 ft, recomputed");
  private static final Source FILM =
      Source.fromMemory("General solver manuals", "film of width 218", "", "recomputed");

  private static void assertPlan(
      String what, Source source, BarProblem problem, int bars, double linear, double within) {
    BarBound bound = new BarBound(problem, meter(400_000));
    bound.run();
    OutsideCheck.of("geometry.bars", what + ": linear programme, bars", source)
        .expect(linear)
        .within(within)
        .got(bound.bound() / problem.cost[0]);
    // What the linear programme takes of its patterns adds to the same.
    assertThat(Arrays.stream(bound.amounts()).sum()).isCloseTo(linear, within(within + 1e-6));
    double[] cut = new double[problem.types()];
    for (int j = 0; j < bound.amounts().length; j++) {
      for (int i = 0; i < cut.length; i++) {
        cut[i] += bound.amounts()[j] * bound.patterns().get(j).count(i);
      }
    }
    for (int i = 0; i < cut.length; i++) {
      assertThat(cut[i]).isGreaterThan(problem.demand[i] - 1e-6);
    }
    BarSolver solver = new BarSolver(problem, meter(400_000), 1);
    List<BarPattern> plan = solver.solve();
    OutsideCheck.of("geometry.bars", what + ": bars", source)
        .expect(bars)
        .within(0)
        .got(plan.size());
    assertThat(solver.isProven()).isTrue();
    assertThat(solver.lowerBound()).isEqualTo(bars * problem.cost[0]);
  }

  @Test
  void plansOfTextbooks() {
    assertPlan(
        "rolls of 110 for 20, 45, 50, 55, 75",
        PAPER,
        problem(110, 75, 8, 55, 10, 50, 24, 45, 35, 20, 48),
        47,
        46.25,
        1e-6);
    assertPlan(
        "rolls of 30 ft for 6, 9, 12, 15, 20, 24",
        ROLLS,
        problem(30, 24, 20, 20, 15, 15, 36, 12, 48, 9, 70, 6, 130),
        111,
        110.7,
        0.05);
    assertPlan(
        "boards of 17 ft for 3, 5, 9", BOARDS, problem(17, 9, 15, 5, 20, 3, 25), 19, 18.33, 0.005);
    assertPlan(
        "film of 218 for 81, 70, 68", FILM, problem(218, 81, 44, 70, 3, 68, 48), 35, 35, 1e-6);
  }

  /** Seven pieces over half a bar of 100, and bars on hand at a quarter of the price. */
  private static BarBound rented(int onHand) {
    BarProblem problem =
        new BarProblem(
            new long[] {51},
            new int[] {7},
            new long[] {100, 100},
            new long[] {100, 25},
            new int[] {MANY, onHand});
    BarBound bound = new BarBound(problem, meter(10_000));
    bound.run();
    return bound;
  }

  @Test
  void cheapBarsOnHandSaveThreeQuarters() {
    // Three at 25 and four at 100; a bar on hand is worth 75.
    BarBound three = rented(3);
    assertThat(three.bound()).isCloseTo(475, within(1e-6));
    assertThat(three.boundFor(new int[] {3}, new int[] {MANY, 2})).isCloseTo(150, within(1e-6));
    assertThat(three.boundFor(new int[] {1}, new int[] {MANY, 2})).isZero();
    double[] taken = new double[2];
    for (int j = 0; j < three.amounts().length; j++) {
      taken[three.patterns().get(j).stock] += three.amounts()[j];
    }
    assertThat(taken).containsExactly(new double[] {4, 3}, within(1e-6));
    // Enough of them for all: none is worth more than it costs.
    BarBound enough = rented(10);
    assertThat(enough.bound()).isCloseTo(7 * 25, within(1e-6));
    assertThat(enough.boundFor(new int[] {3}, new int[] {MANY, 10})).isCloseTo(75, within(1e-6));
  }

  /** Before any search the bound is the width of all pieces at the cheapest price of a width. */
  @Test
  void theFirstBoundIsThatOfTheWidths() {
    BarProblem problem =
        new BarProblem(
            new long[] {4, 3},
            new int[] {5, 3},
            new long[] {10, 20},
            new long[] {10, 18},
            new int[] {MANY, MANY});
    assertThat(new BarBound(problem, meter(1000)).bound()).isCloseTo(29 * 0.9, CLOSE);
  }

  /**
   * Boards of 17 for 9, 5 and 3, sixty times over: 900 of one each, 150 of one 5 and four 3, 50 of
   * three 5. Longest first would take 1120, and a search of so many bars is not tried.
   */
  @Test
  void elevenHundredBoards() {
    BarProblem problem = problem(17, 9, 900, 5, 1200, 3, 1500);
    assertThat(new BarGreedy(problem).plan()).hasSize(1120);
    BarSolver solver = new BarSolver(problem, meter(400_000), 1);
    List<BarPattern> plan = solver.solve();
    assertThat(plan).hasSize(1100);
    assertThat(solver.isProven()).isTrue();
    int[] left = problem.demand.clone();
    plan.forEach(p -> p.take(left, 1));
    assertThat(Arrays.stream(left)).as("nothing is left to cut").allMatch(n -> n <= 0);
    assertThat(plan).allMatch(p -> p.filled(problem) <= 17);
  }

  /** Two bars of 10 and one of 9: 6 + 3 on the 9, 6 + 4 and 5 + 5 on the tens. */
  @Test
  void aSearchThatMustGiveBarsBack() {
    BarProblem problem =
        new BarProblem(
            new long[] {6, 5, 4, 3},
            new int[] {2, 2, 1, 1},
            new long[] {10, 9},
            new long[] {10, 9},
            new int[] {2, 1});
    BarBound bound = new BarBound(problem, meter(10_000));
    bound.run();
    WorkMeter meter = meter(10_000);
    BarSearch search = new BarSearch(problem, bound, new CostGrid(problem.cost, 40), meter);
    for (int turn = 0; turn < 2; turn++) {
      List<BarPattern> plan =
          search.run(problem.demand.clone(), problem.available.clone(), 40, 0, 5_000);
      assertThat(plan.stream().mapToLong(p -> problem.cost[p.stock]).sum()).isEqualTo(29);
      int[] left = problem.demand.clone();
      plan.forEach(p -> p.take(left, 1));
      assertThat(left).containsOnly(0);
      assertThat(plan.stream().filter(p -> p.stock == 1)).hasSize(1);
      assertThat(search.wasExhaustive()).isTrue();
    }
    assertThat(search.run(problem.demand, problem.available, 29, 0, 5_000)).isEmpty();
    assertThat(search.wasExhaustive()).isTrue();
  }

  /** Bars of 9 and 7 that run out, beside bars of 10, against all ways to put pieces on bars. */
  @Test
  void searchesGiveBackWhatRunsOut() {
    SplittableRandom random = new SplittableRandom(20261129);
    long[] lengths = {9, 7, 10};
    for (int i = 0; i < 200; i++) {
      TreeMap<Long, Integer> pieces = new TreeMap<>(Comparator.reverseOrder());
      for (int k = 0; k < 7; k++) {
        pieces.merge((long) random.nextInt(2, 8), 1, Integer::sum);
      }
      long[] width = pieces.keySet().stream().mapToLong(w -> w).toArray();
      int[] demand = pieces.values().stream().mapToInt(n -> n).toArray();
      int[] available = {random.nextInt(1, 3), random.nextInt(1, 3), MANY};
      BarProblem problem = new BarProblem(width, demand, lengths, lengths, available);
      BarBound bound = new BarBound(problem, meter(100_000));
      bound.run();
      CostGrid grid = new CostGrid(lengths, 100);
      BarSearch search = new BarSearch(problem, bound, grid, meter(1_000_000));
      long cost =
          search.run(demand, available, 100, 0, 500_000).stream()
              .mapToLong(p -> problem.cost[p.stock])
              .sum();
      assertThat(search.wasExhaustive()).isTrue();
      assertThat(cost).as("case %s", i).isEqualTo(least(problem, demand, available, new long[0]));
      assertThat(bound.bound()).isLessThanOrEqualTo(cost + 1e-6);
    }
  }

  /** The least cost of the bars that are still to be opened, one piece after another. */
  private static long least(BarProblem problem, int[] demand, int[] available, long[] rooms) {
    int next = 0;
    while (next < demand.length && demand[next] == 0) {
      next++;
    }
    if (next == demand.length) {
      return 0;
    }
    int[] fewer = demand.clone();
    fewer[next]--;
    long best = 1000;
    for (int b = 0; b < rooms.length; b++) {
      if (rooms[b] >= problem.width[next]) {
        long[] less = rooms.clone();
        less[b] -= problem.width[next];
        best = Math.min(best, least(problem, fewer, available, less));
      }
    }
    for (int s = 0; s < problem.stocks(); s++) {
      if (available[s] > 0 && problem.capacity[s] >= problem.width[next]) {
        int[] left = available.clone();
        left[s] -= left[s] == MANY ? 0 : 1;
        long[] more = Arrays.copyOf(rooms, rooms.length + 1);
        more[rooms.length] = problem.capacity[s] - problem.width[next];
        best = Math.min(best, problem.cost[s] + least(problem, fewer, left, more));
      }
    }
    return best;
  }
}
