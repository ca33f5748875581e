package io.github.seamstead.geometry.drawing;

import io.github.seamstead.geometry.pattern.Mark;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.check.Args;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A piece as lines and texts in millimetres, for a drawing at full size. The origin is at the lower
 * left of the sheet, x to the right, y up.
 *
 * @param pieceId the piece's id
 * @param width of the sheet with its margin, in millimetres
 * @param height of the sheet with its margin, in millimetres
 * @param lines what is drawn
 * @param texts what is written
 */
public record PieceDrawing(
    String pieceId, double width, double height, List<Line> lines, List<Text> texts) {

  public PieceDrawing {
    lines = List.copyOf(lines);
    texts = List.copyOf(texts);
  }

  /**
   * Draws a piece at full size, 1 m as 1000 mm.
   *
   * @param piece the piece
   * @param margin round the cut line, in millimetres, 0 or more
   * @return the drawing
   * @throws IllegalArgumentException if the margin is negative or not finite
   */
  public static PieceDrawing of(PatternPiece piece, double margin) {
    return new Drafter(piece, Args.notNegative("drawing margin", margin, "mm")).draw();
  }

  /**
   * Draws the same smaller or larger, as for a model; texts and margin change with it.
   *
   * @param factor greater than 0, such as 0.1 for a model at 1:10
   * @return the drawing at that scale
   * @throws IllegalArgumentException if the factor is not positive
   */
  public PieceDrawing scaled(double factor) {
    Args.positive("drawing scale", factor, "");
    return new PieceDrawing(
        pieceId,
        width * factor,
        height * factor,
        lines.stream()
            .map(
                l ->
                    new Line(
                        l.kind(),
                        l.points().stream().map(p -> p.multiply(factor)).toList(),
                        l.closed()))
            .toList(),
        texts.stream()
            .map(
                t ->
                    new Text(
                        t.kind(),
                        t.text(),
                        t.at().multiply(factor),
                        t.rotation(),
                        t.height() * factor))
            .toList());
  }

  /** What a line stands for. */
  public enum LineKind {
    /** Cut here. */
    CUT,
    /** Sew or fold here. */
    STITCH,
    /** Cut the opening here. */
    HOLE_CUT,
    /** The opening's finished edge: fold here. */
    HOLE_FOLD,
    /** Slit the opening's turn-in here. */
    SLIT,
    /** Bend here, neither cut nor sewn: a hip between two faces in one piece. */
    FOLD,
    /** Match notch. */
    NOTCH,
    /** Direction of the warp, an arrow. */
    GRAIN
  }

  /**
   * A line through points.
   *
   * @param kind what it stands for
   * @param points two or more, in millimetres
   * @param closed true if the last point joins the first
   */
  public record Line(LineKind kind, List<Vector2D> points, boolean closed) {

    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * A text, centred on its place.
   *
   * @param kind what it says
   * @param text the text
   * @param at its middle, in millimetres
   * @param rotation counter-clockwise, in radians
   * @param height of its capitals, in millimetres
   */
  public record Text(Mark.Kind kind, String text, Vector2D at, double rotation, double height) {}
}
