package io.github.seamstead.geometry.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The linear programme over cutting patterns (Gilmore and Gomory 1961), its patterns made as they
 * are needed: the dual is solved, the best pattern for its prices is added, until none pays.
 *
 * <p>The bound holds however far this came and however the solver rounds, because the prices are
 * first scaled until no pattern pays (Farley 1990).
 */
final class BarBound {

  private static final int MOST_ROUNDS = 300;
  private static final double PAYS = 1 + 1e-6;

  private final BarProblem problem;
  private final WorkMeter meter;
  private final double scale;
  private final List<BarPattern> patterns = new ArrayList<>();
  private double[] price;
  private double[] rent;
  private double bound;
  private double[] amounts = new double[0];

  BarBound(BarProblem problem, WorkMeter meter) {
    this.problem = problem;
    this.meter = meter;
    this.scale = Arrays.stream(problem.cost).min().orElseThrow();
    this.price = new double[problem.types()];
    this.rent = new double[problem.stocks()];
    // Price by width alone: the plain area bound.
    for (int i = 0; i < price.length; i++) {
      price[i] = problem.width[i] * problem.cheapest() / scale;
    }
    makeSafe(price);
  }

  /** Runs the column generation; afterwards the other methods tell what came of it. */
  void run() {
    for (int s = 0; s < problem.stocks(); s++) {
      for (int i = 0; i < problem.types(); i++) {
        int most = (int) Math.min(problem.demand[i], problem.capacity[s] / problem.width[i]);
        if (most > 0) {
          int[] counts = new int[problem.types()];
          counts[i] = most;
          patterns.add(new BarPattern(s, counts));
        }
      }
    }
    for (int round = 0; round < MOST_ROUNDS && !meter.isSpent(); round++) {
      double[] dual = solveDual();
      if (dual.length == 0) {
        break;
      }
      if (!makeSafe(dual)) {
        break;
      }
    }
    amounts = solvePrimal();
  }

  /** Adds the patterns that pay at these prices, and keeps the prices if their bound is better. */
  private boolean makeSafe(double[] dual) {
    double[] prices = Arrays.copyOf(dual, problem.types());
    Knapsack knapsack = new Knapsack(problem, prices, meter);
    double[] most = new double[problem.stocks()];
    boolean pays = false;
    double factor = 1;
    for (int s = 0; s < problem.stocks(); s++) {
      Knapsack.Best best = knapsack.solve(s);
      most[s] = best.most();
      double cost = problem.cost[s] / scale;
      double paid = dual.length > problem.types() ? dual[problem.types() + s] : 0;
      if (best.value() > (cost + paid) * PAYS) {
        patterns.add(best.pattern());
        pays = true;
      }
      if (problem.available[s] == BarProblem.UNLIMITED) {
        factor = Math.max(factor, most[s] / cost);
      }
    }
    double sum = 0;
    for (int i = 0; i < prices.length; i++) {
      prices[i] /= factor;
      sum += problem.demand[i] * prices[i];
    }
    double[] rents = new double[problem.stocks()];
    for (int s = 0; s < rents.length; s++) {
      if (problem.available[s] != BarProblem.UNLIMITED) {
        rents[s] = Math.max(0, most[s] / factor - problem.cost[s] / scale);
        sum -= problem.available[s] * rents[s];
      }
    }
    if (sum > bound) {
      bound = sum;
      price = prices;
      rent = rents;
    }
    return pays;
  }

  /** Prices of the pieces, then rents of the bars on hand (0 for the others). */
  private double[] solveDual() {
    int m = problem.types();
    double[] goal = new double[m + problem.stocks()];
    for (int i = 0; i < m; i++) {
      goal[i] = problem.demand[i];
    }
    for (int s = 0; s < problem.stocks(); s++) {
      boolean limited = problem.available[s] != BarProblem.UNLIMITED;
      goal[m + s] = limited ? -problem.available[s] : -1;
    }
    List<LinearConstraint> rows = new ArrayList<>();
    for (BarPattern pattern : patterns) {
      double[] row = new double[m + problem.stocks()];
      for (int i = 0; i < m; i++) {
        row[i] = pattern.count(i);
      }
      if (problem.available[pattern.stock] != BarProblem.UNLIMITED) {
        row[m + pattern.stock] = -1;
      }
      rows.add(new LinearConstraint(row, Relationship.LEQ, problem.cost[pattern.stock] / scale));
    }
    return solve(goal, rows, GoalType.MAXIMIZE);
  }

  private double[] solvePrimal() {
    int count = patterns.size();
    double[] goal = new double[count];
    for (int j = 0; j < count; j++) {
      goal[j] = problem.cost[patterns.get(j).stock] / scale;
    }
    List<LinearConstraint> rows = new ArrayList<>();
    for (int i = 0; i < problem.types(); i++) {
      double[] row = new double[count];
      for (int j = 0; j < count; j++) {
        row[j] = patterns.get(j).count(i);
      }
      rows.add(new LinearConstraint(row, Relationship.GEQ, problem.demand[i]));
    }
    for (int s = 0; s < problem.stocks(); s++) {
      if (problem.available[s] != BarProblem.UNLIMITED) {
        double[] row = new double[count];
        for (int j = 0; j < count; j++) {
          row[j] = patterns.get(j).stock == s ? 1 : 0;
        }
        rows.add(new LinearConstraint(row, Relationship.LEQ, problem.available[s]));
      }
    }
    return solve(goal, rows, GoalType.MINIMIZE);
  }

  private static double[] solve(double[] goal, List<LinearConstraint> rows, GoalType type) {
    for (PivotSelectionRule rule : PivotSelectionRule.values()) {
      try {
        return new SimplexSolver()
            .optimize(
                new MaxIter(5000),
                new LinearObjectiveFunction(goal, 0),
                new LinearConstraintSet(rows),
                type,
                new NonNegativeConstraint(true),
                rule)
            .getPoint();
      } catch (MathIllegalStateException e) {
        // Rounding or cycling: the other rule may get through; else the safe bound stands as it is.
      }
    }
    return new double[0];
  }

  /** No plan costs less than this. */
  double bound() {
    return bound * scale;
  }

  /** A bound for what remains, by the same prices. */
  double boundFor(int[] remaining, int[] left) {
    double sum = 0;
    for (int i = 0; i < remaining.length; i++) {
      sum += remaining[i] * price[i];
    }
    for (int s = 0; s < left.length; s++) {
      if (rent[s] > 0) {
        sum -= left[s] * rent[s];
      }
    }
    return Math.max(0, sum * scale);
  }

  List<BarPattern> patterns() {
    return patterns;
  }

  /** How often the linear programme takes each pattern; empty if it was not solved. */
  double[] amounts() {
    return amounts;
  }
}
