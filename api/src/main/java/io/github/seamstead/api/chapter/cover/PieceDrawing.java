package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Corners;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Labels;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Mark;
import io.github.seamstead.geometry.pattern.Notch;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** One piece of the cover, in the book or true to size. */
final class PieceDrawing {

  private static final double TRUE_SIZE_MARGIN_MM = 15;

  private PieceDrawing() {}

  /** Draws a piece for the book's page. */
  static Drawing forBook(PatternPiece piece, String sizes, Words w) {
    Bounds b = piece.cut().bounds();
    Canvas canvas = Canvas.fit(b.minX(), b.minY(), b.maxX(), b.maxY(), 24, 420);
    draw(canvas, piece, canvas.textSize() / canvas.scale());
    canvas.scaleBar(w.scaleUnit(), w::scale);
    return canvas.drawing("piece-" + Markup.anchor(piece.id()), piece.label(), words(piece, sizes));
  }

  /** Draws a piece in millimetres. */
  static Drawing trueSize(PatternPiece piece, String sizes) {
    Bounds b = piece.cut().bounds();
    Canvas canvas = Canvas.trueSize(b.minX(), b.minY(), b.maxX(), b.maxY(), TRUE_SIZE_MARGIN_MM);
    draw(canvas, piece, canvas.textSize() / 1000);
    return canvas.drawing(
        "true-size-" + Markup.anchor(piece.id()),
        piece.label() + ", true size",
        words(piece, sizes));
  }

  private static void draw(Canvas canvas, PatternPiece piece, double leastTextHeight) {
    canvas.path(Corners.drawn(piece.cut()), true, Ink.CUT, Shade.PALE);
    canvas.path(Corners.drawn(piece.stitch()), true, Ink.SEAM, Shade.NONE);
    piece
        .holes()
        .forEach(
            hole -> {
              canvas.path(Corners.drawn(hole.cut()), true, Ink.CUT, Shade.PAPER);
              canvas.path(Corners.drawn(hole.finished()), true, Ink.SEAM, Shade.NONE);
            });
    piece.reinforcedCutEdge().ifPresent(edge -> heavy(canvas, piece.cut(), edge));
    for (Notch notch : piece.notches()) {
      notch(canvas, notch);
    }
    for (Fold fold : piece.folds()) {
      Vector2D a = fold.lower();
      Vector2D b = fold.upper();
      canvas.line(a.getX(), a.getY(), b.getX(), b.getY(), Ink.SEAM);
    }
    Labels labels = new Labels(canvas);
    Labels.Area cloth =
        (x, y) -> {
          Vector2D point = Vector2D.of(x, y);
          return piece.cut().contains(point)
              && piece.holes().stream().noneMatch(hole -> hole.finished().contains(point));
        };
    for (Fold fold : piece.folds()) {
      fold(canvas, labels, cloth, fold);
    }
    for (Mark mark : piece.marks()) {
      double size = Math.max(mark.height() * canvas.scale(), leastTextHeight * canvas.scale());
      labels.set(
          mark.at().getX(),
          mark.at().getY(),
          mark.text(),
          size,
          Math.toDegrees(mark.rotation()),
          cloth);
    }
  }

  private static void heavy(Canvas canvas, Outline outline, int edge) {
    Vector2D a = outline.vertex(edge);
    Vector2D b = outline.vertex(edge + 1);
    canvas.line(a.getX(), a.getY(), b.getX(), b.getY(), Ink.HEAVY);
  }

  private static void notch(Canvas canvas, Notch notch) {
    Vector2D from = notch.onCut();
    Vector2D to = from.lerp(notch.onStitch(), 0.6);
    canvas.line(from.getX(), from.getY(), to.getX(), to.getY(), Ink.CUT);
    if (notch.doubled()) {
      Vector2D along = notch.onStitch().subtract(from);
      Vector2D aside = Vector2D.of(-along.getY(), along.getX()).multiply(0.25);
      canvas.line(
          from.getX() + aside.getX(),
          from.getY() + aside.getY(),
          to.getX() + aside.getX(),
          to.getY() + aside.getY(),
          Ink.CUT);
    }
  }

  /** Along the fold in its lower half, where neighbouring folds lie apart. */
  private static void fold(Canvas canvas, Labels labels, Labels.Area cloth, Fold fold) {
    Vector2D at = fold.lower().lerp(fold.upper(), 0.35);
    Vector2D way = fold.upper().subtract(fold.lower());
    double turn = StrictMath.atan2(way.getY(), way.getX());
    double upright = Math.abs(turn) > Math.PI / 2 ? turn - Math.copySign(Math.PI, turn) : turn;
    labels.set(
        at.getX(), at.getY(), fold.name(), canvas.textSize(), Math.toDegrees(upright), cloth);
  }

  private static String words(PatternPiece piece, String sizes) {
    return piece.label()
        + " ("
        + piece.kind().label()
        + "), seen on its "
        + (piece.goodSide() ? "good" : "plain")
        + " side; "
        + sizes
        + ". Full line: cut. Dashed line: stitch or fold"
        + (piece.folds().isEmpty() ? "" : "; across the piece: a hip, bent and not cut")
        + ". Short strokes: match notches, a pair on"
        + " the first above the base.";
  }
}
