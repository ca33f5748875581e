package io.github.seamstead.geometry.drawing;

import io.github.seamstead.geometry.drawing.PieceDrawing.Line;
import io.github.seamstead.geometry.drawing.PieceDrawing.LineKind;
import io.github.seamstead.geometry.drawing.PieceDrawing.Text;
import io.github.seamstead.geometry.pattern.Mark;
import io.github.seamstead.geometry.pattern.Notch;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceHole;
import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Turns a piece into lines and texts in millimetres. */
final class Drafter {

  private static final double MM = 1000;

  /** Length of a notch on an edge without allowance, and between the two of a pair, in metres. */
  private static final double TICK = 0.006;

  private static final double GRAIN_HALF_LENGTH = 0.1;

  /** Where no place by the label has room, this many by as many are looked at. */
  private static final int ROOM_GRID = 24;

  private final PatternPiece piece;
  private final Vector2D shift;
  private final double margin;
  private final List<Line> lines = new ArrayList<>();

  Drafter(PatternPiece piece, double margin) {
    this.piece = piece;
    this.margin = margin;
    Bounds bounds = piece.cut().bounds();
    shift = Vector2D.of(margin - MM * bounds.minX(), margin - MM * bounds.minY());
  }

  PieceDrawing draw() {
    add(LineKind.CUT, piece.cut().vertices(), true);
    add(LineKind.STITCH, piece.stitch().vertices(), true);
    piece.folds().forEach(f -> add(LineKind.FOLD, List.of(f.lower(), f.upper()), false));
    for (PieceHole hole : piece.holes()) {
      add(LineKind.HOLE_CUT, hole.cut().vertices(), true);
      if (!hole.cut().equals(hole.finished())) {
        add(LineKind.HOLE_FOLD, hole.finished().vertices(), true);
        for (int i = 0; i < hole.cut().size(); i++) {
          add(LineKind.SLIT, List.of(hole.cut().vertex(i), hole.finished().vertex(i)), false);
        }
      }
    }
    piece.notches().forEach(this::notch);
    grain();
    List<Text> texts =
        piece.marks().stream()
            .map(m -> new Text(m.kind(), m.text(), mm(m.at()), m.rotation(), m.height() * MM))
            .toList();
    Bounds bounds = piece.cut().bounds();
    return new PieceDrawing(
        piece.id(),
        bounds.width() * MM + 2 * margin,
        bounds.height() * MM + 2 * margin,
        lines,
        texts);
  }

  /** Half way from the cut edge to the stitch line; across the line where they are one. */
  private void notch(Notch notch) {
    Vector2D from = piece.stitch().vertex(notch.edge());
    Vector2D along = piece.stitch().vertex(notch.edge() + 1).subtract(from).normalize();
    Vector2D inward = Vector2D.of(-along.getY(), along.getX());
    double allowance = piece.edges().get(notch.edge()).allowance().width();
    double depth = allowance > 0 ? allowance / 2 : TICK;
    Vector2D in = inward.multiply(depth);
    if (!notch.doubled()) {
      add(LineKind.NOTCH, List.of(notch.onCut(), notch.onCut().add(in)), false);
      return;
    }
    for (double side : new double[] {-TICK / 2, TICK / 2}) {
      Vector2D start = notch.onCut().add(along.multiply(side));
      add(LineKind.NOTCH, List.of(start, start.add(in)), false);
    }
  }

  /**
   * An arrow above the piece's label, as long as there is room inside the stitch line; else where
   * there is most room, since a piece without it may be laid across the grain.
   */
  private void grain() {
    Vector2D along = Vector2D.of(StrictMath.cos(piece.grain()), StrictMath.sin(piece.grain()));
    Vector2D side = Vector2D.of(-along.getY(), along.getX());
    for (Mark mark : piece.marks()) {
      if (mark.kind() != Mark.Kind.PIECE) {
        continue;
      }
      Vector2D up = Vector2D.of(-StrictMath.sin(mark.rotation()), StrictMath.cos(mark.rotation()));
      for (double half = GRAIN_HALF_LENGTH; half > GRAIN_HALF_LENGTH / 10; half *= 0.8) {
        double off = mark.height() + half * Math.max(0.2, Math.abs(along.dot(up)));
        Vector2D middle = mark.at().add(up.multiply(off));
        if (hasRoom(middle, half)) {
          arrow(middle, along.multiply(half), side.multiply(half));
          return;
        }
      }
    }
    Bounds bounds = piece.stitch().bounds();
    double most = 0;
    Vector2D widest = Vector2D.ZERO;
    for (int i = 1; i < ROOM_GRID; i++) {
      for (int j = 1; j < ROOM_GRID; j++) {
        Vector2D at =
            Vector2D.of(
                bounds.minX() + bounds.width() * i / ROOM_GRID,
                bounds.minY() + bounds.height() * j / ROOM_GRID);
        double room = room(at);
        most = Math.max(most, room);
        widest = room == most ? at : widest;
      }
    }
    double half = Math.min(GRAIN_HALF_LENGTH, 0.9 * most);
    if (half > 0) {
      arrow(widest, along.multiply(half), side.multiply(half));
    }
  }

  /** The radius of the free cloth round a point; 0 where there is none. */
  private double room(Vector2D at) {
    if (!piece.stitch().contains(at)) {
      return 0;
    }
    double room = piece.stitch().distanceToEdge(at);
    for (PieceHole hole : piece.holes()) {
      boolean inside = hole.finished().contains(at);
      room = inside ? 0 : Math.min(room, hole.finished().distanceToEdge(at));
    }
    return room;
  }

  private boolean hasRoom(Vector2D middle, double half) {
    return room(middle) > half;
  }

  private void arrow(Vector2D middle, Vector2D along, Vector2D side) {
    Vector2D tip = middle.add(along);
    Vector2D barb = tip.subtract(along.multiply(0.2));
    add(LineKind.GRAIN, List.of(middle.subtract(along), tip), false);
    add(
        LineKind.GRAIN,
        List.of(barb.add(side.multiply(0.1)), tip, barb.subtract(side.multiply(0.1))),
        false);
  }

  private void add(LineKind kind, List<Vector2D> metres, boolean closed) {
    lines.add(new Line(kind, metres.stream().map(this::mm).toList(), closed));
  }

  private Vector2D mm(Vector2D metres) {
    return metres.multiply(MM).add(shift);
  }
}
