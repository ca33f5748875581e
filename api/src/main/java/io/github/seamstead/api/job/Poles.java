package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * The members of the frame.
 *
 * @param section round pipe or rectangular section
 * @param diameter outside diameter of a round section, in metres, if stated
 * @param width width of a rectangular section, along the face, in metres, if stated
 * @param depth depth of a rectangular section, square to the face, in metres, if stated
 * @param massPerLength mass of the section per length, in kilograms per metre, if stated
 * @param setback how much a member stops short of each node, in metres
 * @param bars bars to cut the members from
 * @param kerf width of the saw cut, in metres
 */
public record Poles(
    PoleSection section,
    Optional<Double> diameter,
    Optional<Double> width,
    Optional<Double> depth,
    Optional<Double> massPerLength,
    double setback,
    List<BarStock> bars,
    double kerf) {

  /**
   * Copies the lists.
   *
   * @param section round pipe or rectangular section
   * @param diameter outside diameter of a round section, in metres, if stated
   * @param width width of a rectangular section, along the face, in metres, if stated
   * @param depth depth of a rectangular section, square to the face, in metres, if stated
   * @param massPerLength mass of the section per length, in kilograms per metre, if stated
   * @param setback how much a member stops short of each node, in metres
   * @param bars bars to cut the members from
   * @param kerf width of the saw cut, in metres
   */
  public Poles {
    bars = List.copyOf(bars);
  }
}
