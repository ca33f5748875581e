package io.github.seamstead.materials.floor;

import java.util.List;

/**
 * One sector of the floor, from the centre to a stretch of the edge rail.
 *
 * @param number 1 upwards, counter-clockwise as seen from above, as the frame's faces count
 * @param outline the centre, then the edge from its start to its end: a triangle, or more corners
 *     where several short edges are joined
 * @param area to be laid, gaps taken out, in square metres
 * @param order 1 for the sector laid first; 1 upwards
 */
public record Sector(int number, List<PlanPoint> outline, double area, int order) {

  public Sector {
    outline = List.copyOf(outline);
  }

  /**
   * Gives the place for the sector's number on a drawing.
   *
   * @return the centre of the triangle
   */
  public PlanPoint labelPoint() {
    return Polygons.centroid(outline);
  }

  /**
   * Gives the length of the screed from the centre to the middle of the edge rail.
   *
   * @return in metres
   */
  public double screedLength() {
    return outline.get(0).distanceTo(edgeStart().towards(edgeEnd(), 0.5));
  }

  /**
   * Gives the length of the joint shared with the next sector.
   *
   * @return centre to edge end, in metres
   */
  public double jointLength() {
    return outline.get(0).distanceTo(edgeEnd());
  }

  /**
   * Gives the corner where its stretch of the edge begins.
   *
   * @return the first corner on the edge
   */
  public PlanPoint edgeStart() {
    return outline.get(1);
  }

  /**
   * Gives the corner where its stretch of the edge ends.
   *
   * @return the last corner on the edge
   */
  public PlanPoint edgeEnd() {
    return outline.get(outline.size() - 1);
  }
}
