package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Turns parts of faces, and free outlines, into pieces. */
final class PieceMaker {

  private static final double ON_LINE = 1e-9;

  private PieceMaker() {}

  /** Makes a piece of a part of a face, with notches along the hips. */
  static PatternPiece ofPart(
      String id,
      String label,
      PieceKind kind,
      Outline face,
      Part part,
      PanelSpec spec,
      List<PieceHole> holes) {
    Outline stitch = part.outline();
    CutLine cut = CutLine.around("panel " + id, stitch, part.allowances(), spec.mitreLimit());
    List<PieceEdge> edges = new ArrayList<>();
    List<Notch> notches = new ArrayList<>();
    for (int i = 0; i < stitch.size(); i++) {
      Part.Side side = part.sides().get(i);
      double fromBase = fromBase(face, spec.faces(), side.faceEdge(), stitch, i);
      edges.add(
          new PieceEdge(
              side.letter(),
              side.joint(),
              side.faceEdge(),
              side.allowance(),
              stitch.edgeLength(i),
              fromBase));
      if (isHip(face, spec.faces(), side.faceEdge()) && side.allowance().role().isJoined()) {
        notch(notches, face, spec, edges.get(i), i);
      }
    }
    return new PatternPiece(
        id,
        label,
        kind,
        spec.count(),
        stitch,
        cut.outline(),
        cut.owners(),
        edges,
        holes,
        notches,
        MarkPlacer.place(stitch, label, edges, holes),
        folds(stitch, spec),
        spec.grain(),
        true);
  }

  /** Makes a piece that is not part of a face. */
  static PatternPiece free(
      String id,
      String label,
      PieceKind kind,
      int count,
      Outline stitch,
      List<EdgeAllowance> allowances,
      List<PieceHole> holes) {
    CutLine cut = CutLine.around(id, stitch, allowances, Mitre.USUAL_LIMIT);
    List<PieceEdge> edges = new ArrayList<>();
    for (int i = 0; i < stitch.size(); i++) {
      edges.add(new PieceEdge("", "", -1, allowances.get(i), stitch.edgeLength(i), 0));
    }
    return new PatternPiece(
        id,
        label,
        kind,
        count,
        stitch,
        cut.outline(),
        cut.owners(),
        edges,
        holes,
        List.of(),
        MarkPlacer.place(stitch, label, edges, holes),
        List.of(),
        Math.PI / 2,
        true);
  }

  /**
   * The hips between faces in one piece. The outline runs along their bases, up the last hip, back
   * over the tops, one for each face unless all end in one point, and down the first hip.
   */
  private static List<Fold> folds(Outline stitch, PanelSpec spec) {
    int faces = spec.faces();
    boolean pointed = stitch.size() == faces + 2;
    List<Fold> folds = new ArrayList<>();
    for (int i = 1; i < faces; i++) {
      int top = pointed ? faces + 1 : 2 * faces + 1 - i;
      folds.add(new Fold(i, spec.marks().fold(i), stitch.vertex(i), stitch.vertex(top)));
    }
    return folds;
  }

  private static void notch(
      List<Notch> notches, Outline face, PanelSpec spec, PieceEdge edge, int index) {
    int hip = spec.faces();
    boolean right = edge.faceEdge() == hip;
    Vector2D base = face.vertex(right ? hip : 0);
    Vector2D top = face.vertex(right ? hip + 1 : face.size() - 1);
    Vector2D up = top.subtract(base).normalize();
    Vector2D outward = Vector2D.of(up.getY(), -up.getX()).multiply(right ? 1 : -1);
    List<Double> distances =
        Notches.distances(face.edgeLength(edge.faceEdge()), spec.notchSpacing());
    for (int k = 0; k < distances.size(); k++) {
      double d = distances.get(k);
      // Half open, so that a notch on a splice line belongs to one part, the upper.
      if (d >= edge.fromBase() - ON_LINE && d < edge.fromBase() + edge.finishedLength() - ON_LINE) {
        Vector2D onStitch = base.add(up.multiply(d));
        Vector2D onCut = onStitch.add(outward.multiply(edge.allowance().width()));
        notches.add(new Notch(index, k + 1, d, onStitch, onCut, k == 0));
      }
    }
  }

  private static boolean isHip(Outline face, int rightHip, int faceEdge) {
    return faceEdge == rightHip || faceEdge == face.size() - 1;
  }

  private static double fromBase(
      Outline face, int rightHip, int faceEdge, Outline stitch, int index) {
    if (!isHip(face, rightHip, faceEdge)) {
      return 0;
    }
    Vector2D base = face.vertex(faceEdge == rightHip ? rightHip : 0);
    return Math.min(base.distance(stitch.vertex(index)), base.distance(stitch.vertex(index + 1)));
  }
}
