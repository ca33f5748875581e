package io.github.seamstead.geometry.markout;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A corner set out where two tapes from two marks on the baseline cross.
 *
 * @param corner the corner's index in the outline
 * @param fromFirst from the baseline's zero mark, in metres
 * @param fromSecond from the second mark, in metres
 * @param markedFirst the first distance as set on the tape, in metres
 * @param markedSecond the second distance as set on the tape, in metres
 * @param left true if the corner lies to the left as one looks along the baseline; the tapes cross
 *     at a mirror twin on the other side too
 * @param crossing the angle at which the tapes cross, in radians, 0 to π; near 0 or π the corner
 *     slides along both tapes
 * @param drawn the corner as it comes to lie on the ground, x along the baseline, in metres
 * @param error the distance between the corner so marked and the true one, in metres
 */
public record TwoTapeRow(
    int corner,
    double fromFirst,
    double fromSecond,
    double markedFirst,
    double markedSecond,
    boolean left,
    double crossing,
    Vector2D drawn,
    double error) {

  /** Tapes that cross at less than this, or at more than its supplement, give a poor corner. */
  public static final double POOR_CROSSING = Math.toRadians(25);

  private static final Source TWO_CIRCLES = Source.derived("intersection of two circles");

  /**
   * Finds where two rounded tapes cross, with the worked steps; the last step is the corner error.
   *
   * <p>{@code x' = (p^2 - q^2 + m^2) / (2 m)}, {@code y' = +-sqrt(p^2 - x'^2)} with the rounded
   * distances p and q and the marks m apart on the tape. Where the rounded tapes just miss each
   * other, because the corner lies on the baseline, {@code y' = 0}.
   *
   * @param corner the corner's index in the outline
   * @param place the corner, x along the baseline from the first mark and y square to its left, in
   *     metres
   * @param apart the true distance of the marks, in metres, greater than 0
   * @param division the tape's division
   * @param steps where the steps are written
   * @return the row
   */
  @Calculation("geometry.markout.twotapes")
  public static TwoTapeRow of(
      int corner, Vector2D place, double apart, TapeDivision division, Steps steps) {
    double x = steps.step("x", "corner along the baseline").gives(place.getX(), "m");
    double y = steps.step("y", "corner square to the baseline").gives(place.getY(), "m");
    double m = steps.step("m", "distance of the marks").gives(apart, "m");
    double first =
        steps
            .step("p", "distance from the first mark")
            .formula("sqrt(x^2 + y^2)")
            .with("x", x, "m")
            .with("y", y, "m")
            .from(TWO_CIRCLES)
            .gives(StrictMath.hypot(x, y), "m");
    double second =
        steps
            .step("q", "distance from the second mark")
            .formula("sqrt((x - m)^2 + y^2)")
            .with("x", x, "m")
            .with("m", m, "m")
            .with("y", y, "m")
            .from(TWO_CIRCLES)
            .gives(StrictMath.hypot(x - m, y), "m");
    double p = BaselineRow.rounded("p", first, "first tape", division, steps);
    double q = BaselineRow.rounded("q", second, "second tape", division, steps);
    double n = BaselineRow.rounded("m", m, "distance of the marks on the tape", division, steps);
    double along =
        steps
            .step("x_d", "where the tapes cross, along the baseline")
            .formula("(p_t^2 - q_t^2 + m_t^2) / (2 * m_t)")
            .with("p_t", p, "m")
            .with("q_t", q, "m")
            .with("m_t", n, "m")
            .from(TWO_CIRCLES)
            .gives((p * p - q * q + n * n) / (2 * n), "m");
    boolean left = y >= 0;
    double side = left ? 1 : -1;
    double across =
        steps
            .step("y_d", "where the tapes cross, square to the baseline")
            .formula((left ? "" : "-") + "sqrt(max(0, p_t^2 - x_d^2))")
            .with("p_t", p, "m")
            .with("x_d", along, "m")
            .from(TWO_CIRCLES)
            .gives(side * Math.sqrt(Math.max(0, p * p - along * along)), "m");
    double error =
        steps
            .step("E", "corner error")
            .formula("sqrt((x_d - x)^2 + (y_d - y)^2)")
            .with("x_d", along, "m")
            .with("x", x, "m")
            .with("y_d", across, "m")
            .with("y", y, "m")
            .from(TWO_CIRCLES)
            .gives(StrictMath.hypot(along - x, across - y), "m");
    double crossing = Math.abs(StrictMath.atan2(y, x - m) - StrictMath.atan2(y, x));
    return new TwoTapeRow(
        corner,
        first,
        second,
        p,
        q,
        left,
        Math.min(crossing, 2 * Math.PI - crossing),
        Vector2D.of(along, across),
        error);
  }

  /**
   * Tells whether the tapes cross so flat that a small reading error moves the corner far.
   *
   * @return true if the crossing is less than {@link #POOR_CROSSING} or more than its supplement
   */
  public boolean isPoor() {
    return crossing < POOR_CROSSING || crossing > Math.PI - POOR_CROSSING;
  }
}
