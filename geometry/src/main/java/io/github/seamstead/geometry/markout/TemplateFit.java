package io.github.seamstead.geometry.markout;

/**
 * How a template drawn from rounded numbers fits the true one, the baseline laid on the baseline.
 *
 * @param tolerance what the builder allows, in metres
 * @param worstCorner index of the corner that lies furthest from its place
 * @param cornerError how far, in metres
 * @param sideError the greatest difference of a side's length, in metres
 * @param shortness how far the drawn outline falls inside the true one at most, square to the side,
 *     in metres, 0 or more: cloth that is missing
 * @param fullness how far it lies outside at most, square to the side, in metres, 0 or more
 * @param areaDifference drawn less true, in square metres
 */
public record TemplateFit(
    double tolerance,
    int worstCorner,
    double cornerError,
    double sideError,
    double shortness,
    double fullness,
    double areaDifference) {

  /**
   * Tells whether the template may be used.
   *
   * @return true if no corner and no side is off by more than the tolerance
   */
  public boolean fits() {
    return cornerError <= tolerance && sideError <= tolerance;
  }
}
