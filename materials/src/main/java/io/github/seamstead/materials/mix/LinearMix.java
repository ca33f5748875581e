package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.ArgumentFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** Linear programme: the shares with the least of a linear quantity within the limits. */
final class LinearMix {

  private static final int MOST_ITERATIONS = 10_000;

  private LinearMix() {}

  static double[] least(
      double[] cost, MixProblem problem, double leastClay, double greatestClay, double shrinkage) {
    double[] ones = new double[cost.length];
    Arrays.fill(ones, 1);
    List<LinearConstraint> constraints = new ArrayList<>();
    constraints.add(new LinearConstraint(ones, Relationship.EQ, 1));
    constraints.add(new LinearConstraint(problem.clay, Relationship.GEQ, leastClay));
    constraints.add(new LinearConstraint(problem.clay, Relationship.LEQ, greatestClay));
    if (shrinkage < Double.POSITIVE_INFINITY) {
      constraints.add(new LinearConstraint(problem.shrinkage, Relationship.LEQ, shrinkage));
    }
    try {
      return new SimplexSolver()
          .optimize(
              new MaxIter(MOST_ITERATIONS),
              new LinearObjectiveFunction(cost, 0),
              new LinearConstraintSet(constraints),
              GoalType.MINIMIZE,
              new NonNegativeConstraint(true))
          .getPoint();
    } catch (MathIllegalStateException e) {
      // The limits were made reachable before, so only rounding can lead here.
      throw ArgumentFault.finding(
              "mix: the limits leave no mix within rounding", "widen the clay band")
          .causedBy(e);
    }
  }
}
