package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * The rigid motions (three shifts, three turns) that no reading can see: those combinations of the
 * six in which every row of the design matrix vanishes. Distances alone leave six, with levels four
 * (three shifts and the turn about the plumb line), held points fewer.
 */
final class FreeMotions {

  /** Of a squared norm: a motion that readings see is far above, rounding far below. */
  private static final double SEEN = 1e-12;

  private FreeMotions() {}

  static double[][] of(NetworkModel model, double[] x) {
    List<double[]> basis = orthonormal(rigid(model, x));
    int size = basis.size();
    if (size == 0) {
      return new double[0][];
    }
    double[][] seen = new double[size][size];
    DesignRow row = new DesignRow(model.mostPerObservation());
    double[] along = new double[size];
    for (int i = 0; i < model.observations(); i++) {
      model.evaluate(i, x, row);
      for (int k = 0; k < size; k++) {
        along[k] = row.dot(basis.get(k));
      }
      for (int k = 0; k < size; k++) {
        for (int j = 0; j < size; j++) {
          seen[k][j] += along[k] * along[j];
        }
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(seen, false));
    List<double[]> free = new ArrayList<>();
    for (int k = 0; k < size; k++) {
      if (eigen.getRealEigenvalue(k) < SEEN) {
        double[] motion = new double[model.unknowns()];
        for (int j = 0; j < size; j++) {
          add(motion, eigen.getEigenvector(k).getEntry(j), basis.get(j));
        }
        free.add(motion);
      }
    }
    return orthonormal(free).toArray(double[][]::new);
  }

  private static List<double[]> rigid(NetworkModel model, double[] x) {
    double[] middle = new double[3];
    for (int node = 0; node < model.nodes(); node++) {
      for (int axis = 0; axis < 3; axis++) {
        middle[axis] += model.coordinate(node, axis, x) / model.nodes();
      }
    }
    double[][] motions = new double[6][model.unknowns()];
    for (int node = 0; node < model.nodes(); node++) {
      for (int axis = 0; axis < 3; axis++) {
        int next = (axis + 1) % 3;
        int last = (axis + 2) % 3;
        // A turn about `axis` moves `next` by minus the distance along `last`, and the reverse.
        set(motions[axis], model.unknown(node, axis), 1);
        set(
            motions[3 + axis],
            model.unknown(node, next),
            middle[last] - model.coordinate(node, last, x));
        set(
            motions[3 + axis],
            model.unknown(node, last),
            model.coordinate(node, next, x) - middle[next]);
      }
    }
    return List.of(motions);
  }

  private static void set(double[] motion, int unknown, double value) {
    if (unknown >= 0) {
      motion[unknown] = value;
    }
  }

  /** Gram-Schmidt, twice for full precision; what depends on the former is dropped. */
  static List<double[]> orthonormal(List<double[]> vectors) {
    List<double[]> basis = new ArrayList<>();
    for (double[] vector : vectors) {
      double[] rest = vector.clone();
      double before = norm(rest);
      for (int pass = 0; pass < 2; pass++) {
        for (double[] b : basis) {
          add(rest, -dot(rest, b), b);
        }
      }
      double left = norm(rest);
      if (left > 1e-9 * before) {
        for (int i = 0; i < rest.length; i++) {
          rest[i] /= left;
        }
        basis.add(rest);
      }
    }
    return basis;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double norm(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  static void add(double[] target, double factor, double[] source) {
    for (int i = 0; i < target.length; i++) {
      target[i] += factor * source[i];
    }
  }
}
