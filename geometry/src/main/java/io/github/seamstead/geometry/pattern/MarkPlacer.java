package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Places the texts of a piece inside its stitch line, clear of holes. */
final class MarkPlacer {

  private static final double GREATEST_HEIGHT = 0.03;
  private static final double HEIGHT_TO_THICKNESS = 0.15;

  /** In text heights: from an edge to the middle of its letter. */
  private static final double INSET = 2;

  /** In text heights: the least distance of the label from edges and holes. */
  private static final double CLEARANCE = 3;

  /** Width of a letter over its height. */
  private static final double LETTER_WIDTH = 0.7;

  private final Outline stitch;
  private final List<PieceHole> holes;
  private final double height;
  private final List<Mark> marks = new ArrayList<>();

  private MarkPlacer(Outline stitch, List<PieceHole> holes) {
    this.stitch = stitch;
    this.holes = holes;
    // Twice the area over the perimeter is the width of a long strip, or of a ring.
    double area = stitch.area() - holes.stream().mapToDouble(h -> h.finished().area()).sum();
    double rim =
        stitch.perimeter() + holes.stream().mapToDouble(h -> h.finished().perimeter()).sum();
    height = Math.min(GREATEST_HEIGHT, HEIGHT_TO_THICKNESS * 2 * area / rim);
  }

  static String side(boolean good) {
    return good ? "GOOD SIDE" : "PLAIN SIDE";
  }

  static List<Mark> place(
      Outline stitch, String label, List<PieceEdge> edges, List<PieceHole> holes) {
    MarkPlacer placer = new MarkPlacer(stitch, holes);
    placer.label(label);
    for (int i = 0; i < edges.size(); i++) {
      placer.edge(i, edges.get(i));
    }
    return placer.marks;
  }

  /** Two lines in the middle. */
  private void label(String label) {
    String side = side(true);
    Spot spot = spot(LETTER_WIDTH * height * Math.max(label.length(), side.length()));
    Vector2D up =
        Vector2D.of(-StrictMath.sin(spot.rotation()), StrictMath.cos(spot.rotation()))
            .multiply(height);
    add(Mark.Kind.PIECE, label, spot.at().add(up), spot.rotation());
    add(Mark.Kind.SIDE, side, spot.at().subtract(up), spot.rotation());
  }

  private record Spot(Vector2D at, double rotation) {}

  private void edge(int i, PieceEdge edge) {
    Vector2D from = stitch.vertex(i);
    Vector2D along = stitch.vertex(i + 1).subtract(from).normalize();
    Vector2D inset = Vector2D.of(-along.getY(), along.getX()).multiply(INSET * height);
    double rotation = upright(StrictMath.atan2(along.getY(), along.getX()));
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

  /** The centroid, or else the first spot towards a corner or beside an edge, off all holes. */
  private Spot spot(double length) {
    Vector2D centre = stitch.centroid();
    for (double part : new double[] {0, 0.3, 0.5, 0.7}) {
      for (Vector2D corner : stitch.vertices()) {
        Vector2D at = centre.lerp(corner, part);
        if (isClear(at)) {
          return new Spot(at, isNarrow(at, length) ? Math.PI / 2 : 0);
        }
      }
    }
    for (int i = 0; i < stitch.size(); i++) {
      Vector2D along = stitch.vertex(i + 1).subtract(stitch.vertex(i)).normalize();
      Vector2D inward = Vector2D.of(-along.getY(), along.getX()).multiply(CLEARANCE * height);
      Vector2D at = stitch.vertex(i).lerp(stitch.vertex(i + 1), 0.5).add(inward);
      if (isClear(at)) {
        return new Spot(at, upright(StrictMath.atan2(along.getY(), along.getX())));
      }
    }
    return new Spot(centre, 0);
  }

  /** Tells whether a text fits better upright. */
  private boolean isNarrow(Vector2D at, double length) {
    Bounds bounds = stitch.bounds();
    return bounds.height() > bounds.width()
        && 2 * stitch.distanceToEdge(at) < length + 3 * INSET * height;
  }

  private boolean isClear(Vector2D spot) {
    double needed = CLEARANCE * height * (1 - 1e-9);
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
