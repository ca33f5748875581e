package io.github.seamstead.shared.plane;

/**
 * An upright rectangle.
 *
 * @param minX left side, in metres
 * @param minY lower side, in metres
 * @param maxX right side, in metres, at least {@code minX}
 * @param maxY upper side, in metres, at least {@code minY}
 */
public record Bounds(double minX, double minY, double maxX, double maxY) {

  /**
   * Gives the extent along x.
   *
   * @return in metres
   */
  public double width() {
    return maxX - minX;
  }

  /**
   * Gives the extent along y.
   *
   * @return in metres
   */
  public double height() {
    return maxY - minY;
  }
}
