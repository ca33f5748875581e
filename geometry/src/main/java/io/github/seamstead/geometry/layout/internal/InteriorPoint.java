package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * Minimises one variable under linear constraints, by the primal-dual interior point method with
 * predictor and corrector (Mehrotra 1992, SIAM Journal on Optimization 2: from memory).
 *
 * <p>Each constraint {@code a . v >= b} names at most four variables. The normal equations are
 * solved by Cholesky's method within their envelope, so that variables which share constraints
 * should stand near one another; the one that is minimised comes last. O(n w²) for n variables and
 * an envelope w wide, for each of some twenty rounds.
 */
final class InteriorPoint {

  private static final int ROUNDS = 60;

  /** How near to the end of its range a step may come. */
  private static final double SHY = 0.995;

  /** What may be left of the mean product of slack and multiplier, and of any violation. */
  private static final double GAP = 1e-11;

  private static final double VIOLATION = 2e-11;

  /** What may be left of the gap where rounding ends the rounds. */
  private static final double ROUGH_GAP = 1e-8;

  /**
   * Rounds after which violations that no longer halve tell that no point keeps all constraints.
   */
  private static final int PATIENT = 25;

  private static final double CLEAR_VIOLATION = 1e-7;

  private final int n;
  private int rows;
  private int[] at = new int[1024];
  private double[] factor = new double[1024];
  private double[] bound = new double[256];

  private final int[] first;
  private final double[][] matrix;
  private double[] slack = new double[0];
  private double[] multiplier = new double[0];
  private double[] slackStep = new double[0];
  private double[] multiplierStep = new double[0];
  private double[] wanted = new double[0];
  private double[] missing = new double[0];
  private final double[] value;
  private final double[] step;
  private final double[] right;

  InteriorPoint(int variables) {
    n = variables;
    first = new int[n];
    matrix = new double[n][];
    value = new double[n];
    step = new double[n];
    right = new double[n];
  }

  /** Adds {@code a0 v[k0] + a1 v[k1] + a2 v[k2] + a3 v[k3] >= b}; a factor may be 0. */
  void add(int k0, double a0, int k1, double a1, int k2, double a2, int k3, double a3, double b) {
    if (rows == bound.length) {
      bound = Arrays.copyOf(bound, 2 * rows);
      at = Arrays.copyOf(at, 8 * rows);
      factor = Arrays.copyOf(factor, 8 * rows);
    }
    int r = 4 * rows;
    at[r] = k0;
    at[r + 1] = k1;
    at[r + 2] = k2;
    at[r + 3] = k3;
    factor[r] = a0;
    factor[r + 1] = a1;
    factor[r + 2] = a2;
    factor[r + 3] = a3;
    bound[rows++] = b;
  }

  /** Adds {@code a v[k] >= b}. */
  void add(int k, double a, double b) {
    add(k, a, k, 0, k, 0, k, 0, b);
  }

  double value(int k) {
    return value[k];
  }

