package io.github.seamstead.geometry.layout;

import java.awt.geom.AffineTransform;

/** What a piece's rotations and grain mean, told a second way for the verifier. */
final class PieceTurnsOracle {

  private PieceTurnsOracle() {}

  static boolean allowed(Piece piece, double angle) {
    return allowed(piece, false, angle);
  }

  /** The grain is followed as a drawn arrow: turned over first, then turned. */
  static boolean allowed(Piece piece, boolean mirrored, double angle) {
    if (piece.grain().isPresent()) {
      Grain grain = piece.grain().get();
      AffineTransform move = AffineTransform.getRotateInstance(angle);
      if (mirrored) {
        move.scale(-1, 1);
      }
      double[] arrow = {Math.cos(grain.angle()), Math.sin(grain.angle())};
      move.deltaTransform(arrow, 0, arrow, 0, 1);
      if (Math.abs(arrow[1]) > 1e-8 || (grain.oneWay() && arrow[0] < 0)) {
        return false;
      }
    }
    return piece.rotations().any()
        || piece.rotations().angles().stream()
            .anyMatch(
                a ->
                    Math.hypot(Math.cos(a) - Math.cos(angle), Math.sin(a) - Math.sin(angle))
                        < 1e-8);
  }
}
