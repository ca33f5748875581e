package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.List;

/** The turns that a piece's rotations and grain leave. */
final class PieceTurns {

  private static final double SAME = 1e-9;
  private static final int MOST_EDGES = 12;
  private static final int FREE_STEPS = 24;

  private PieceTurns() {}

  static boolean allows(Piece piece, double angle) {
    if (piece.grain().isPresent() && !piece.grain().get().follows(angle)) {
      return false;
    }
    if (piece.rotations().any()) {
      return true;
    }
    return piece.rotations().angles().stream()
        .anyMatch(a -> Math.abs(Math.IEEEremainder(a - angle, 2 * Math.PI)) < SAME);
  }

  /**
   * A finite list of turns for the search: the allowed ones, or for a piece that may lie at any
   * angle those that lay a long edge along x or y and a fan between.
   */
  static List<Double> of(Piece piece) {
    List<Double> candidates = new ArrayList<>();
    if (!piece.rotations().any()) {
      candidates.addAll(piece.rotations().angles());
    } else if (piece.grain().isPresent()) {
      candidates.add(-piece.grain().get().angle());
      candidates.add(Math.PI - piece.grain().get().angle());
    } else {
      int edges = Math.min(piece.outline().size(), MOST_EDGES);
      for (int e = 0; e < edges; e++) {
        var along = piece.outline().vertex(e + 1).subtract(piece.outline().vertex(e));
        double flat = -Math.atan2(along.getY(), along.getX());
        for (int q = 0; q < 4; q++) {
          candidates.add(flat + q * Math.PI / 2);
        }
      }
      for (int i = 0; i < FREE_STEPS; i++) {
        candidates.add(2 * Math.PI * i / FREE_STEPS);
      }
    }
    List<Double> out = new ArrayList<>();
    for (double a : candidates) {
      double full = 2 * Math.PI;
      double angle = a - full * Math.floor(a / full);
      boolean fresh =
          out.stream().noneMatch(o -> Math.abs(Math.IEEEremainder(o - angle, full)) < SAME);
      if (fresh && allows(piece, angle)) {
        out.add(angle);
      }
    }
    return out;
  }
}
