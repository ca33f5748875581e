package io.github.seamstead.api.job;

import java.util.List;

/**
 * A door or a vent in one face.
 *
 * @param id its name
 * @param face the face it is in, counted counter-clockwise seen from above
 * @param outline its corners in the plane of the face
 * @param flap how much the flap laps over the opening all round, in metres
 * @param patch width of the reinforcement round the opening, in metres
 */
public record FaceOpening(String id, int face, List<Point> outline, double flap, double patch) {

  /**
   * Copies the lists.
   *
   * @param id its name
   * @param face the face it is in, counted counter-clockwise seen from above
   * @param outline its corners in the plane of the face
   * @param flap how much the flap laps over the opening all round, in metres
   * @param patch width of the reinforcement round the opening, in metres
   */
  public FaceOpening {
    outline = List.copyOf(outline);
  }
}
