package io.github.seamstead.geometry.templates;

import java.util.List;

/** The lengths that fix the shape of a face, as seen from outside. */
public enum FaceMeasure {
  /** The base edge (hem), from base left to base right. */
  BASE("base"),
  /** The right hip, from base right up. */
  RIGHT_HIP("right hip"),
  /** The edge along the opening, from top right to top left; not in a whole frame. */
  TOP("top"),
  /** The left hip, from the top down to base left. */
  LEFT_HIP("left hip"),
  /** The diagonal from base left to top right; not in a whole frame. */
  DIAGONAL("diagonal");

  private static final List<FaceMeasure> TRIANGLE = List.of(BASE, RIGHT_HIP, LEFT_HIP);
  private static final List<FaceMeasure> TRAPEZOID =
      List.of(BASE, RIGHT_HIP, TOP, LEFT_HIP, DIAGONAL);

  private final String label;

  FaceMeasure(String label) {
    this.label = label;
  }

  /**
   * Names the measure as the book prints it.
   *
   * @return for example {@code left hip}
   */
  public String label() {
    return label;
  }

  /**
   * Lists the measures of a face: the edges in the order of the outline, then the diagonal.
   *
   * @param truncated whether the face ends at an opening
   * @return three measures, or five with an opening
   */
  public static List<FaceMeasure> of(boolean truncated) {
    return truncated ? TRAPEZOID : TRIANGLE;
  }
}
