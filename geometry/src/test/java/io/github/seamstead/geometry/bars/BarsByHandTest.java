package io.github.seamstead.geometry.bars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.bars.BarPlan.CutBar;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Work;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Bars that are cut with a pencil. */
class BarsByHandTest {

  private static final Offset<Double> CLOSE = within(1e-9);
  private static final int MANY = BarProblem.UNLIMITED;

  static WorkMeter meter(long units) {
    return new WorkMeter(Work.of(Budget.ofWork(units), 1));
  }

  /** Widths and counts alternate; one bar without end. */
  static BarProblem problem(long bar, long... widthsAndCounts) {
    int types = widthsAndCounts.length / 2;
    long[] width = new long[types];
    int[] demand = new int[types];
    for (int i = 0; i < types; i++) {
      width[i] = widthsAndCounts[2 * i];
      demand[i] = (int) widthsAndCounts[2 * i + 1];
    }
    return new BarProblem(width, demand, new long[] {bar}, new long[] {bar}, new int[] {MANY});
  }

  /** Bars of 6 and 4 add up to all even totals but 2. */
  @Test
  void totalsOfWholeBars() {
    CostGrid grid = new CostGrid(new long[] {6, 4}, 20);
    double[][] cases = {{0, 0}, {0.1, 4}, {1, 4}, {4, 4}, {4.1, 6}, {6.1, 8}, {9, 10}, {19, 20}};
    for (double[] one : cases) {
      assertThat(grid.roundUp(one[0])).as("%s", one[0]).isEqualTo((long) one[1]);
    }
    assertThat(grid.roundUp(-3)).isZero();
    assertThat(grid.roundUp(101)).as("beyond the table, by the step").isEqualTo(102);
    // Bars of 9, 6 and 20: 43 is the greatest total that none make up.
    CostGrid nuggets = new CostGrid(new long[] {9, 6, 20, 6}, 60);
    assertThat(nuggets.roundUp(43)).isEqualTo(44);
    assertThat(nuggets.roundUp(37)).isEqualTo(38);
    assertThat(nuggets.roundUp(31)).isEqualTo(32);
    assertThat(nuggets.roundUp(22)).isEqualTo(24);
    assertThat(nuggets.roundUp(1)).isEqualTo(6);
    // A total may end up to one bar beyond the plan that is to be beaten.
    assertThat(new CostGrid(new long[] {9, 6, 20}, 30).roundUp(43)).isEqualTo(44);
    assertThat(new CostGrid(new long[] {600_000, 400_000}, 2_000_000).roundUp(1))
        .isEqualTo(400_000);
    CostGrid one = new CostGrid(new long[] {5, 5}, 50);
    assertThat(one.roundUp(6)).isEqualTo(10);
    assertThat(one.roundUp(5)).isEqualTo(5);
    // So fine a step that no table is made: any multiple of it.
    CostGrid fine = new CostGrid(new long[] {1_000_003, 1_000_001}, 2_000_000);
    assertThat(fine.roundUp(7)).isEqualTo(7);
  }

  /** Values 10.5, 7, 3 for widths 6, 4, 2 in a room of 11: the first two are worth most. */
  @Test
  void aKnapsackByHand() {
    BarProblem problem = problem(11, 6, 1, 4, 2, 2, 3);
    Knapsack.Best best = new Knapsack(problem, new double[] {10.5, 7, 3}, meter(1000)).solve(0);
    assertThat(best.value()).isEqualTo(17.5);
    assertThat(best.most()).isEqualTo(17.5);
    assertThat(counts(best.pattern(), 3)).containsExactly(1, 1, 0);
    // Two of 4 and one of 2 are worth 17; with 8 for each of 4 they win.
    Knapsack.Best other = new Knapsack(problem, new double[] {10, 8, 3}, meter(1000)).solve(0);
    assertThat(counts(other.pattern(), 3)).containsExactly(0, 2, 1);
    assertThat(other.value()).isEqualTo(19);
    // What is worth nothing is not cut.
    Knapsack.Best idle = new Knapsack(problem, new double[] {10, -1, 0}, meter(1000)).solve(0);
    assertThat(counts(idle.pattern(), 3)).containsExactly(1, 0, 0);
    // Cut short, it promises no less than a room filled to the last bit: 7/4 by width first,
    // twice, then 10/6 for the last 3: 14 + 5.
    Knapsack.Best shortened = new Knapsack(problem, new double[] {10, 7, 3}, meter(0)).solve(0);
    assertThat(shortened.most()).isCloseTo(19, CLOSE);
    assertThat(shortened.value()).isLessThanOrEqualTo(17);
  }

  private static int[] counts(BarPattern pattern, int types) {
    int[] counts = new int[types];
    Arrays.setAll(counts, pattern::count);
    return counts;
  }

