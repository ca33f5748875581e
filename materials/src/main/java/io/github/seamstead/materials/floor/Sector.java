package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * One sector of the floor, from the centre to a stretch of the edge rail.
 *
 * @param number 1 upwards, counter-clockwise as seen from above, as the frame's faces count
 * @param outline the centre, then the edge from its start to its end: a triangle, or more corners
 *     where several short edges are joined
 * @param area to be laid, gaps taken out, in square metres
 * @param order 1 for the sector laid first; 1 upwards
 */
public record Sector(int number, Outline outline, double area, int order) {

  /**
   * Gives the place for the sector's number on a drawing.
   *
   * @return the centre of the triangle
   */
  public Vector2D labelPoint() {
    return outline.centroid();
  }

  /**
   * Gives the length of the screed from the centre to the middle of the edge rail.
   *
   * @return in metres
   */
  public double screedLength() {
    return outline.vertex(0).distance(edgeStart().lerp(edgeEnd(), 0.5));
  }

  /**
   * Gives the length of the joint shared with the next sector.
   *
   * @return centre to edge end, in metres
   */
  public double jointLength() {
    return outline.vertex(0).distance(edgeEnd());
  }

  /**
   * Gives the corner where its stretch of the edge begins.
   *
   * @return the first corner on the edge
   */
  public Vector2D edgeStart() {
    return outline.vertex(1);
  }

  /**
   * Gives the corner where its stretch of the edge ends.
   *
   * @return the last corner on the edge
   */
  public Vector2D edgeEnd() {
    return outline.vertex(-1);
  }
}
