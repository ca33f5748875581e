package io.github.seamstead.geometry.layout;

/** What a piece's rotations and grain mean, told a second way for the verifier. */
final class PieceTurnsOracle {

  private PieceTurnsOracle() {}

  static boolean allowed(Piece piece, double angle) {
    if (piece.grain().isPresent()) {
      Grain grain = piece.grain().get();
      double x = Math.cos(grain.angle() + angle);
      if (grain.oneWay() ? x < 1 - 1e-9 : Math.abs(x) < 1 - 1e-9) {
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
