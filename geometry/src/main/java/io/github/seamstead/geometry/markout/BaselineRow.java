package io.github.seamstead.geometry.markout;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A corner set out by a distance along the baseline and an offset square to it.
 *
 * @param corner the corner's index in the outline
 * @param station along the baseline from its zero, in metres; negative behind the zero
 * @param offset square to the baseline, in metres, positive to the left as one looks along it
 * @param markedStation the station as set on the tape, in metres
 * @param markedOffset the offset as set on the tape, in metres
 * @param error the distance between the corner so marked and the true one, in metres
 */
public record BaselineRow(
    int corner,
    double station,
    double offset,
    double markedStation,
    double markedOffset,
    double error) {

  private static final Source ROUNDING = Source.derived("rounding to the nearest tape division");

  /**
   * Rounds a corner to the tape, with the worked steps; the last step is the corner error {@code
   * sqrt((x' - x)^2 + (y' - y)^2)}.
   *
   * @param corner the corner's index in the outline
   * @param place the corner, x along the baseline and y square to its left, in metres
   * @param division the tape's division
   * @param steps where the steps are written
   * @return the row
   */
  @Calculation("geometry.markout.baseline")
  public static BaselineRow of(int corner, Vector2D place, TapeDivision division, Steps steps) {
    double x = steps.step("x", "station along the baseline").gives(place.getX(), "m");
    double y = steps.step("y", "offset square to the baseline").gives(place.getY(), "m");
    double markedX = rounded("x", x, "station on the tape", division, steps);
    double markedY = rounded("y", y, "offset on the tape", division, steps);
    double error =
        steps
            .step("E", "corner error")
            .formula("sqrt((x_t - x)^2 + (y_t - y)^2)")
            .with("x_t", markedX, "m")
            .with("x", x, "m")
            .with("y_t", markedY, "m")
            .with("y", y, "m")
            .from(ROUNDING)
            .gives(StrictMath.hypot(markedX - x, markedY - y), "m");
    return new BaselineRow(corner, x, y, markedX, markedY, error);
  }

  static double rounded(
      String symbol, double value, String name, TapeDivision division, Steps steps) {
    return steps
        .step(symbol + "_t", name)
        .formula("floor(" + symbol + " / d + 0.5) * d")
        .with(symbol, value, "m")
        .with("d", division.step(), "m")
        .from(ROUNDING)
        .gives(division.round(value), "m");
  }

  /**
   * Gives the corner as it comes to lie on the ground.
   *
   * @return x along the baseline and y square to its left, in metres
   */
  public Vector2D drawn() {
    return Vector2D.of(markedStation, markedOffset);
  }
}
