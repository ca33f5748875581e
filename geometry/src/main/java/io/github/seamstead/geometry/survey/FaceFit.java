package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How a template fits a face. Fullness is template less face: positive is full (spare cloth),
 * negative is short.
 *
 * @param face the face's number
 * @param template the template's number
 * @param fullness per measure, in metres
 * @param middle fullness of the middle line from base to top, in metres. It is a result, not a goal
 *     of the search: a template that is full in the base alone is a little short in the middle,
 *     where the hem must give what is missing
 */
public record FaceFit(
    int face, int template, Map<FaceMeasure, Uncertain> fullness, Uncertain middle) {

  /**
   * Copies the map.
   *
   * @param face the face's number
   * @param template the template's number
   * @param fullness per measure, in metres
   * @param middle fullness of the middle line, in metres
   */
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
   * Gives the least fullness; negative if the panel is short somewhere.
   *
   * @return in metres
   */
  public double least() {
    return fullness.values().stream().mapToDouble(Uncertain::value).min().orElse(0);
  }
}
