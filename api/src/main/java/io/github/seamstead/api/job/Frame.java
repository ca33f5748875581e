package io.github.seamstead.api.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The frame that carries the cover, by ideal measures or as surveyed.
 *
 * @param sides how many sides the frame has
 * @param measures ideal measures; two that suffice, if stated
 * @param opening the opening at the top; a whole pyramid if left out, if stated
 * @param poles the members of the frame, if stated
 * @param purlins heights of rings of purlins over the base, in metres
 * @param survey the frame as it was taped, if stated
 */
public record Frame(
    int sides,
    Optional<Map<FrameMeasure, Double>> measures,
    Optional<FrameOpening> opening,
    Optional<Poles> poles,
    List<Double> purlins,
    Optional<SurveyReadings> survey) {

  /**
   * Copies the lists.
   *
   * @param sides how many sides the frame has
   * @param measures ideal measures; two that suffice, if stated
   * @param opening the opening at the top; a whole pyramid if left out, if stated
   * @param poles the members of the frame, if stated
   * @param purlins heights of rings of purlins over the base, in metres
   * @param survey the frame as it was taped, if stated
   */
  public Frame {
    measures = measures.map(Map::copyOf);
    purlins = List.copyOf(purlins);
  }
}
