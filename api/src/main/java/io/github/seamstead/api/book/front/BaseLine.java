package io.github.seamstead.api.book.front;

import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.markout.TapeDivision;
import io.github.seamstead.geometry.markout.TapeOffset;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The line along the bottom of a piece from which everything on it is marked: along from its left
 * end, square up from it. The corners of the cut outline have letters, a and b at its ends.
 */
final class BaseLine {

  /** Outlines with more corners are curved: they are marked by radius. */
  static final int MOST_CORNERS = 14;

  private final Outline cut;
  private final int edge;

  private BaseLine(Outline cut, int edge) {
    this.cut = cut;
    this.edge = edge;
  }

  /** The lowest edge of the cut outline, or the longest straight edge of a curved piece. */
  static BaseLine of(PatternPiece piece) {
    Outline cut = piece.cut();
    return new BaseLine(cut, cut.size() > MOST_CORNERS ? longest(cut) : lowest(cut));
  }

  private static int longest(Outline cut) {
    int best = 0;
    for (int i = 1; i < cut.size(); i++) {
      if (cut.edgeLength(i) > cut.edgeLength(best)) {
        best = i;
      }
    }
    return best;
  }

  private static int lowest(Outline cut) {
    int best = 0;
    double bestScore = Double.POSITIVE_INFINITY;
    double height = cut.bounds().height();
    for (int i = 0; i < cut.size(); i++) {
      double middle = (cut.vertex(i).getY() + cut.vertex(i + 1).getY()) / 2;
      double score = (middle - cut.bounds().minY()) / height - 0.01 * cut.edgeLength(i);
      if (score < bestScore) {
        bestScore = score;
        best = i;
      }
    }
    return best;
  }

  int edge() {
    return edge;
  }

  boolean isCurved() {
    return cut.size() > MOST_CORNERS;
  }

  int size() {
    return cut.size();
  }

  /** The corner with a letter: 0 is a. */
  Vector2D corner(int letter) {
    return cut.vertex(edge + letter);
  }

  int index(int letter) {
    return Math.floorMod(edge + letter, cut.size());
  }

  static String letter(int letter) {
    return String.valueOf((char) ('a' + letter));
  }

  /** Turns a point of the piece so that the base line lies along x and starts at the origin. */
  Vector2D local(Vector2D point) {
    return TapeOffset.of(point, cut.vertex(edge), cut.vertex(edge + 1)).point();
  }

  List<Vector2D> local(List<Vector2D> points) {
    return points.stream().map(this::local).toList();
  }

  /** The tables for the tape. */
  MarkOut markOut(boolean imperial) {
    TapeDivision division = imperial ? TapeDivision.SIXTEENTH_INCH : TapeDivision.MILLIMETRE;
    return MarkOut.of(cut, edge, division, MarkOut.HAND_TOLERANCE);
  }

  /**
   * The longest run of short edges: the curved side of a piece.
   *
   * @return the letters of its first, middle and last corner
   */
  int[] arc() {
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < cut.size(); i++) {
      shortest = Math.min(shortest, cut.edgeLength(i));
    }
    double limit = Math.max(3 * shortest, cut.perimeter() / MOST_CORNERS / 2);
    int bestStart = 0;
    int bestLength = 0;
    for (int from = 0; from < cut.size(); from++) {
      int length = 0;
      while (length < cut.size() && cut.edgeLength(edge + from + length) < limit) {
        length++;
      }
      if (length > bestLength) {
        bestLength = length;
        bestStart = from;
      }
    }
    return new int[] {bestStart, bestStart + bestLength / 2, bestStart + bestLength};
  }

  /** Corners that are not within the curved side. */
  List<Integer> corners() {
    List<Integer> letters = new ArrayList<>();
    int[] arc = isCurved() ? arc() : new int[] {0, 0, 0};
    for (int i = 0; i < cut.size(); i++) {
      boolean inside = isCurved() && within(i, arc[0], arc[2]);
      if (!inside) {
        letters.add(i);
      }
    }
    return letters;
  }

  private boolean within(int letter, int from, int to) {
    int steps = Math.floorMod(letter - from, cut.size());
    return steps > 0 && steps < to - from;
  }

  /** The centre of the circle through three points. */
  static Vector2D centre(Vector2D a, Vector2D b, Vector2D c) {
    Vector2D p = b.subtract(a);
    Vector2D q = c.subtract(a);
    double d = 2 * p.signedArea(q);
    double pp = p.normSq();
    double qq = q.normSq();
    return a.add(
        Vector2D.of((q.getY() * pp - p.getY() * qq) / d, (p.getX() * qq - q.getX() * pp) / d));
  }
}