  /**
   * Searches for the least of the last variable, from where all are 0.
   *
   * @param scale about how large slacks are
   * @return true if it was found, false if there is none or rounding is in the way
   */
  boolean minimise(double scale) {
    begin(scale);
    double least = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      double gap = 0;
      double violation = 0;
      for (int r = 0; r < rows; r++) {
        gap += slack[r] * multiplier[r];
        missing[r] = bound[r] - product(r, value) + slack[r];
        violation = Math.max(violation, Math.abs(missing[r]));
      }
      gap /= rows;
      if (gap <= GAP && violation <= VIOLATION) {
        return true;
      }
      if (!Double.isFinite(gap) || isStuck(round, violation, least)) {
        return false;
      }
      least = Math.min(least, violation);
      if (!factorise()) {
        return gap <= ROUGH_GAP && violation <= VIOLATION;
      }
      for (int r = 0; r < rows; r++) {
        wanted[r] = -slack[r] * multiplier[r];
      }
      direction();
      double primal = longest(slack, slackStep);
      double dual = longest(multiplier, multiplierStep);
      double ahead = 0;
      for (int r = 0; r < rows; r++) {
        ahead += (slack[r] + primal * slackStep[r]) * (multiplier[r] + dual * multiplierStep[r]);
      }
      double part = ahead / rows / gap;
      double centre = part * part * part * gap;
      for (int r = 0; r < rows; r++) {
        wanted[r] = centre - slack[r] * multiplier[r] - slackStep[r] * multiplierStep[r];
      }
      direction();
      primal = Math.min(1, SHY * longest(slack, slackStep));
      dual = Math.min(1, SHY * longest(multiplier, multiplierStep));
      for (int k = 0; k < n; k++) {
        value[k] += primal * step[k];
      }
      for (int r = 0; r < rows; r++) {
        slack[r] += primal * slackStep[r];
        multiplier[r] += dual * multiplierStep[r];
      }
    }
    return false;
  }

  private static boolean isStuck(int round, double violation, double least) {
    return round > PATIENT && violation > least / 2 && violation > CLEAR_VIOLATION;
  }

  private void begin(double scale) {
    slack = new double[rows];
    multiplier = new double[rows];
    slackStep = new double[rows];
    multiplierStep = new double[rows];
    wanted = new double[rows];
    missing = new double[rows];
    Arrays.fill(value, 0);
    for (int r = 0; r < rows; r++) {
      slack[r] = Math.max(-bound[r], 0.1 * scale);
      multiplier[r] = 0.1 * scale / slack[r];
    }
    envelope();
  }

  private void envelope() {
    for (int k = 0; k < n; k++) {
      first[k] = k;
    }
    for (int r = 0; r < rows; r++) {
      int least = n;
      for (int t = 4 * r; t < 4 * r + 4; t++) {
        least = factor[t] != 0 ? Math.min(least, at[t]) : least;
      }
      for (int t = 4 * r; t < 4 * r + 4; t++) {
        if (factor[t] != 0) {
          first[at[t]] = Math.min(first[at[t]], least);
        }
      }
    }
    for (int k = 0; k < n; k++) {
      matrix[k] = new double[k - first[k] + 1];
    }
  }

  private double product(int r, double[] v) {
    int t = 4 * r;
    return factor[t] * v[at[t]]
        + factor[t + 1] * v[at[t + 1]]
        + factor[t + 2] * v[at[t + 2]]
        + factor[t + 3] * v[at[t + 3]];
  }

  /** Cholesky's factor of the normal matrix; false where rounding leaves it without one. */
  private boolean factorise() {
    for (int k = 0; k < n; k++) {
      Arrays.fill(matrix[k], 0);
      matrix[k][k - first[k]] = 1e-13;
    }
    for (int r = 0; r < rows; r++) {
      double weight = multiplier[r] / slack[r];
      for (int t = 4 * r; t < 4 * r + 4; t++) {
        if (factor[t] != 0) {
          double w = weight * factor[t];
          for (int u = 4 * r; u < 4 * r + 4; u++) {
            if (at[u] <= at[t] && factor[u] != 0) {
              matrix[at[t]][at[u] - first[at[t]]] += w * factor[u];
            }
          }
        }
      }
    }
    for (int i = 0; i < n; i++) {
      double[] row = matrix[i];
      int from = first[i];
      for (int j = from; j < i; j++) {
        double[] other = matrix[j];
        int start = Math.max(from, first[j]);
        double sum = row[j - from];
        for (int k = start; k < j; k++) {
          sum -= row[k - from] * other[k - first[j]];
        }
        row[j - from] = sum / other[j - first[j]];
      }
      double pivot = row[i - from];
      for (int k = 0; k < i - from; k++) {
        pivot -= row[k] * row[k];
      }
      if (!(pivot > 0)) {
        return false;
      }
      row[i - from] = Math.sqrt(pivot);
    }
    return true;
  }

  private void direction() {
    Arrays.fill(right, 0);
    right[n - 1] = -1;
    for (int r = 0; r < rows; r++) {
      double push = (wanted[r] + multiplier[r] * missing[r]) / slack[r] + multiplier[r];
      for (int t = 4 * r; t < 4 * r + 4; t++) {
        right[at[t]] += factor[t] * push;
      }
    }
    for (int i = 0; i < n; i++) {
      double sum = right[i];
      double[] row = matrix[i];
      for (int k = first[i]; k < i; k++) {
        sum -= row[k - first[i]] * step[k];
      }
      step[i] = sum / row[i - first[i]];
    }
    for (int i = n - 1; i >= 0; i--) {
      double[] row = matrix[i];
      step[i] /= row[i - first[i]];
      for (int k = first[i]; k < i; k++) {
        step[k] -= row[k - first[i]] * step[i];
      }
    }
    for (int r = 0; r < rows; r++) {
      slackStep[r] = product(r, step) - missing[r];
      multiplierStep[r] = (wanted[r] - multiplier[r] * slackStep[r]) / slack[r];
    }
  }

  private double longest(double[] from, double[] way) {
    double longest = 1;
    for (int r = 0; r < rows; r++) {
      if (way[r] < 0) {
        longest = Math.min(longest, -from[r] / way[r]);
      }
    }
    return longest;
  }
}
