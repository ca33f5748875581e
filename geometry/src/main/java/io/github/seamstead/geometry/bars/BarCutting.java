package io.github.seamstead.geometry.bars;

import io.github.seamstead.geometry.bars.BarPlan.CutBar;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;

/**
 * Cuts pieces from bars of given lengths so that the least length of bar is used (one-dimensional
 * cutting stock).
 *
 * <p>A linear programme over cutting patterns gives a bound (Gilmore and Gomory, A linear
 * programming approach to the cutting-stock problem, 1961) and a plan to round; a depth first
 * search completes and improves it. A plan that meets the bound, rounded up to a total that whole
 * bars can have, is proven best, and so is one when the search has seen everything. Else the gap is
 * stated.
 *
 * <p>Lengths are counted in hundredths of a millimetre, pieces rounded up and bars down. Every cut
 * takes a kerf but the last, where the piece ends with the bar.
 *
 * <p>Cost: the problem is NP-hard; a work unit is one node of a search. Frames of a few lengths
 * take some hundred to some thousand units, whatever the number of pieces. Equal arguments and work
 * budgets give equal plans.
 *
 * <pre>{@code
 * List<BarPiece> poles = List.of(new BarPiece("hip", 1.95, 8), new BarPiece("ring", 0.8, 8));
 * BarPlan plan = BarCutting.plan(poles, List.of(BarStock.unlimited("pole", 3.0)), 0.003);
 * int bars = plan.barCount(); // 8
 * }</pre>
 */
public final class BarCutting {

  /** What {@link #plan(List, List, double)} may spend. */
  public static final Budget DEFAULT_BUDGET = Budget.ofWork(400_000);

  /** Pieces beyond which a plan is refused. */
  public static final int MOST_PIECES = 100_000;

  /** Kinds of piece lengths beyond which a plan is refused. */
  public static final int MOST_LENGTHS = 60;

  private static final Source WASTE = Source.derived("length of pieces over length of bars used");

  private BarCutting() {}

  /**
   * Plans within the default budget.
   *
   * @param pieces what is wanted, at most {@link #MOST_LENGTHS} different lengths
   * @param stock the bars, at least one
   * @param kerf width of a saw cut, in metres, 0 to 0.05
   * @return the plan
   * @throws IllegalArgumentException if an argument is outside its range or a piece is longer than
   *     every bar
   */
  public static BarPlan plan(List<BarPiece> pieces, List<BarStock> stock, double kerf) {
    return plan(pieces, stock, kerf, Work.of(DEFAULT_BUDGET, 1), Steps.none());
  }

  /**
   * Plans on given terms, with the worked steps; the last step is the waste.
   *
   * @param pieces what is wanted, at most {@link #MOST_LENGTHS} different lengths
   * @param stock the bars, at least one
   * @param kerf width of a saw cut, in metres, 0 to 0.05
   * @param work budget, seed, progress and cancellation
   * @param steps where the steps are written
   * @return the best plan found; {@link BarPlan#missing()} if the bars on hand do not suffice
   * @throws IllegalArgumentException if an argument is outside its range or a piece is longer than
   *     every bar
   */
  @Calculation("geometry.bars.plan")
  public static BarPlan plan(
      List<BarPiece> pieces, List<BarStock> stock, double kerf, Work work, Steps steps) {
    Args.notEmpty("pieces", pieces);
    Args.notEmpty("bars", stock);
    Args.within("kerf", kerf, 0, 0.05, "m");
    long count = pieces.stream().mapToLong(BarPiece::count).sum();
    Args.require(
        count <= MOST_PIECES, "pieces", count + " in all", "must be at most " + MOST_PIECES);
    double longest = stock.stream().mapToDouble(BarStock::length).max().orElseThrow();
    for (BarPiece piece : pieces) {
      Args.require(
          piece.length() <= longest,
          "length of " + piece.name(),
          Numbers.plain(piece.length()) + " m",
          "must be at most the longest bar's " + Numbers.plain(longest) + " m",
          "splice it or find longer bars");
    }
    BarModel model = new BarModel(pieces, stock, kerf);
    WorkMeter meter = new WorkMeter(work);
    BarSolver solver = new BarSolver(model.problem(), meter, work.seed());
    List<BarPattern> patterns = solver.solve();
    BarPlan plan = model.plan(patterns, solver.lowerBound() * BarProblem.UNIT, solver.isProven());
    meter.report(1, "bars planned");
    record(plan, steps);
    return plan;
  }

  private static void record(BarPlan plan, Steps steps) {
    if (!steps.isRecording()) {
      return;
    }
    Steps.Entry used =
        steps
            .step("U", "length of the bars used")
            .from(WASTE)
            .note("Bars of each pattern counted.");
    StringBuilder sum = new StringBuilder();
    int number = 0;
    for (CutBar bar : plan.bars()) {
      number++;
      sum.append(sum.isEmpty() ? "" : " + ")
          .append("n" + number)
          .append(" * ")
          .append("L" + number);
      used.with("n" + number, bar.times(), "").with("L" + number, bar.stock().length(), "m");
    }
    if (number > 0) {
      used.formula(sum.toString());
    }
    used.gives(plan.usedLength(), "m");
    steps.step("S", "length of the pieces").gives(plan.pieceLength(), "m");
    Steps.Entry waste = steps.step("W", "waste").from(WASTE);
    if (plan.usedLength() > 0) {
      waste
          .formula("1 - S / U")
          .with("S", plan.pieceLength(), "m")
          .with("U", plan.usedLength(), "m");
    }
    waste.gives(plan.wasteRatio(), "");
  }
}
