package io.github.seamstead.geometry.layout;

/** Where every piece lies: a snapshot that a search can take and go back to. */
final class Poses {

  /** Region of a piece that is not placed. */
  static final int PARKED = -1;

  final int[] region;
  final double[] x;
  final double[] y;

  Poses(int pieces) {
    region = new int[pieces];
    x = new double[pieces];
    y = new double[pieces];
  }

  void set(Poses other) {
    System.arraycopy(other.region, 0, region, 0, region.length);
    System.arraycopy(other.x, 0, x, 0, x.length);
    System.arraycopy(other.y, 0, y, 0, y.length);
  }

  Poses copy() {
    Poses p = new Poses(region.length);
    p.set(this);
    return p;
  }
}
