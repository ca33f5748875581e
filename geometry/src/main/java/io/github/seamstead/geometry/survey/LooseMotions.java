package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;

/**
 * Motions of the nodes against each other that no reading sees: the null space of the design matrix
 * without the free motions of the whole, at the start frame, by Cholesky with full pivoting.
 */
final class LooseMotions {

  /**
   * Of the mean diagonal. A motion below it would be known some 30 000 times worse than a reading,
   * that is, not at all.
   */
  private static final double LEAST_PIVOT = 1e-9;

  private LooseMotions() {}

  /** Orthonormal loose motions; empty for a sound set. O(u³). */
  static List<double[]> of(NetworkModel model, Cancellation cancellation) {
    double[] x = model.start();
    int n = x.length;
    double[][] matrix = new double[n][n];
    DesignRow row = new DesignRow(model.mostPerObservation());
    double[] ignored = new double[n];
    double[][] lower = new double[n][];
    for (int i = 0; i < n; i++) {
      lower[i] = new double[i + 1];
    }
    for (int i = 0; i < model.observations(); i++) {
      model.evaluate(i, x, row);
      // Unit weights: what is measurable is a matter of geometry, not of precision.
      row.accumulate(1, 0, lower, ignored);
    }
    double scale = 0;
    for (int i = 0; i < n; i++) {
      scale += lower[i][i] / n;
    }
    for (double[] g : model.freeMotions(x)) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j <= i; j++) {
          lower[i][j] += scale * g[i] * g[j];
        }
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        matrix[i][j] = lower[i][j];
        matrix[j][i] = lower[i][j];
      }
    }
    return nullSpace(matrix, LEAST_PIVOT * scale, cancellation);
  }

  /** Pivoted elimination in place on a full symmetric matrix. */
  private static List<double[]> nullSpace(
      double[][] matrix, double least, Cancellation cancellation) {
    int n = matrix.length;
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    int rank = 0;
    while (rank < n) {
      cancellation.goOn(Cholesky.ADJUSTING);
      int best = rank;
      for (int i = rank + 1; i < n; i++) {
        if (matrix[order[i]][order[i]] > matrix[order[best]][order[best]]) {
          best = i;
        }
      }
      int pivot = order[best];
      if (!(matrix[pivot][pivot] > least)) {
        break;
      }
      order[best] = order[rank];
      order[rank] = pivot;
      double[] pivotRow = matrix[pivot];
      for (int i = rank + 1; i < n; i++) {
        double[] target = matrix[order[i]];
        double factor = target[pivot] / pivotRow[pivot];
        if (factor != 0) {
          for (int j = rank + 1; j < n; j++) {
            target[order[j]] -= factor * pivotRow[order[j]];
          }
        }
      }
      rank++;
    }
    List<double[]> vectors = new ArrayList<>();
    for (int free = rank; free < n; free++) {
      cancellation.goOn(Cholesky.ADJUSTING);
      double[] vector = new double[n];
      vector[order[free]] = 1;
      // Row k of the eliminated system: pivot x_k + the later entries = 0.
      for (int k = rank - 1; k >= 0; k--) {
        double sum = 0;
        double[] pivotRow = matrix[order[k]];
        for (int j = k + 1; j < n; j++) {
          sum += pivotRow[order[j]] * vector[order[j]];
        }
        vector[order[k]] = -sum / pivotRow[order[k]];
      }
      vectors.add(vector);
    }
    return FreeMotions.orthonormal(vectors);
  }
}
