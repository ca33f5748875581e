package io.github.seamstead.geometry.pattern;

import io.github.seamstead.geometry.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Places the texts of a piece inside its stitch line, clear of holes. */
final class MarkPlacer {

  private static final double GREATEST_HEIGHT = 0.03;
  private static final double HEIGHT_TO_THICKNESS = 0.15;

  /** In text heights: from an edge to the middle of its letter. */
  private static final double INSET = 2;

  private final Outline stitch;
  private final List<PieceHole> holes;
  private final double height;
  private final List<Mark> marks = new ArrayList<>();

  private MarkPlacer(Outline stitch, List<PieceHole> holes) {
    this.stitch = stitch;
    this.holes = holes;
    // Twice the area over the perimeter is the width of a long strip.
    double thickness = 2 * stitch.area() / stitch.perimeter();
    height = Math.min(GREATEST_HEIGHT, HEIGHT_TO_THICKNESS * thickness);
  }

  static String side(boolean good) {
    return good ? "GOOD SIDE" : "PLAIN SIDE";
  }

  static List<Mark> place(
      Outline stitch, String label, List<PieceEdge> edges, List<PieceHole> holes) {
    MarkPlacer placer = new MarkPlacer(stitch, holes);
    Vector2D middle = placer.clearSpot();
    placer.add(Mark.Kind.PIECE, label, middle.add(Vector2D.of(0, placer.height)), 0);
    placer.add(Mark.Kind.SIDE, side(true), middle.subtract(Vector2D.of(0, placer.height)), 0);
    for (int i = 0; i < edges.size(); i++) {
      placer.edge(i, edges.get(i));
    }
    return placer.marks;
  }

  private void edge(int i, PieceEdge edge) {
    Vector2D from = stitch.vertex(i);
    Vector2D along = stitch.vertex(i + 1).subtract(from).normalize();
    Vector2D inset = Vector2D.of(-along.getY(), along.getX()).multiply(INSET * height);
    double rotation = upright(Math.atan2(along.getY(), along.getX()));
    double length = edge.finishedLength();
    // On a short edge the texts stand one behind the other, else side by side.
    boolean longEdge = length > 24 * height;
    Vector2D middle = from.add(along.multiply(length / 2)).add(inset);
    add(Mark.Kind.EDGE, edge.letter(), middle, rotation);
    add(
        Mark.Kind.JOINT,
        edge.joint(),
        longEdge ? from.add(along.multiply(length / 3)).add(inset) : middle.add(inset),
        rotation);
    if (longEdge) {
      add(
          Mark.Kind.ROLE,
          edge.allowance().role().label(),
          from.add(along.multiply(2 * length / 3)).add(inset),
          rotation);
    }
  }

  private void add(Mark.Kind kind, String text, Vector2D at, double rotation) {
    if (!text.isEmpty()) {
      marks.add(new Mark(kind, text, at, rotation, height));
    }
  }

  /** The centroid, or else the first spot on the way to a corner that no hole is near. */
  private Vector2D clearSpot() {
    Vector2D centre = stitch.centroid();
    for (double part : new double[] {0, 0.3, 0.5, 0.7}) {
      for (Vector2D corner : stitch.vertices()) {
        Vector2D spot = centre.lerp(corner, part);
        if (isClear(spot)) {
          return spot;
        }
      }
    }
    return centre;
  }

  private boolean isClear(Vector2D spot) {
    double needed = 3 * height;
    return stitch.contains(spot)
        && stitch.distanceToEdge(spot) >= needed
        && holes.stream()
            .noneMatch(h -> h.cut().contains(spot) || h.finished().distanceToEdge(spot) < needed);
  }

  private static double upright(double angle) {
    if (angle > Math.PI / 2) {
      return angle - Math.PI;
    }
    return angle <= -Math.PI / 2 ? angle + Math.PI : angle;
  }
}
