package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.List;

/** The turns that a piece's rotations and grain leave. */
final class PieceTurns {

  private static final double SAME = 1e-9;
  private static final int MOST_EDGES = 60;
  private static final int STEPS = 72;

  private PieceTurns() {}

  /** Whether a piece that lies as drawn may be turned so. */
  static boolean allows(Piece piece, double angle) {
    return allows(piece, false, angle);
  }

  /** Whether a piece, turned over or not, may be turned so. */
  static boolean allows(Piece piece, boolean mirrored, double angle) {
    if (piece.grain().isPresent() && !piece.grain().get().follows(angle, mirrored)) {
      return false;
    }
    if (piece.rotations().any()) {
      return true;
    }
    return piece.rotations().angles().stream()
        .anyMatch(a -> Math.abs(Math.IEEEremainder(a - angle, 2 * Math.PI)) < SAME);
  }

  /** Whether a piece may lie at every angle, neither rotations nor grain holding it. */
  static boolean isFree(Piece piece) {
    return piece.rotations().any() && piece.grain().isEmpty();
  }

  /**
   * The allowed turns; for a piece that may lie at any angle, from which the search then turns it
   * freely, those that lay an edge along x or y and every 5°. The narrowest way to lay a convex
   * piece is among the first, the way into the corners of a sheet near one of the others.
   *
   * @param mirrored whether it is the piece turned over, whose grain runs another way
   */
  static List<Double> of(Piece piece, boolean mirrored) {
    List<Double> candidates = new ArrayList<>();
    if (!piece.rotations().any()) {
      candidates.addAll(piece.rotations().angles());
    } else if (!isFree(piece)) {
      double direction = piece.grain().get().onSide(mirrored);
      candidates.add(-direction);
      candidates.add(Math.PI - direction);
    } else {
      int edges = Math.min(piece.outline().size(), MOST_EDGES);
      for (int e = 0; e < edges; e++) {
        var along = piece.outline().vertex(e + 1).subtract(piece.outline().vertex(e));
        // Rounded to a billionth, so that a figure moved elsewhere gives the very same turns.
        double flat = -Math.rint(StrictMath.atan2(along.getY(), along.getX()) * 0x1p30) * 0x1p-30;
        for (int q = 0; q < 4; q++) {
          candidates.add(flat + q * Math.PI / 2);
        }
      }
      for (int i = 0; i < STEPS; i++) {
        candidates.add(2 * Math.PI * i / STEPS);
      }
    }
    List<Double> out = new ArrayList<>();
    for (double a : candidates) {
      double full = 2 * Math.PI;
      double angle = a - full * Math.floor(a / full);
      boolean fresh =
          out.stream().noneMatch(o -> Math.abs(Math.IEEEremainder(o - angle, full)) < SAME);
      if (fresh && allows(piece, mirrored, angle)) {
        out.add(angle);
      }
    }
    return out;
  }
}
