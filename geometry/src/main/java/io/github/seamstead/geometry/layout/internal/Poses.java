package io.github.seamstead.geometry.layout.internal;

/** Where every piece lies: a snapshot that a search can take and go back to. */
public final class Poses {

  /** Region of a piece that is not placed. */
  public static final int PARKED = -1;

  public final int[] region;
  public final double[] x;
  public final double[] y;

  /** Turn of a piece that lies at any angle, in radians; of no meaning for others. */
  public final double[] angle;

  public Poses(int pieces) {
    region = new int[pieces];
    x = new double[pieces];
    y = new double[pieces];
    angle = new double[pieces];
  }

  void set(Poses other) {
    System.arraycopy(other.region, 0, region, 0, region.length);
    System.arraycopy(other.x, 0, x, 0, x.length);
    System.arraycopy(other.y, 0, y, 0, y.length);
    System.arraycopy(other.angle, 0, angle, 0, angle.length);
  }

  /** Takes over where a piece lies from another's piece. */
  public void take(int i, Poses other, int from) {
    region[i] = other.region[from];
    x[i] = other.x[from];
    y[i] = other.y[from];
    angle[i] = other.angle[from];
  }

  public Poses copy() {
    Poses p = new Poses(region.length);
    p.set(this);
    return p;
  }
}
