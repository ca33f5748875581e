package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * The frame as it was taped.
 *
 * @param distances taped distances; a distance may be read more than once
 * @param heights differences of height
 * @param plumbs plumb lines
 * @param uncertainty standard uncertainty of a taped distance that states none, in metres
 * @param heightUncertainty standard uncertainty of a height or plumb offset that states none, in
 *     metres
 * @param tolerance the worst misfit that a template may have on a face, in metres
 * @param tape the tape and how it was held, if stated
 */
public record SurveyReadings(
    List<TapedDistance> distances,
    List<HeightReading> heights,
    List<PlumbReading> plumbs,
    double uncertainty,
    double heightUncertainty,
    double tolerance,
    Optional<SurveyTape> tape) {

  /**
   * Copies the lists.
   *
   * @param distances taped distances; a distance may be read more than once
   * @param heights differences of height
   * @param plumbs plumb lines
   * @param uncertainty standard uncertainty of a taped distance that states none, in metres
   * @param heightUncertainty standard uncertainty of a height or plumb offset that states none, in
   *     metres
   * @param tolerance the worst misfit that a template may have on a face, in metres
   * @param tape the tape and how it was held, if stated
   * @param tape the tape and how it was held, if stated
   */
  public SurveyReadings {
    distances = List.copyOf(distances);
    heights = List.copyOf(heights);
    plumbs = List.copyOf(plumbs);
  }
}
