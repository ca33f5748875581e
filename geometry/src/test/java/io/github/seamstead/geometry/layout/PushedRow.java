package io.github.seamstead.geometry.layout;

/**
 * A row of convex panels pushed together from the right, each at a given height: an oracle for rows
 * that knows nothing of legs and pitches. Every panel is held against all before it, along every
 * height at which both are present.
 */
final class PushedRow {

  private PushedRow() {}

  /**
   * The panel as a polygon, x and y in turn, standing or turned by half a turn, lowest point at 0.
   */
  static double[] panel(PanelShape p, boolean turned) {
    double[] xy = {0, 0, p.b(), 0, p.l() + p.t(), p.h(), p.l(), p.h()};
    for (int i = 0; turned && i < xy.length; i += 2) {
      xy[i] = -xy[i];
      xy[i + 1] = p.h() - xy[i + 1];
    }
    return xy;
  }

  /** Length of the row in this order, as short as the heights allow. */
  static double length(double[][] panels, double[] heights) {
    double[] x = new double[panels.length];
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < panels.length; i++) {
      for (int j = 0; j < i; j++) {
        double least = x[j] + apart(panels[j], heights[j], panels[i], heights[i]);
        x[i] = j == 0 ? least : Math.max(x[i], least);
      }
      from = Math.min(from, x[i] + reach(panels[i], false));
      to = Math.max(to, x[i] + reach(panels[i], true));
    }
    return to - from;
  }

  /** The least move to the right at which b is clear of a: attained level with a corner of one. */
  private static double apart(double[] a, double heightA, double[] b, double heightB) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < a.length; i += 2) {
      most = Math.max(most, at(a, heightA, b, heightB, a[i] + heightA));
      most = Math.max(most, at(a, heightA, b, heightB, b[i] + heightB));
    }
    return most;
  }

  private static double at(double[] a, double heightA, double[] b, double heightB, double y) {
    double right = edge(a, y - heightA, true);
    double left = edge(b, y - heightB, false);
    return Double.isNaN(right) || Double.isNaN(left) ? Double.NEGATIVE_INFINITY : right - left;
  }

  /** The outermost x of a convex polygon at height y; NaN where it is not present. */
  private static double edge(double[] p, double y, boolean right) {
    double out = Double.NaN;
    for (int i = 0; i < p.length; i += 2) {
      int k = (i + 2) % p.length;
      double y0 = p[i + 1];
      double y1 = p[k + 1];
      // Corners at equal height have to be told as such after heights were added and taken away.
      double x = Double.NaN;
      if (Math.abs(y - y0) < 1e-9) {
        x = p[i];
      } else if (Math.min(y0, y1) < y && y < Math.max(y0, y1)) {
        x = p[i] + (p[k] - p[i]) * (y - y0) / (y1 - y0);
      }
      out = Double.isNaN(out) ? x : Double.isNaN(x) ? out : right == x > out ? x : out;
    }
    return out;
  }

  private static double reach(double[] p, boolean right) {
    double out = p[0];
    for (int i = 2; i < p.length; i += 2) {
      out = right == p[i] > out ? p[i] : out;
    }
    return out;
  }
}
