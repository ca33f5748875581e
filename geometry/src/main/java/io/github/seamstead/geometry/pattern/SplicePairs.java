package io.github.seamstead.geometry.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Pairs the edges of parts that carry the same joint and overlap on the splice line. */
final class SplicePairs {

  /** A shorter contact, in metres, is that of two corners. */
  private static final double SHORTEST = 1e-9;

  private SplicePairs() {}

  /**
   * Pairs all parts of a panel; O(n log n) for n parts where each joint joins few.
   *
   * @param goOn called for each part; may throw to end the work
   */
  static List<Splice> of(List<PatternPiece> pieces, Runnable goOn) {
    Map<String, List<Upper>> uppers = new HashMap<>();
    for (int o = 0; o < pieces.size(); o++) {
      List<PieceEdge> edges = pieces.get(o).edges();
      for (int j = 0; j < edges.size(); j++) {
        if (edges.get(j).allowance().role() == EdgeRole.LAP_OVER) {
          uppers
              .computeIfAbsent(edges.get(j).joint(), joint -> new ArrayList<>())
              .add(new Upper(pieces.get(o), o, j));
        }
      }
    }
    List<Splice> splices = new ArrayList<>();
    for (PatternPiece under : pieces) {
      goOn.run();
      pair(splices, under, uppers);
    }
    return splices;
  }

  /** An edge that laps over, and which of the parts it belongs to. */
  private record Upper(PatternPiece piece, int part, int edge) {}

  /** A splice and where it comes in the order of the upper parts. */
  private record Found(int part, int lowerEdge, int upperEdge, Splice splice) {}

  private static void pair(
      List<Splice> splices, PatternPiece under, Map<String, List<Upper>> uppers) {
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < under.edges().size(); i++) {
      PieceEdge lower = under.edges().get(i);
      if (lower.faceEdge() >= 0 || lower.allowance().role() != EdgeRole.LAP_UNDER) {
        continue;
      }
      Vector2D from = under.stitch().vertex(i);
      Vector2D along = under.stitch().vertex(i + 1).subtract(from).normalize();
      for (Upper upper : uppers.getOrDefault(lower.joint(), List.of())) {
        PatternPiece over = upper.piece();
        double a = over.stitch().vertex(upper.edge()).subtract(from).dot(along);
        double b = over.stitch().vertex(upper.edge() + 1).subtract(from).dot(along);
        double length =
            Math.min(lower.finishedLength(), Math.max(a, b)) - Math.max(0, Math.min(a, b));
        if (length > SHORTEST) {
          Splice splice =
              new Splice(
                  lower.joint(),
                  under.id(),
                  over.id(),
                  length,
                  lower.allowance().width(),
                  Math.abs(along.getY()) > Math.abs(along.getX()));
          found.add(new Found(upper.part(), i, upper.edge(), splice));
        }
      }
    }
    found.sort(
        Comparator.comparingInt(Found::part)
            .thenComparingInt(Found::lowerEdge)
            .thenComparingInt(Found::upperEdge));
    found.forEach(f -> splices.add(f.splice()));
  }
}
