package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.uncertainty.Uncertain;

/**
 * How two panels meet on a hip.
 *
 * @param seam the seam's number i, between face i and face i + 1
 * @param length the hip as built, in metres
 * @param leftPanelEdge the right edge of panel i, which lies left of the seam seen from outside, in
 *     metres
 * @param rightPanelEdge the left edge of panel i + 1, in metres
 * @param fullness the shorter of the two edges less the hip: positive is spare length, negative is
 *     short, in metres
 */
public record SeamFit(
    int seam, Uncertain length, double leftPanelEdge, double rightPanelEdge, Uncertain fullness) {

  /**
   * Gives what must be eased in: how much longer one panel's edge is than its neighbour's. Spread
   * it evenly along the seam.
   *
   * @return in metres, 0 or more; 0 for edges of equal length
   */
  public double ease() {
    return Math.abs(leftPanelEdge - rightPanelEdge);
  }

  /**
   * Tells which panel must be eased.
   *
   * @return the face's offset: 0 for face i, 1 for face i + 1, when its edge is the longer; 0 if
   *     both are equal
   */
  public int easedSide() {
    return rightPanelEdge > leftPanelEdge ? 1 : 0;
  }
}
