package io.github.seamstead.geometry.pattern;

import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The measures by which a piece is marked on cloth with a tape, a straight edge and a square: every
 * corner, notch and opening by its distance along a base line and its offset square to it, and
 * diagonals to check afterwards.
 *
 * <p>The base line is one edge of the cut outline, best the longest, laid along the edge of the
 * cloth; its zero is the edge's first corner. Cost: O(p) for p points.
 *
 * @param pieceId the piece's id
 * @param baseEdge index of the edge of the cut outline on the base line
 * @param offsets corners of the cut line, then of the stitch line, notches, corners of openings
 * @param checks diagonals of the cut outline, then of each opening
 */
public record PieceDimensions(
    String pieceId, int baseEdge, List<Offset> offsets, List<Check> checks) {

  /** Up to this many corners all diagonals are given; beyond, to the corner half way round. */
  public static final int ALL_DIAGONALS = 5;

  private static final Source SQUARE = Source.derived("components along and square to a line");

  /** What a point is. */
  public enum PointKind {
    /** A corner of the cut line. */
    CUT_CORNER,
    /** A corner of the stitch line or fold. */
    STITCH_CORNER,
    /** Where a match notch starts on the cut line. */
    NOTCH,
    /** A corner of the line on which an opening is cut. */
    HOLE_CORNER
  }

  /**
   * A point by its distances.
   *
   * @param kind what it is
   * @param name such as {@code corner 2}, {@code edge 1 notch 3} or {@code door corner 1}; corners
   *     and edges count from 1
   * @param along along the base line from its zero, in metres; negative behind the zero
   * @param across square to the base line, in metres, positive towards the piece; a corner of an
   *     allowance that flares out may lie behind the line
   */
  public record Offset(PointKind kind, String name, double along, double across) {}

  /**
   * A diagonal to measure once the points are marked.
   *
   * @param from the name of one end
   * @param to the name of the other end
   * @param length in metres
   */
  public record Check(String from, String to, double length) {}

  /**
   * Copies the lists.
   *
   * @param pieceId the piece's id
   * @param baseEdge index of the edge on the base line
   * @param offsets the points
   * @param checks diagonals
   */
  public PieceDimensions {
    offsets = List.copyOf(offsets);
    checks = List.copyOf(checks);
  }

  /**
   * Dimensions a piece from the longest edge of its cut outline.
   *
   * @param piece the piece
   * @return its dimensions
   */
  public static PieceDimensions of(PatternPiece piece) {
    int longest = 0;
    for (int i = 1; i < piece.cut().size(); i++) {
      // Longer by more than rounding, so that of equals the first is taken.
      longest =
          piece.cut().edgeLength(i) > piece.cut().edgeLength(longest) * (1 + 1e-9) ? i : longest;
    }
    return of(piece, longest);
  }

  /**
   * Dimensions a piece.
   *
   * @param piece the piece
   * @param baseEdge index of the edge of the cut outline on the base line, 0 to size − 1
   * @return its dimensions
   * @throws IllegalArgumentException if there is no such edge
   */
  public static PieceDimensions of(PatternPiece piece, int baseEdge) {
    Outline cut = piece.cut();
    Args.within("base edge", baseEdge, 0, cut.size() - 1);
    Vector2D zero = cut.vertex(baseEdge);
    Vector2D end = cut.vertex(baseEdge + 1);
    List<Offset> offsets = new ArrayList<>();
    List<Check> checks = new ArrayList<>();
    corners(PointKind.CUT_CORNER, "corner ", cut, zero, end, offsets);
    diagonals("corner ", cut, checks);
    corners(PointKind.STITCH_CORNER, "stitch corner ", piece.stitch(), zero, end, offsets);
    for (Notch notch : piece.notches()) {
      String name = "edge " + (notch.edge() + 1) + " notch " + notch.ordinal();
      offsets.add(offset(PointKind.NOTCH, name, notch.onCut(), zero, end, Steps.none()));
    }
    for (PieceHole hole : piece.holes()) {
      String name = hole.name() + " corner ";
      corners(PointKind.HOLE_CORNER, name, hole.cut(), zero, end, offsets);
      diagonals(name, hole.cut(), checks);
    }
    return new PieceDimensions(piece.id(), baseEdge, offsets, checks);
  }

  private static void corners(
      PointKind kind,
      String name,
      Outline outline,
      Vector2D zero,
      Vector2D end,
      List<Offset> offsets) {
    for (int i = 0; i < outline.size(); i++) {
      offsets.add(offset(kind, name + (i + 1), outline.vertex(i), zero, end, Steps.none()));
    }
  }

  private static void diagonals(String name, Outline outline, List<Check> checks) {
    int size = outline.size();
    for (int i = 0; i < size; i++) {
      for (int j = i + 2; j < size; j++) {
        boolean neighbours = i == 0 && j == size - 1;
        if (!neighbours && (size <= ALL_DIAGONALS || j == i + size / 2)) {
          double length = outline.vertex(i).distance(outline.vertex(j));
          checks.add(new Check(name + (i + 1), name + (j + 1), length));
        }
      }
    }
  }

  /**
   * Gives the distances of one point with the worked steps: along the base line {@code ((p - z) .
   * (e - z)) / L}, and square to it {@code ((e - z) x (p - z)) / L}. The last step is the offset
   * square to the line.
   *
   * @param kind what the point is
   * @param name its name
   * @param point p, in metres
   * @param zero z, where the base line starts, in metres
   * @param end e, where it ends, in metres, away from the zero
   * @param steps where the steps are written
   * @return the point by its distances
   * @throws IllegalArgumentException if the base line has no length
   */
  @Calculation("geometry.pattern.offset")
  public static Offset offset(
      PointKind kind, String name, Vector2D point, Vector2D zero, Vector2D end, Steps steps) {
    Args.positive("length of the base line", zero.distance(end), "m");
    double dx = component("dx", "base line, x", end.getX() - zero.getX(), steps);
    double dy = component("dy", "base line, y", end.getY() - zero.getY(), steps);
    double px = component("px", name + " from the zero, x", point.getX() - zero.getX(), steps);
    double py = component("py", name + " from the zero, y", point.getY() - zero.getY(), steps);
    double length =
        steps
            .step("L", "length of the base line")
            .formula("sqrt(dx^2 + dy^2)")
            .with("dx", dx, "m")
            .with("dy", dy, "m")
            .from(SQUARE)
            .gives(Math.sqrt(dx * dx + dy * dy), "m");
    double along =
        steps
            .step("s", "along the base line")
            .formula("(px * dx + py * dy) / L")
            .with("px", px, "m")
            .with("dx", dx, "m")
            .with("py", py, "m")
            .with("dy", dy, "m")
            .with("L", length, "m")
            .from(SQUARE)
            .gives((px * dx + py * dy) / length, "m");
    double across =
        steps
            .step("o", "square to the base line")
            .formula("(dx * py - dy * px) / L")
            .with("dx", dx, "m")
            .with("py", py, "m")
            .with("dy", dy, "m")
            .with("px", px, "m")
            .with("L", length, "m")
            .from(SQUARE)
            .gives((dx * py - dy * px) / length, "m");
    return new Offset(kind, name, along, across);
  }

  private static double component(String symbol, String what, double value, Steps steps) {
    return steps.step(symbol, what).gives(value, "m");
  }
}
