package io.github.seamstead.geometry.pattern;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Mirrors a piece left to right and renumbers what refers to its edges. */
final class TurnOver {

  private TurnOver() {}

  static PatternPiece of(PatternPiece piece) {
    int n = piece.edges().size();
    List<Integer> owners = new ArrayList<>();
    for (int owner : reordered(piece.cutEdgeOwners())) {
      owners.add(owner == CutLine.CORNER ? CutLine.CORNER : turned(owner, n));
    }
    boolean good = !piece.goodSide();
    return new PatternPiece(
        piece.id(),
        piece.label(),
        piece.kind(),
        piece.count(),
        piece.stitch().mirrored(),
        piece.cut().mirrored(),
        owners,
        reordered(piece.edges()),
        piece.holes().stream()
            .map(h -> new PieceHole(h.name(), h.finished().mirrored(), h.cut().mirrored()))
            .toList(),
        piece.notches().stream().map(k -> notch(k, n)).toList(),
        piece.marks().stream().map(m -> mark(m, good)).toList(),
        piece.folds().stream()
            .map(f -> new Fold(f.ordinal(), f.name(), flip(f.lower()), flip(f.upper())))
            .toList(),
        Math.PI - piece.grain(),
        good);
  }

  /** Mirroring reverses the corners, so edge {@code i} of {@code n} becomes {@code n − 2 − i}. */
  private static int turned(int edge, int n) {
    return Math.floorMod(n - 2 - edge, n);
  }

  private static <T> List<T> reordered(List<T> perEdge) {
    int n = perEdge.size();
    List<T> order = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      order.add(perEdge.get(turned(i, n)));
    }
    return order;
  }

  private static Notch notch(Notch k, int n) {
    return new Notch(
        turned(k.edge(), n),
        k.ordinal(),
        k.fromBase(),
        flip(k.onStitch()),
        flip(k.onCut()),
        k.doubled());
  }

  private static Mark mark(Mark m, boolean good) {
    String text = m.kind() == Mark.Kind.SIDE ? MarkPlacer.side(good) : m.text();
    return new Mark(m.kind(), text, flip(m.at()), -m.rotation(), m.height());
  }

  private static Vector2D flip(Vector2D v) {
    return Vector2D.of(-v.getX(), v.getY());
  }
}
