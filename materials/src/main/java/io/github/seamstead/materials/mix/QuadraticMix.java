package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.ArgumentFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * Least squares with limits: minimise {@code sum (row . x - aim)^2 + ridge |x|^2} over shares that
 * add to one, are not negative, and keep the clay and shrinkage limits.
 *
 * <p>Every combination of active limits is solved as a linear system of its optimality conditions;
 * the best that keeps all limits is the optimum, because the problem is strictly convex. Cost: 6 x
 * 2^n systems of at most n + 3 unknowns, n components at most 6.
 */
final class QuadraticMix {

  private static final double RIDGE = 1e-7;
  private static final double TOLERANCE = 1e-9;

  private final MixProblem problem;
  private final Reach reach;
  private final List<double[]> rows;
  private final double[] aims;
  private final double[][] hessian;
  private final double[] gradient;
  private double best = Double.POSITIVE_INFINITY;
  private double[] shares = {};

  QuadraticMix(MixProblem problem, Reach reach, List<double[]> rows, double[] aims) {
    this.problem = problem;
    this.reach = reach;
    this.rows = rows;
    this.aims = aims;
    int n = problem.size();
    hessian = new double[n][n];
    gradient = new double[n];
    for (int k = 0; k < aims.length; k++) {
      double[] row = rows.get(k);
      for (int i = 0; i < n; i++) {
        gradient[i] += row[i] * aims[k];
        for (int j = 0; j < n; j++) {
          hessian[i][j] += row[i] * row[j];
        }
      }
    }
    for (int i = 0; i < n; i++) {
      hessian[i][i] += RIDGE;
    }
  }

  double[] solve() {
    int n = problem.size();
    for (int used = 1; used < 1 << n; used++) {
      int[] free = bits(used, n);
      for (double clay : new double[] {Double.NaN, reach.leastClay, reach.greatestClay}) {
        trySystem(free, clay, false);
        if (problem.limitsShrinkage()) {
          trySystem(free, clay, true);
        }
      }
    }
    if (shares.length == 0) {
      throw ArgumentFault.finding(
          "mix: the limits leave no mix within rounding", "widen the clay band");
    }
    return shares;
  }

  private void trySystem(int[] free, double clay, boolean atShrinkage) {
    List<double[]> limits = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    double[] ones = new double[problem.size()];
    Arrays.fill(ones, 1);
    limits.add(ones);
    values.add(1.0);
    if (!Double.isNaN(clay)) {
      limits.add(problem.clay);
      values.add(clay);
    }
    if (atShrinkage) {
      limits.add(problem.shrinkage);
      values.add(reach.greatestShrinkage);
    }
    int n = free.length;
    int m = limits.size();
    double[][] matrix = new double[n + m][n + m];
    double[] right = new double[n + m];
    for (int i = 0; i < n; i++) {
      right[i] = gradient[free[i]];
      for (int j = 0; j < n; j++) {
        matrix[i][j] = hessian[free[i]][free[j]];
      }
      for (int k = 0; k < m; k++) {
        matrix[i][n + k] = limits.get(k)[free[i]];
        matrix[n + k][i] = limits.get(k)[free[i]];
      }
    }
    for (int k = 0; k < m; k++) {
      right[n + k] = values.get(k);
    }
    DecompositionSolver solver =
        new LUDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-14).getSolver();
    // Singular: the limits contradict or repeat each other on these components.
    if (solver.isNonSingular()) {
      consider(free, solver.solve(new ArrayRealVector(right, false)).toArray());
    }
  }

  private void consider(int[] free, double[] solution) {
    double[] x = new double[problem.size()];
    double sum = 0;
    for (int i = 0; i < free.length; i++) {
      // NaN fails the comparison and drops out.
      if (!(solution[i] >= -TOLERANCE)) {
        return;
      }
      x[free[i]] = Math.max(0, solution[i]);
      sum += x[free[i]];
    }
    for (int i = 0; i < x.length; i++) {
      x[i] /= sum;
    }
    double clay = MixProblem.dot(problem.clay, x);
    if (clay < reach.leastClay - TOLERANCE
        || clay > reach.greatestClay + TOLERANCE
        || MixProblem.dot(problem.shrinkage, x) > reach.greatestShrinkage + TOLERANCE) {
      return;
    }
    double value = objective(x);
    if (value < best) {
      best = value;
      shares = x;
    }
  }

  private double objective(double[] x) {
    double value = 0;
    for (int k = 0; k < aims.length; k++) {
      double off = MixProblem.dot(rows.get(k), x) - aims[k];
      value += off * off;
    }
    return value + RIDGE * MixProblem.dot(x, x);
  }

  private static int[] bits(int set, int n) {
    int[] list = new int[Integer.bitCount(set)];
    int at = 0;
    for (int i = 0; i < n; i++) {
      if ((set >> i & 1) == 1) {
        list[at++] = i;
      }
    }
    return list;
  }
}
