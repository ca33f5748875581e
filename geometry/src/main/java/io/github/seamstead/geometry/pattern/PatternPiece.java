package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * One flat piece of cloth, seen on its good side.
 *
 * @param id unique within the pattern; not blank
 * @param label what is written on it; not blank
 * @param kind what it is for
 * @param count how many alike are wanted; 1 or more
 * @param stitch the outline when finished: stitch lines and folds, in metres
 * @param cut the outline to cut, in the same coordinates
 * @param cutEdgeOwners for each edge of {@code cut} the edge of {@code stitch} whose allowance it
 *     bounds, −1 where it closes a corner
 * @param edges the edges of {@code stitch} in their order; one for each stitch edge
 * @param holes openings cut out of the piece
 * @param notches match notches
 * @param marks texts
 * @param folds hips within a piece that goes over several faces; none for others
 * @param grain direction of the warp, counter-clockwise from the x axis, in radians; finite
 * @param goodSide true if the coordinates show the good side
 */
public record PatternPiece(
    String id,
    String label,
    PieceKind kind,
    int count,
    Outline stitch,
    Outline cut,
    List<Integer> cutEdgeOwners,
    List<PieceEdge> edges,
    List<PieceHole> holes,
    List<Notch> notches,
    List<Mark> marks,
    List<Fold> folds,
    double grain,
    boolean goodSide) {

  public PatternPiece {
    Args.notBlank("piece id", id);
    Args.notBlank("piece label", label);
    Args.within("piece count", count, 1, Integer.MAX_VALUE);
    Args.require(
        edges.size() == stitch.size(),
        "piece " + id,
        edges.size() + " edges",
        "must be " + stitch.size());
    Args.require(
        cutEdgeOwners.size() == cut.size(),
        "piece " + id,
        cutEdgeOwners.size() + " owners",
        "must be " + cut.size());
    Args.finite("grain direction", grain, "rad");
    cutEdgeOwners = List.copyOf(cutEdgeOwners);
    edges = List.copyOf(edges);
    holes = List.copyOf(holes);
    notches = List.copyOf(notches);
    marks = List.copyOf(marks);
    folds = List.copyOf(folds);
  }

  /**
   * Gives the cloth inside the cut line; what falls out of holes counts, as it is cut from the same
   * cloth.
   *
   * @return the area of one piece, in square metres
   */
  public double clothArea() {
    return cut.area();
  }

  /**
   * Gives the area inside the stitch line without the finished holes.
   *
   * @return the area of one piece when sewn, in square metres
   */
  public double finishedArea() {
    return stitch.area() - holes.stream().mapToDouble(h -> h.finished().area()).sum();
  }

  /**
   * Gives the length of the upper edge: of all edges of the finished outline that face up more than
   * sideways, such as that by which a flap hangs.
   *
   * @return in metres; the width of the outline if none faces up, as where it ends in a steep point
   */
  public double upperEdgeLength() {
    double length = 0;
    for (int i = 0; i < stitch.size(); i++) {
      Vector2D along = stitch.vertex(i + 1).subtract(stitch.vertex(i));
      // The outline runs counter-clockwise, so that its right is outside.
      if (-along.getX() > Math.abs(along.getY())) {
        length += along.norm();
      }
    }
    return length > 0 ? length : stitch.bounds().width();
  }

  /**
   * Names the edge of the cut outline that belongs on the reinforced edge of the stock.
   *
   * @return the index of the cut edge, empty if no edge asks for it
   */
  public Optional<Integer> reinforcedCutEdge() {
    for (int i = 0; i < cutEdgeOwners.size(); i++) {
      int owner = cutEdgeOwners.get(i);
      if (owner >= 0 && edges.get(owner).allowance().role() == EdgeRole.REINFORCED) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /**
   * Finds the edge that is, or is part of, an edge of the face.
   *
   * @param faceEdge the face's edge
   * @return the index of the stitch edge, empty if this piece has no part in it
   */
  public Optional<Integer> edgeOnFace(int faceEdge) {
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).faceEdge() == faceEdge) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /**
   * Lists the notches on one edge.
   *
   * @param edge the stitch edge
   * @return the notches, from the base up
   */
  public List<Notch> notchesOn(int edge) {
    return notches.stream().filter(n -> n.edge() == edge).toList();
  }

  /**
   * Turns the piece over, as when cloth is marked on its plain side: left and right change, the
   * texts stay readable and the mark of the side changes with it.
   *
   * @return the piece seen on its other side
   */
  public PatternPiece turnedOver() {
    return TurnOver.of(this);
  }
}
