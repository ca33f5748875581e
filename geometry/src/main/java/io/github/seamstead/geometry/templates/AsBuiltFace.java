package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A face as it stands, laid flat.
 *
 * @param number 1 to n, counter-clockwise seen from above; face i lies between hip i - 1 (its left)
 *     and hip i (its right), hip i standing on {@code B<i>}
 * @param outline the face seen from outside, base left at the origin, base right on +x
 * @param measures the lengths that fix its shape; the edges are those in space, the diagonal is
 *     that of the flat outline
 * @param otherDiagonal from base right to top left on the flat outline, which the measures fix;
 *     empty for a triangle
 * @param middle from the middle of the base to the apex or to the middle of the top, in metres
 * @param outOfPlane how far its corners lie off their middle plane, in metres; 0 for a triangle; 0
 *     or more
 */
public record AsBuiltFace(
    int number,
    Outline outline,
    Map<FaceMeasure, Uncertain> measures,
    Optional<Uncertain> otherDiagonal,
    Uncertain middle,
    double outOfPlane) {

  public AsBuiltFace {
    measures = Collections.unmodifiableMap(new EnumMap<>(measures));
  }

  /**
   * Gives one of its lengths.
   *
   * @param measure which; {@code TOP} and {@code DIAGONAL} only with an opening
   * @return in metres
   * @throws IllegalArgumentException if the face has no such measure
   */
  public Uncertain measure(FaceMeasure measure) {
    Uncertain value = measures.get(measure);
    if (value == null) {
      throw new IllegalArgumentException(
          "measure: given " + measure.label() + ", a triangular face has " + measures.keySet());
    }
    return value;
  }
}
