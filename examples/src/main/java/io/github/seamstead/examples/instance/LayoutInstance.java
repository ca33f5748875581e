package io.github.seamstead.examples.instance;

import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.StripProblem;
import java.util.List;
import java.util.Optional;

/**
 * One strip instance.
 *
 * @param name the instance's name
 * @param stripWidth width of the strip, in the instance's own length unit
 * @param pieces the pieces in the order of the file
 * @param rotationsDeg for each piece the rotations allowed, in degrees, as the file has them
 * @param bestPublishedPercent the best density in print, in percent, if the file states one
 */
public record LayoutInstance(
    String name,
    double stripWidth,
    List<Piece> pieces,
    List<List<Double>> rotationsDeg,
    Optional<Double> bestPublishedPercent) {

  /**
   * Copies the lists.
   *
   * @param name the instance's name
   * @param stripWidth greater than 0
   * @param pieces at least one
   * @param rotationsDeg one list for each piece
   * @param bestPublishedPercent may be empty
   */
  public LayoutInstance {
    pieces = List.copyOf(pieces);
    rotationsDeg = List.copyOf(rotationsDeg);
  }

  /**
   * The problem that the library solves; one metre stands for the instance's length unit.
   *
   * @return the problem
   */
  public StripProblem problem() {
    return StripProblem.of(stripWidth, pieces);
  }
}
