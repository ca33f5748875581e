package io.github.seamstead.geometry.layout.internal;

/**
 * The lines along which a piece touches its neighbours and the sides of its region, and where they
 * cross.
 */
final class Faces {

  /** The oldest make room for new ones: a piece that is nearly placed touches few neighbours. */
  private static final int MOST = 12;

  private static final int SIDES = 4;

  /** Lines {@code nx x + ny y = c}; the first are the sides of the region. */
  private final double[] nx = new double[MOST];

  private final double[] ny = new double[MOST];
  private final double[] c = new double[MOST];
  private final double[] x = new double[MOST];
  private final double[] y = new double[MOST];
  private int count;

  /** Forgets all but the sides of a region for a piece in an orientation. */
  void begin(Nest nest, int r, int o) {
    set(0, 1, 0, nest.minX(r, o));
    set(1, 1, 0, nest.maxX(r, o));
    set(2, 0, 1, nest.minY(r, o));
    set(3, 0, 1, nest.maxY(r, o));
    count = SIDES;
  }

  private void set(int k, double normalX, double normalY, double offset) {
    nx[k] = normalX;
    ny[k] = normalY;
    c[k] = offset;
  }

  int count() {
    return count;
  }

  /** Adds the line square to a way out of given length from a place. */
  void add(double px, double py, double wayX, double wayY, double length) {
    if (count < MOST) {
      set(count++, wayX, wayY, wayX * px + wayY * py + length);
    }
  }

  /** Finds where a line crosses those before it and gives the number of crossings. */
  int cross(int k) {
    int found = 0;
    for (int j = 0; j < k; j++) {
      double det = nx[k] * ny[j] - ny[k] * nx[j];
      if (Math.abs(det) > 1e-9) {
        x[found] = (c[k] * ny[j] - c[j] * ny[k]) / det;
        y[found++] = (nx[k] * c[j] - nx[j] * c[k]) / det;
      }
    }
    return found;
  }

  double x(int crossing) {
    return x[crossing];
  }

  double y(int crossing) {
    return y[crossing];
  }
}
