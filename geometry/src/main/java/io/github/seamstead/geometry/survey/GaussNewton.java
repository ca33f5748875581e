package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.work.Cancellation;
import java.util.Arrays;
import java.util.Optional;

/**
 * Weighted nonlinear least squares, {@code sum p (observed - computed(x))^2 = min}, by Gauss-Newton
 * steps on the normal equations {@code N d = A'P w}.
 *
 * <p>Free motions G (orthonormal, {@code A G = 0}) are fixed by inner constraints: {@code (N + c G
 * G') d = A'P w - c G G'(x - x0)}, which brings about {@code G'(x - x0) = 0} at the end, so that of
 * all equal solutions the one nearest to the start is found. A step that does not lower the sum is
 * damped (Marquardt: the diagonal is enlarged) until it does. Where large residuals in a weak
 * network keep plain steps from settling, the second derivatives are taken in (Newton). Cost per
 * step for u unknowns and m observations with few unknowns each: O(u³/6 + m).
 */
final class GaussNewton {

  private static final int MOST_STEPS = 200;

  /** Where plain steps have not settled by now, residuals bend the way: Newton steps follow. */
  private static final int PLAIN_STEPS = 12;

  /** A last step this long, in standard uncertainties of the readings, is an end. */
  private static final double CONVERGED = 1e-7;

  /** The same relative to the root of the sum of squares, for sums in large units. */
  private static final double CONVERGED_RATIO = 1e-8;

  private static final double FIRST_DAMPING = 1e-4;
  private static final double MOST_DAMPING = 1e16;

  private final ObservationModel model;
  private final DesignRow row;
  private final int unknowns;
  private final Cancellation cancellation;

  private GaussNewton(ObservationModel model, Cancellation cancellation) {
    this.model = model;
    this.cancellation = cancellation;
    this.row = new DesignRow(model.mostPerObservation());
    this.unknowns = model.unknowns();
  }

  /** The end of the iteration; the arrays are not copied and must not be changed. */
  static final class Solution {

    private final double[] unknowns;
    private final double[][] cofactors;
    private final double weightedSquares;
    private final int steps;

    private Solution(double[] unknowns, double[][] cofactors, double weightedSquares, int steps) {
      this.unknowns = unknowns;
      this.cofactors = cofactors;
      this.weightedSquares = weightedSquares;
      this.steps = steps;
    }

    double[] unknowns() {
      return unknowns;
    }

    /** {@code Q}, the covariance of the unknowns for unit variance factor. */
    double[][] cofactors() {
      return cofactors;
    }

    double weightedSquares() {
      return weightedSquares;
    }

    /** How many steps were accepted. */
    int steps() {
      return steps;
    }
  }

  /** Solves; empty if the normal matrix is singular or the iteration does not settle. */
  static Optional<Solution> solve(ObservationModel model, Cancellation cancellation) {
    return new GaussNewton(model, cancellation).run();
  }

  private Optional<Solution> run() {
    double[] x = model.start();
    double cost = cost(x);
    double damping = 0;
    for (int step = 1; step <= MOST_STEPS; step++) {
      Normal normal = normal(x, step > PLAIN_STEPS);
      boolean accepted = false;
      boolean settled = false;
      while (!accepted) {
        Optional<Cholesky> factor = Cholesky.of(normal.damped(damping), cancellation);
        if (factor.isPresent()) {
          double[] d = factor.get().solve(normal.right);
          double[] tried = x.clone();
          for (int i = 0; i < unknowns; i++) {
            tried[i] += d[i];
          }
          double triedCost = cost(tried);
          settled = Math.sqrt(gain(d, normal.right)) < bound(cost);
          // Within rounding of the sum, the step is the last correction and is taken.
          accepted = triedCost <= cost * (1 + 1e-10) || settled;
          if (accepted) {
            x = tried;
            cost = triedCost;
          }
        }
        if (!accepted) {
          damping = damping == 0 ? FIRST_DAMPING : damping * 10;
          if (!(damping < MOST_DAMPING)) {
            return Optional.empty();
          }
        }
      }
      // A damped step may be short far from the end: convergence is judged on a full one.
      if (settled && damping < 1e-6) {
        return finish(x, cost, step);
      }
      damping = damping < 1e-6 ? 0 : damping / 10;
    }
    return Optional.empty();
  }

  private Optional<Solution> finish(double[] x, double cost, int steps) {
    Normal normal = normal(x, false);
    return Cholesky.of(normal.damped(0), cancellation)
        .map(
            factor -> {
              double[][] q = factor.inverse();
              for (double[] g : normal.motions) {
                for (int i = 0; i < unknowns; i++) {
                  for (int j = 0; j < unknowns; j++) {
                    q[i][j] -= g[i] * g[j] / normal.tie;
                  }
                }
              }
              return new Solution(x, q, cost, steps);
            });
  }

  private double cost(double[] x) {
    double sum = 0;
    for (int i = 0; i < model.observations(); i++) {
      double w = model.evaluate(i, x, row);
      sum += model.weight(i) * w * w;
    }
    return Double.isFinite(sum) ? sum : Double.POSITIVE_INFINITY;
  }

  private Normal normal(double[] x, boolean bent) {
    double[][] lower = new double[unknowns][];
    for (int i = 0; i < unknowns; i++) {
      lower[i] = new double[i + 1];
    }
    double[] right = new double[unknowns];
    for (int i = 0; i < model.observations(); i++) {
      double w = model.evaluate(i, x, row);
      row.accumulate(model.weight(i), w, lower, right);
    }
    double tie = 0;
    double[] diagonal = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      diagonal[i] = lower[i][i];
      tie += diagonal[i] / unknowns;
    }
    for (int i = 0; bent && i < model.observations(); i++) {
      double w = model.evaluate(i, x, row);
      model.addCurvature(i, x, -model.weight(i) * w, lower);
    }
    double[][] motions = model.freeMotions(x);
    double[] datum = motions.length > 0 ? model.datum(x) : x;
    for (double[] g : motions) {
      double along = 0;
      for (int i = 0; i < unknowns; i++) {
        along += g[i] * (x[i] - datum[i]);
      }
      for (int i = 0; i < unknowns; i++) {
        right[i] -= tie * along * g[i];
        for (int j = 0; j <= i; j++) {
          lower[i][j] += tie * g[i] * g[j];
        }
      }
    }
    return new Normal(lower, right, motions, tie, diagonal);
  }

  /** The length of a step d with {@code N d = b}, squared: {@code d'N d = d'b}. */
  private static double gain(double[] d, double[] right) {
    double sum = 0;
    for (int i = 0; i < d.length; i++) {
      sum += d[i] * right[i];
    }
    return Math.max(sum, 0);
  }

  private static double bound(double cost) {
    return Math.max(CONVERGED, CONVERGED_RATIO * Math.sqrt(cost));
  }

  /** The normal equations at one place. */
  private static final class Normal {

    private final double[][] lower;
    private final double[] right;
    private final double[][] motions;
    private final double tie;
    private final double[] diagonal;

    Normal(double[][] lower, double[] right, double[][] motions, double tie, double[] diagonal) {
      this.diagonal = diagonal;
      this.lower = lower;
      this.right = right;
      this.motions = motions;
      this.tie = tie;
    }

    double[][] damped(double damping) {
      if (damping == 0) {
        return lower;
      }
      double[][] enlarged = new double[lower.length][];
      for (int i = 0; i < lower.length; i++) {
        enlarged[i] = Arrays.copyOf(lower[i], i + 1);
        enlarged[i][i] += damping * diagonal[i];
      }
      return enlarged;
    }
  }
}
