package io.github.seamstead.geometry.pattern;

import io.github.seamstead.geometry.plane.Bounds;
import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Cuts a face into bands, and bands into parts, that the cloth can yield. */
final class Splicer {

  private static final double FIT = 1e-9;

  private final Outline face;
  private final PanelSpec spec;
  private final SpliceRule rule;
  private final String where;
  private final List<Outline> zones = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  private Splicer(Outline face, PanelSpec spec, SpliceRule rule) {
    this.face = face;
    this.spec = spec;
    this.rule = rule;
    this.where = "panel " + spec.id();
    for (Opening opening : spec.openings()) {
      zones.add(Openings.grown(where, opening.outline(), opening.margin()));
    }
  }

  static Panel splice(
      Outline face,
      PatternPiece one,
      Part whole,
      PanelSpec spec,
      SpliceRule rule,
      List<PatternPiece> extras) {
    Bounds bounds = one.cut().bounds();
    if (bounds.height() <= rule.maxHeight() && bounds.width() <= rule.maxWidth()) {
      return new Panel(spec.id(), face, List.of(one), extras, List.of());
    }
    Args.require(
        face.isConvex(), where(spec) + ": given a face with an inward corner, cannot be spliced");
    Splicer splicer = new Splicer(face, spec, rule);
    splicer.bands(whole);
    List<PatternPiece> pieces = splicer.pieces(one.holes());
    return new Panel(spec.id(), face, pieces, extras, splicer.splices(pieces));
  }

  private static String where(PanelSpec spec) {
    return "panel " + spec.id();
  }

  private void bands(Part whole) {
    List<double[]> levels =
        zones.stream().map(z -> new double[] {z.bounds().minY(), z.bounds().maxY()}).toList();
    Bounds stitch = whole.outline().bounds();
    Bounds cut = cutBounds(whole);
    Stations stations =
        new Stations(
            stitch.minY(),
            stitch.maxY(),
            stitch.minY() - cut.minY(),
            cut.maxY() - stitch.maxY(),
            rule.maxHeight(),
            rule.lap(),
            levels);
    Part rest = whole;
    int band = 0;
    for (double y : stations.lines(where, rule.shift())) {
      String joint = spec.id() + "/H" + (band + 1);
      Vector2D at = Vector2D.of(0, y);
      columns(rest.leftOf(at, Vector2D.of(-1, 0), under(joint)), band);
      rest = rest.leftOf(at, Vector2D.of(1, 0), over(joint));
      band++;
    }
    columns(rest, band);
  }

  private void columns(Part bandPart, int band) {
    Bounds stitch = bandPart.outline().bounds();
    Bounds cut = cutBounds(bandPart);
    List<double[]> spans =
        zones.stream()
            .map(Outline::bounds)
            .filter(z -> z.maxY() > stitch.minY() && z.minY() < stitch.maxY())
            .map(z -> new double[] {z.minX(), z.maxX()})
            .toList();
    Stations stations =
        new Stations(
            stitch.minX(),
            stitch.maxX(),
            stitch.minX() - cut.minX(),
            cut.maxX() - stitch.maxX(),
            rule.maxWidth(),
            rule.lap(),
            spans);
    // Upright splices of neighbouring bands are kept apart, so that four layers never meet.
    double shift = band % 2 == 0 ? 0 : Math.min(3 * rule.lap(), rule.maxWidth() / 4);
    Part rest = bandPart;
    int column = 0;
    for (double x : stations.lines(where, shift)) {
      String joint = spec.id() + "/V" + (band + 1) + "." + (column + 1);
      Vector2D at = Vector2D.of(x, 0);
      keep(rest.leftOf(at, Vector2D.of(0, 1), under(joint)));
      rest = rest.leftOf(at, Vector2D.of(0, -1), over(joint));
      column++;
    }
    keep(rest);
  }

  private void keep(Part part) {
    Bounds cut = cutBounds(part);
    Args.require(
        cut.width() <= rule.maxWidth() + FIT && cut.height() <= rule.maxHeight() + FIT,
        where
            + ": a spliced part needs "
            + Numbers.fixed(cut.width(), 3)
            + " m by "
            + Numbers.fixed(cut.height(), 3)
            + " m, more than the cloth of "
            + Numbers.plain(rule.maxWidth())
            + " m by "
            + Numbers.plain(rule.maxHeight())
            + " m");
    parts.add(part);
  }

  private Bounds cutBounds(Part part) {
    return CutLine.around(where, part.outline(), part.allowances(), spec.mitreLimit())
        .outline()
        .bounds();
  }

  private Part.Side under(String joint) {
    return new Part.Side(-1, "", joint, EdgeAllowance.lapUnder(rule.lap()));
  }

  private static Part.Side over(String joint) {
    return new Part.Side(-1, "", joint, EdgeAllowance.lapOver(0));
  }

  private List<PatternPiece> pieces(List<PieceHole> holes) {
    List<PatternPiece> pieces = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      Outline outline = part.outline();
      List<PieceHole> inside = holes.stream().filter(h -> outline.contains(h.finished())).toList();
      String suffix = parts.size() == 1 ? "" : "-" + (i + 1);
      pieces.add(
          PieceMaker.ofPart(
              spec.id() + suffix,
              spec.marks().panel() + suffix,
              spec.kind() == PieceKind.PANEL ? PieceKind.PANEL_PART : spec.kind(),
              face,
              part,
              spec,
              inside));
    }
    return pieces;
  }

  /** Pairs the edges that carry the same joint and overlap on the splice line. */
  private List<Splice> splices(List<PatternPiece> pieces) {
    List<Splice> splices = new ArrayList<>();
    for (int u = 0; u < pieces.size(); u++) {
      for (int o = 0; o < pieces.size(); o++) {
        pair(splices, pieces.get(u), pieces.get(o));
      }
    }
    return splices;
  }

  private void pair(List<Splice> splices, PatternPiece under, PatternPiece over) {
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
        if (length > FIT) {
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