  /** 5 of 4 and 3 of 3 on bars of 10: two and nothing, twice, then 4 + 3 + 3, then 3. */
  @Test
  void theFirstPlan() {
    List<BarPattern> plan = new BarGreedy(problem(10, 4, 5, 3, 3)).plan();
    assertThat(plan.stream().map(p -> counts(p, 2)).map(Arrays::toString))
        .containsExactly("[2, 0]", "[2, 0]", "[1, 2]", "[0, 1]");
    // The bar that is filled more cheaply first, as long as it is there: 5 for 4 before 10 for 8.
    BarProblem mixed =
        new BarProblem(
            new long[] {4},
            new int[] {4},
            new long[] {10, 4},
            new long[] {10, 4},
            new int[] {MANY, 1});
    assertThat(new BarGreedy(mixed).plan().stream().map(p -> p.stock + "x" + p.count(0)))
        .containsExactly("1x1", "0x2", "0x1");
  }

  @Test
  void lengthsAreRoundedToTheSafeSide() {
    // 2.000 004 m takes 200 001 units of 10 um and a kerf of 3 mm 300; a bar of 6.000 009 m has
    // 600 000 and a kerf more, for the last piece needs no cut.
    BarModel model =
        new BarModel(
            List.of(new BarPiece("a", 2.000004, 2), new BarPiece("b", 1, 1)),
            List.of(BarStock.unlimited("bar", 6.000009), BarStock.onHand("rest", 3, 4)),
            0.003);
    assertThat(model.problem().width).containsExactly(200_301, 100_300);
    assertThat(model.problem().demand).containsExactly(2, 1);
    assertThat(model.problem().capacity).containsExactly(600_300, 300_300);
    assertThat(model.problem().cost).containsExactly(600_000, 300_000);
    assertThat(model.problem().available).containsExactly(MANY, 4);
    assertThat(model.problem().cheapest()).isCloseTo(300_000 / 300_300.0, CLOSE);
    assertThat(model.problem().filled(new int[] {2, 1})).isEqualTo(500_902);
    // No bar without end holds 5 m: what is lacking costs a thousand of the longest.
    BarModel lacking =
        new BarModel(
            List.of(new BarPiece("a", 5, 2)),
            List.of(BarStock.onHand("long", 6, 1), BarStock.unlimited("short", 4)),
            0.003);
    assertThat(lacking.problem().cost).containsExactly(600_000, 400_000, 600_000_000);
    assertThat(lacking.problem().capacity).containsExactly(600_300, 400_300, 600_300);
    assertThat(lacking.problem().available).containsExactly(1, MANY, MANY);
    // A bar exactly as long as the piece will do.
    BarModel exact =
        new BarModel(
            List.of(new BarPiece("a", 4, 2)), List.of(BarStock.unlimited("bar", 4)), 0.003);
    assertThat(exact.problem().cost).containsExactly(400_000);
  }

  @Test
  void aPlanOfThreeBars() {
    // 2.5 + 2.5 and two saw cuts leave 994 mm of 6 m; 2.5 alone 3.497; 4 alone 1.997.
    List<BarPiece> pieces =
        List.of(
            new BarPiece("hip", 2.5, 3), new BarPiece("ring", 4, 1), new BarPiece("tie", 2.5, 1));
    BarPlan plan = BarCutting.plan(pieces, List.of(BarStock.unlimited("bar", 6)), 0.003);
    assertThat(plan.barCount()).isEqualTo(3);
    assertThat(plan.usedLength()).isCloseTo(18, CLOSE);
    assertThat(plan.pieceLength()).isCloseTo(14, CLOSE);
    assertThat(plan.wasteRatio()).isCloseTo(4 / 18.0, CLOSE);
    assertThat(plan.lowerBound()).isCloseTo(18, CLOSE);
    assertThat(plan.gapRatio()).isZero();
    assertThat(plan.kerf()).isEqualTo(0.003);
    List<CutBar> pairs = plan.bars().stream().filter(b -> b.offcut() < 1).toList();
    assertThat(pairs).hasSize(2).allSatisfy(b -> assertThat(b.offcut()).isCloseTo(0.994, CLOSE));
    assertThat(pairs.get(0).pieces()).containsExactly(new BarPiece("hip", 2.5, 2));
    assertThat(pairs.get(1).pieces())
        .containsExactly(new BarPiece("hip", 2.5, 1), new BarPiece("tie", 2.5, 1));
    assertThat(plan.bars())
        .anySatisfy(
            b -> {
              assertThat(b.pieces()).containsExactly(new BarPiece("ring", 4, 1));
              assertThat(b.offcut()).isCloseTo(1.997, CLOSE);
            });
  }

  @Test
  void gapsAndWaste() {
    BarPlan open = new BarPlan(List.of(), 0, 12, 9, 10, false, List.of());
    assertThat(open.gapRatio()).isCloseTo(0.2, CLOSE);
    assertThat(open.wasteRatio()).isCloseTo(0.25, CLOSE);
    assertThat(new BarPlan(List.of(), 0, 12, 9, 10, true, List.of()).gapRatio()).isZero();
    assertThat(new BarPlan(List.of(), 0, 12, 9, 0, false, List.of()).gapRatio()).isZero();
    assertThat(new BarPlan(List.of(), 0, 9.9, 9, 10, false, List.of()).gapRatio()).isZero();
    BarPlan empty = new BarPlan(List.of(), 0, 0, 0, 0, false, List.of());
    assertThat(empty.wasteRatio()).isZero();
    assertThat(empty.barCount()).isZero();
  }

