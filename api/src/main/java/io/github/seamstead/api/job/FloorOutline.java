package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * The outline of a floor that no frame gives: round, regular, or by its corners; one of the three.
 *
 * @param diameter of a round room, in metres, if stated
 * @param sides of a regular room, if stated
 * @param side length of each of them, in metres, if stated
 * @param corners of any other room, in order along the edge; empty if not stated
 */
public record FloorOutline(
    Optional<Double> diameter,
    Optional<Integer> sides,
    Optional<Double> side,
    List<OutlineCorner> corners) {

  /**
   * Copies the list.
   *
   * @param diameter in metres
   * @param sides of a regular room
   * @param side in metres
   * @param corners of any other room
   */
  public FloorOutline {
    corners = List.copyOf(corners);
  }

  /**
   * Counts the sides by which the door is named.
   *
   * @return 16 of a round room, numbered from the side nearest the reader of the plan
   */
  public int doorSides() {
    return diameter.isPresent() ? 16 : sides.orElse(corners.size());
  }
}
