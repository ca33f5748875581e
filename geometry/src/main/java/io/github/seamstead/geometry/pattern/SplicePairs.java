package io.github.seamstead.geometry.pattern;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Pairs the edges of parts that carry the same joint and overlap on the splice line. */
final class SplicePairs {

  /** A shorter contact, in metres, is that of two corners. */
  private static final double SHORTEST = 1e-9;

  private SplicePairs() {}

  static List<Splice> of(List<PatternPiece> pieces) {
    List<Splice> splices = new ArrayList<>();
    for (int u = 0; u < pieces.size(); u++) {
      for (int o = 0; o < pieces.size(); o++) {
        pair(splices, pieces.get(u), pieces.get(o));
      }
    }
    return splices;
  }

  private static void pair(List<Splice> splices, PatternPiece under, PatternPiece over) {
    for (int i = 0; i < under.edges().size(); i++) {
      PieceEdge lower = under.edges().get(i);
      if (lower.faceEdge() >= 0 || lower.allowance().role() != EdgeRole.LAP_UNDER) {
        continue;
      }
      for (int j = 0; j < over.edges().size(); j++) {
        PieceEdge upper = over.edges().get(j);
        if (upper.allowance().role() != EdgeRole.LAP_OVER || !upper.joint().equals(lower.joint())) {
          continue;
        }
        Vector2D from = under.stitch().vertex(i);
        Vector2D along = under.stitch().vertex(i + 1).subtract(from).normalize();
        double a = over.stitch().vertex(j).subtract(from).dot(along);
        double b = over.stitch().vertex(j + 1).subtract(from).dot(along);
        double length =
            Math.min(lower.finishedLength(), Math.max(a, b)) - Math.max(0, Math.min(a, b));
        if (length > SHORTEST) {
          splices.add(
              new Splice(
                  lower.joint(),
                  under.id(),
                  over.id(),
                  length,
                  lower.allowance().width(),
                  Math.abs(along.getY()) > Math.abs(along.getX())));
        }
      }
    }
  }
}
