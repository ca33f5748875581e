package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.plane.Bounds;
import io.github.seamstead.geometry.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The few angles from which a piece that may lie at any of them is tried first. */
final class StartAngles {

  private static final int MOST = 8;

  private StartAngles() {}

  /** Tells whether a box fits a stock copy. */
  interface Fits {
    boolean test(double width, double height, int bin);
  }

  private record Box(double angle, double width, double height) {}

  /** The turns with the smallest boxes, among them one that fits each stock copy if any does. */
  static double[] of(Piece piece, double unit, int bins, Fits fits) {
    List<Box> boxes = boxes(piece, unit);
    Set<Double> chosen = new LinkedHashSet<>();
    for (int b = 0; b < bins; b++) {
      int at = b;
      boxes.stream()
          .filter(box -> fits.test(box.width(), box.height(), at))
          .findFirst()
          .ifPresent(box -> chosen.add(box.angle()));
    }
    boxes.stream().limit(MOST).forEach(box -> chosen.add(box.angle()));
    return chosen.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static List<Box> boxes(Piece piece, double unit) {
    // From rounded corners, so that the order is the same wherever the piece is drawn.
    Outline drawn = piece.outline();
    double[] corners = Obstacles.corners(drawn, drawn.centroid(), unit);
    List<Vector2D> rounded = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      rounded.add(Vector2D.of(corners[i], corners[i + 1]));
    }
    List<Box> boxes = new ArrayList<>();
    for (double angle : PieceTurns.of(piece)) {
      Bounds size = Turns.box(rounded, angle);
      boxes.add(new Box(angle, size.width(), size.height()));
    }
    boxes.sort(
        Comparator.comparingDouble((Box box) -> box.width() * box.height())
            .thenComparingDouble(Box::angle));
    return boxes;
  }
}
