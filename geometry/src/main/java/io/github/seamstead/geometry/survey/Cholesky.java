package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.work.Cancellation;
import java.util.Optional;

/**
 * Dense Cholesky factor {@code N = L L'} of a symmetric positive definite matrix, on rows of the
 * lower triangle. Factor n³/6, inverse n³/3 multiplications, all loops along rows. Every row asks
 * whether to go on: a row of a thousand unknowns takes a millisecond.
 */
final class Cholesky {

  /** A pivot below this part of its diagonal has lost all its digits. */
  private static final double LEAST_PIVOT = 1e-14;

  /** What is under way, for a run that is cancelled. */
  static final String ADJUSTING = "readings were adjusted";

  private final double[][] lower;
  private final Cancellation cancellation;

  private Cholesky(double[][] lower, Cancellation cancellation) {
    this.lower = lower;
    this.cancellation = cancellation;
  }

  /** Factors a copy; empty if the matrix is not positive definite to working precision. */
  static Optional<Cholesky> of(double[][] matrix, Cancellation cancellation) {
    int n = matrix.length;
    double[][] l = new double[n][];
    for (int i = 0; i < n; i++) {
      cancellation.goOn(ADJUSTING);
      double[] row = java.util.Arrays.copyOf(matrix[i], i + 1);
      l[i] = row;
      for (int j = 0; j < i; j++) {
        row[j] = (row[j] - dot(row, l[j], j)) / l[j][j];
      }
      double pivot = row[i] - dot(row, row, i);
      if (!(pivot > LEAST_PIVOT * matrix[i][i])) {
        return Optional.empty();
      }
      row[i] = Math.sqrt(pivot);
    }
    return Optional.of(new Cholesky(l, cancellation));
  }

  double[] solve(double[] right) {
    int n = lower.length;
    double[] x = right.clone();
    for (int i = 0; i < n; i++) {
      x[i] = (x[i] - dot(lower[i], x, i)) / lower[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      x[i] /= lower[i][i];
      for (int j = 0; j < i; j++) {
        x[j] -= lower[i][j] * x[i];
      }
    }
    return x;
  }

  /** The full inverse, {@code L'^-1 L^-1}. */
  double[][] inverse() {
    int n = lower.length;
    double[][] inverseLower = new double[n][];
    for (int i = 0; i < n; i++) {
      cancellation.goOn(ADJUSTING);
      double[] row = new double[i + 1];
      for (int k = 0; k < i; k++) {
        addScaled(row, lower[i][k], inverseLower[k], k + 1);
      }
      for (int j = 0; j < i; j++) {
        row[j] /= -lower[i][i];
      }
      row[i] = 1 / lower[i][i];
      inverseLower[i] = row;
    }
    double[][] inverse = new double[n][n];
    for (int k = 0; k < n; k++) {
      cancellation.goOn(ADJUSTING);
      double[] row = inverseLower[k];
      for (int i = 0; i <= k; i++) {
        addScaled(inverse[i], row[i], row, i + 1);
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        inverse[j][i] = inverse[i][j];
      }
    }
    return inverse;
  }

  private static void addScaled(double[] target, double factor, double[] source, int length) {
    for (int j = 0; j < length; j++) {
      target[j] += factor * source[j];
    }
  }

  private static double dot(double[] a, double[] b, int length) {
    double sum = 0;
    for (int j = 0; j < length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }
}
