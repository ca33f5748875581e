package io.github.seamstead.api.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets labels on a canvas so that none lies on another or is cut off by the drawing's border: each
 * is moved as little as that takes. A label costs time linear in the labels set before. Not
 * thread-safe.
 */
public final class Labels {

  /** The width of a character of a wide sans-serif font over its size, on average. */
  private static final double CHARACTER = 0.66;

  private static final double HEIGHT = 0.8;
  private static final int NEAR = 6;
  private static final int FAR = 60;
  private static final int DIRECTIONS = 16;
  private static final Area ANYWHERE = (x, y) -> true;

  private final Canvas canvas;
  private final List<double[][]> taken = new ArrayList<>();

  /** Tells where a label may lie. */
  @FunctionalInterface
  public interface Area {

    /**
     * Tells whether a point belongs to the thing that the label names.
     *
     * @param x in world units
     * @param y in world units
     * @return true inside
     */
    boolean holds(double x, double y);
  }

  /**
   * Starts without labels.
   *
   * @param canvas where to
   */
  public Labels(Canvas canvas) {
    this.canvas = canvas;
  }

  /**
   * Sets a label that keeps its size and direction.
   *
   * @param x wanted middle, in world units
   * @param y wanted middle, in world units
   * @param text the text
   * @param size its size, in user units
   * @param degrees its direction, counter-clockwise
   * @param area what it names
   */
  public void set(double x, double y, String text, double size, double degrees, Area area) {
    if (!tried(x, y, text, size, degrees, area, true, NEAR)
        && !tried(x, y, text, size, degrees, area, false, FAR)) {
      write(x, y, text, size, degrees);
    }
  }

  /**
   * Sets an upright label of the canvas's ordinary size that may lie on anything but a label.
   *
   * @param x wanted middle, in world units
   * @param y wanted middle, in world units
   * @param text the text
   */
  public void beside(double x, double y, String text) {
    set(x, y, text, canvas.textSize(), 0, (atX, atY) -> true);
  }

  /**
   * Sets a label of the canvas's ordinary size, turned upright where that alone keeps it on what it
   * names. One that has no room there stands beside it at the end of a thin line.
   *
   * @param x wanted middle, in world units
   * @param y wanted middle, in world units
   * @param text the text
   * @param area what it names
   */
  public void fit(double x, double y, String text, Area area) {
    for (boolean whole : new boolean[] {true, false}) {
      for (double degrees : new double[] {0, 90}) {
        int rings = whole ? NEAR : FAR;
        if (tried(x, y, text, canvas.textSize(), degrees, area, whole, rings)) {
          return;
        }
      }
    }
    if (!tried(x, y, text, canvas.textSize(), 0, ANYWHERE, false, FAR)) {
      write(x, y, text, canvas.textSize(), 0);
    }
  }

  private boolean tried(
      double x,
      double y,
      String text,
      double size,
      double degrees,
      Area area,
      boolean whole,
      int rings) {
    for (int ring = 0; ring <= rings; ring++) {
      double distance = 0.5 * ring * size / canvas.scale();
      for (int i = 0; i < (ring == 0 ? 1 : DIRECTIONS); i++) {
        double angle = Math.toRadians(degrees) + 2 * Math.PI * i / DIRECTIONS;
        double atX = x + distance * StrictMath.cos(angle);
        double atY = y + distance * StrictMath.sin(angle);
        double[][] box = box(atX, atY, text, size, degrees);
        if (area.holds(atX, atY) && (!whole || inside(box, area)) && free(box)) {
          if (area == ANYWHERE) {
            canvas.line(x, y, atX, atY, Ink.THIN);
          }
          write(atX, atY, text, size, degrees);
          return true;
        }
      }
    }
    return false;
  }

  private void write(double x, double y, String text, double size, double degrees) {
    taken.add(box(x, y, text, size, degrees));
    canvas.text(x, y, text, size, "middle", degrees);
  }

  private static boolean inside(double[][] box, Area area) {
    for (double[] corner : box) {
      if (!area.holds(corner[0], corner[1])) {
        return false;
      }
    }
    return true;
  }

  private boolean free(double[][] box) {
    for (double[] corner : box) {
      if (!canvas.shows(corner[0], corner[1])) {
        return false;
      }
    }
    return taken.stream().allMatch(other -> apart(box, other));
  }

  private double[][] box(double x, double y, String text, double size, double degrees) {
    double halfWidth = CHARACTER * size * text.length() / 2 / canvas.scale();
    double halfHeight = HEIGHT * size / 2 / canvas.scale();
    double cos = StrictMath.cos(Math.toRadians(degrees));
    double sin = StrictMath.sin(Math.toRadians(degrees));
    double[][] box = new double[4][];
    for (int i = 0; i < 4; i++) {
      double u = i == 0 || i == 3 ? -halfWidth : halfWidth;
      double v = i < 2 ? -halfHeight : halfHeight;
      box[i] = new double[] {x + u * cos - v * sin, y + u * sin + v * cos};
    }
    return box;
  }

  /** Two rectangles are apart if a side of one of them separates them. */
  private static boolean apart(double[][] one, double[][] other) {
    return separated(one, one, other) || separated(other, one, other);
  }

  private static boolean separated(double[][] by, double[][] one, double[][] other) {
    for (int side = 0; side < 2; side++) {
      double nx = by[side + 1][1] - by[side][1];
      double ny = by[side][0] - by[side + 1][0];
      double[] a = reach(one, nx, ny);
      double[] b = reach(other, nx, ny);
      if (a[1] <= b[0] || b[1] <= a[0]) {
        return true;
      }
    }
    return false;
  }

  private static double[] reach(double[][] box, double nx, double ny) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] corner : box) {
      double along = corner[0] * nx + corner[1] * ny;
      low = Math.min(low, along);
      high = Math.max(high, along);
    }
    return new double[] {low, high};
  }
}
