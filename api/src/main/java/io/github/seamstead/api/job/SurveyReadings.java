package io.github.seamstead.api.job;

import java.util.List;

/**
 * The frame as it was taped.
 *
 * @param readings taped distances; a distance may be read more than once
 * @param levels heights of nodes
 * @param uncertainty standard uncertainty of a taped distance that states none, in metres
 * @param levelUncertainty standard uncertainty of a height that states none, in metres
 * @param tolerance the worst misfit that a template may have on a face, in metres
 */
public record SurveyReadings(
    List<Reading> readings,
    List<Level> levels,
    double uncertainty,
    double levelUncertainty,
    double tolerance) {

  /**
   * Copies the lists.
   *
   * @param readings taped distances; a distance may be read more than once
   * @param levels heights of nodes
   * @param uncertainty standard uncertainty of a taped distance that states none, in metres
   * @param levelUncertainty standard uncertainty of a height that states none, in metres
   * @param tolerance the worst misfit that a template may have on a face, in metres
   */
  public SurveyReadings {
    readings = List.copyOf(readings);
    levels = List.copyOf(levels);
  }
}
