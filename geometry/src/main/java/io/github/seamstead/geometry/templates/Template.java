package io.github.seamstead.geometry.templates;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A template: one flat shape from which the panels of several faces are cut.
 *
 * @param number 1 to k; 1 or more
 * @param measures its lengths, in metres
 * @param outline its net shape by the face contract, without allowances
 * @param faces the faces that it serves, in rising order; at least one
 */
public record Template(
    int number, Map<FaceMeasure, Double> measures, Outline outline, List<Integer> faces) {

  public Template {
    measures = Collections.unmodifiableMap(new EnumMap<>(measures));
    faces = Args.notEmpty("faces of the template", faces);
  }

  /**
   * Gives one of its lengths.
   *
   * @param measure which; {@code TOP} and {@code DIAGONAL} only with an opening
   * @return in metres
   * @throws IllegalArgumentException if the template has no such measure
   */
  public double measure(FaceMeasure measure) {
    return FaceShape.length(measures, measure);
  }

  /**
   * Gives the diagonal from base right to top left, which follows from the measures.
   *
   * @return in metres; empty for a triangle
   */
  public Optional<Double> otherDiagonal() {
    return outline.size() == 4
        ? Optional.of(outline.vertex(1).distance(outline.vertex(3)))
        : Optional.empty();
  }
}
