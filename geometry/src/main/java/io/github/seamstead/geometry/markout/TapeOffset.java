package io.github.seamstead.geometry.markout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A point by the two distances with which it is marked from a base line: with a tape along the line
 * and a square.
 *
 * @param along along the base line from its zero, in metres; negative behind the zero
 * @param across square to the base line, in metres, positive on its left
 */
public record TapeOffset(double along, double across) {

  private static final Source SQUARE = Source.derived("components along and square to a line");

  /**
   * Measures a point without worked steps; see {@link #of(Vector2D, Vector2D, Vector2D, Steps)}.
   *
   * @param point p, in metres
   * @param zero z, where the base line starts, in metres
   * @param end e, where it ends, in metres, away from the zero
   * @return its two distances
   * @throws IllegalArgumentException if the base line has no length
   */
  public static TapeOffset of(Vector2D point, Vector2D zero, Vector2D end) {
    return of(point, zero, end, Steps.none());
  }

  /**
   * Measures a point: along the base line {@code ((p - z) . (e - z)) / L}, and square to it {@code
   * ((e - z) x (p - z)) / L}. The last step is the offset square to the line.
   *
   * @param point p, in metres
   * @param zero z, where the base line starts, in metres
   * @param end e, where it ends, in metres, away from the zero
   * @param steps where the steps are written
   * @return its two distances
   * @throws IllegalArgumentException if the base line has no length
   */
  @Calculation("geometry.markout.offset")
  public static TapeOffset of(Vector2D point, Vector2D zero, Vector2D end, Steps steps) {
    Args.positive("length of the base line", zero.distance(end), "m");
    double dx = component("dx", "base line, x", end.getX() - zero.getX(), steps);
    double dy = component("dy", "base line, y", end.getY() - zero.getY(), steps);
    double px = component("px", "point from the zero, x", point.getX() - zero.getX(), steps);
    double py = component("py", "point from the zero, y", point.getY() - zero.getY(), steps);
    double length =
        steps
            .step("L", "length of the base line")
            .formula("sqrt(dx^2 + dy^2)")
            .with("dx", dx, "m")
            .with("dy", dy, "m")
            .from(SQUARE)
            .gives(Math.sqrt(dx * dx + dy * dy), "m");
    double along =
        steps
            .step("s", "along the base line")
            .formula("(px * dx + py * dy) / L")
            .with("px", px, "m")
            .with("dx", dx, "m")
            .with("py", py, "m")
            .with("dy", dy, "m")
            .with("L", length, "m")
            .from(SQUARE)
            .gives((px * dx + py * dy) / length, "m");
    double across =
        steps
            .step("o", "square to the base line")
            .formula("(dx * py - dy * px) / L")
            .with("dx", dx, "m")
            .with("py", py, "m")
            .with("dy", dy, "m")
            .with("px", px, "m")
            .with("L", length, "m")
            .from(SQUARE)
            .gives((dx * py - dy * px) / length, "m");
    return new TapeOffset(along, across);
  }

  private static double component(String symbol, String what, double value, Steps steps) {
    return steps.step(symbol, what).gives(value, "m");
  }

  /**
   * Gives the point in the base line's own axes.
   *
   * @return x along, y across, in metres
   */
  public Vector2D point() {
    return Vector2D.of(along, across);
  }
}
