package io.github.seamstead.geometry.survey;

/** The non-zero derivatives of one observation by the unknowns. Reused from row to row. */
final class DesignRow {

  private final int[] index;
  private final double[] coefficient;
  private int size;

  DesignRow(int capacity) {
    index = new int[capacity];
    coefficient = new double[capacity];
  }

  void clear() {
    size = 0;
  }

  /** Adds a derivative; one by a held coordinate (index below 0) is left out. */
  void add(int unknown, double derivative) {
    if (unknown >= 0) {
      index[size] = unknown;
      coefficient[size] = derivative;
      size++;
    }
  }

  int size() {
    return size;
  }

  int index(int k) {
    return index[k];
  }

  double coefficient(int k) {
    return coefficient[k];
  }

  /** The product with a dense vector. */
  double dot(double[] vector) {
    double sum = 0;
    for (int k = 0; k < size; k++) {
      sum += coefficient[k] * vector[index[k]];
    }
    return sum;
  }

  /** The quadratic form {@code a Q b'} with a full symmetric matrix. */
  double form(double[][] matrix, DesignRow other) {
    double sum = 0;
    for (int k = 0; k < size; k++) {
      sum += coefficient[k] * other.dot(matrix[index[k]]);
    }
    return sum;
  }

  /** The product {@code Q a'} with a full symmetric matrix. */
  double[] times(double[][] matrix) {
    double[] product = new double[matrix.length];
    for (int k = 0; k < size; k++) {
      double[] row = matrix[index[k]];
      for (int j = 0; j < product.length; j++) {
        product[j] += coefficient[k] * row[j];
      }
    }
    return product;
  }

  /** Adds {@code p a' a} to the lower triangle and {@code p w a'} to the right-hand side. */
  void accumulate(double weight, double misclosure, double[][] lower, double[] right) {
    for (int k = 0; k < size; k++) {
      double scaled = weight * coefficient[k];
      right[index[k]] += scaled * misclosure;
      for (int j = 0; j < size; j++) {
        if (index[j] <= index[k]) {
          lower[index[k]][index[j]] += scaled * coefficient[j];
        }
      }
    }
  }
}
