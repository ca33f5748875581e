package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * How a template fits a face. Fullness is template less face: positive is full (spare cloth),
 * negative is short.
 *
 * @param face the face's number
 * @param template the template's number
 * @param fullness per measure, in metres
 * @param otherDiagonal fullness from base right to top left, in metres; empty for a triangle. No
 *     panel is short there, but how much it has to spare follows from the other measures and is no
 *     part of the misfit
 * @param middle fullness of the middle line from base to top, in metres. It is a result, not a goal
 *     of the search: a template that is full in the base alone is a little short in the middle,
 *     where the hem must give what is missing
 */
public record FaceFit(
    int face,
    int template,
    Map<FaceMeasure, Uncertain> fullness,
    Optional<Uncertain> otherDiagonal,
    Uncertain middle) {

  public FaceFit {
    fullness = Collections.unmodifiableMap(new EnumMap<>(fullness));
  }

  /**
   * Gives the greatest fullness, which is the misfit of this face.
   *
   * @return in metres
   */
  public double greatest() {
    return fullness.values().stream().mapToDouble(Uncertain::value).max().orElse(0);
  }

  /**
   * Gives the least fullness of all measures and of the other diagonal; negative if the panel is
   * short somewhere.
   *
   * @return in metres
   */
  public double least() {
    double measured = fullness.values().stream().mapToDouble(Uncertain::value).min().orElse(0);
    return otherDiagonal.map(other -> Math.min(measured, other.value())).orElse(measured);
  }
}