  @Test
  void workIsCounted() {
    WorkMeter meter = meter(3);
    assertThat(meter.isSpent()).isFalse();
    assertThat(meter.tick()).isTrue();
    assertThat(meter.tick()).isTrue();
    assertThat(meter.isSpent()).isFalse();
    assertThat(meter.tick()).isTrue();
    assertThat(meter.isSpent()).isTrue();
    assertThat(meter.tick()).isFalse();
    assertThat(meter.used()).isEqualTo(4);
    Work work = Work.of(Budget.ofWork(10_000), 1);
    WorkMeter cancelled = new WorkMeter(work);
    work.cancellation().cancel();
    assertThat(cancelled.isSpent()).isTrue();
    // The clock and the wish to stop are looked at each 256 units.
    for (int i = 1; i < 256; i++) {
      assertThat(cancelled.tick()).isTrue();
    }
    assertThat(cancelled.tick()).isFalse();
  }

  @Test
  void anHourIsNotOverAtOnce() {
    Work work = Work.of(Budget.ofTime(Duration.ofHours(1)), 1);
    assertThat(new WorkMeter(work).isSpent()).isFalse();
    assertThat(new WorkMeter(Work.of(Budget.ofTime(Duration.ZERO), 1)).isSpent()).isTrue();
  }

  @Test
  void patternsAreTrimmedToWhatIsWanted() {
    BarProblem problem = problem(10, 4, 5, 3, 3);
    BarPattern pattern = new BarPattern(0, new int[] {1, 2});
    assertThat(pattern.filled(problem)).isEqualTo(10);
    assertThat(pattern.isEmpty()).isFalse();
    BarPattern less = pattern.within(new int[] {3, 1});
    assertThat(counts(less, 2)).containsExactly(1, 1);
    assertThat(less.filled(problem)).isEqualTo(7);
    assertThat(pattern.within(new int[] {0, 0}).isEmpty()).isTrue();
    int[] remaining = {3, 3};
    pattern.take(remaining, 1);
    assertThat(remaining).containsExactly(2, 1);
    pattern.take(remaining, -1);
    assertThat(remaining).containsExactly(3, 3);
  }

  @Test
  void whatIsGoingOnIsTold() {
    List<String> told = new ArrayList<>();
    Work work =
        new Work(
            Budget.ofWork(400_000),
            1,
            (done, message) -> told.add(Math.round(100 * done) + " % " + message),
            new Cancellation());
    List<BarPiece> pieces = List.of(new BarPiece("a", 2.4, 3), new BarPiece("b", 1.7, 2));
    List<BarStock> bars =
        List.of(BarStock.unlimited("short", 2.5), BarStock.unlimited("long", 6.0));
    StepRecorder steps = new StepRecorder();
    BarCutting.plan(pieces, bars, 0.003, work, steps);
    assertThat(told)
        .startsWith("10 % first plan", "30 % bound found")
        .endsWith("100 % bars planned");
    List<Step> worked = steps.derivation("geometry.bars.plan", "bars").steps();
    assertThat(worked.get(0).formula().orElseThrow().text()).isEqualTo("n1 * L1 + n2 * L2");
    assertThat(worked.get(worked.size() - 1).formula().orElseThrow().text()).isEqualTo("1 - S / U");
  }

  @Test
  void limitsOfAPlan() {
    List<BarStock> bars = List.of(BarStock.unlimited("bar", 6));
    List<BarPiece> kinds = new ArrayList<>();
    for (int i = 0; i < 61; i++) {
      kinds.add(new BarPiece("p" + i, 1 + i * 0.01, 1));
    }
    assertThatThrownBy(() -> BarCutting.plan(kinds, bars, 0))
        .hasMessageContaining("61 different lengths");
    Work little = Work.of(Budget.ofWork(0), 1);
    assertThat(BarCutting.plan(kinds.subList(0, 60), bars, 0, little, Steps.none()).bars())
        .isNotEmpty();
    assertThat(
            BarCutting.plan(List.of(new BarPiece("p", 5, 100_000)), bars, 0, little, Steps.none())
                .barCount())
        .isEqualTo(100_000);
    assertThatThrownBy(() -> BarCutting.plan(kinds, bars, -0.001)).hasMessageContaining("kerf");
    assertThatThrownBy(() -> new BarPiece(" ", 1, 1)).hasMessageContaining("piece name");
    assertThatThrownBy(() -> new BarPiece("p", 0, 1)).hasMessageContaining("length of p");
    assertThatThrownBy(() -> new BarPiece("p", 1, 0)).hasMessageContaining("count of p");
    assertThatThrownBy(() -> BarStock.unlimited(" ", 1)).hasMessageContaining("bar name");
    assertThatThrownBy(() -> BarStock.unlimited("b", 1001)).hasMessageContaining("length of b");
    assertThatThrownBy(() -> BarStock.onHand("b", 1, 100_001)).hasMessageContaining("number of b");
  }
}
