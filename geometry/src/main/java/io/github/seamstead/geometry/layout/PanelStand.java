package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Turns;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * One way in which rows of a panel can be made: on which base, along the stock or across it, head
 * to tail or all the same way up.
 *
 * @param shape the panel on its base
 * @param across false for bases along x, true for bases along y
 * @param headToTail true if the half turn is allowed too
 * @param upsideDown true if only the half-turned panel is allowed
 */
record PanelStand(PanelShape shape, boolean across, boolean headToTail, boolean upsideDown) {

  /** All stands that a piece's turns and grain allow. */
  static List<PanelStand> all(Piece piece) {
    List<PanelStand> out = new ArrayList<>();
    for (PanelShape shape : PanelShape.all(piece.outline())) {
      for (boolean across : new boolean[] {false, true}) {
        double up = shape.turn() + (across ? Math.PI / 2 : 0);
        boolean standing = PieceTurns.allows(piece, up);
        boolean turned = PieceTurns.allows(piece, up + Math.PI);
        if (standing || turned) {
          out.add(new PanelStand(shape, across, standing && turned, !standing));
        }
      }
    }
    return out;
  }

  RowContacts contacts(double spacing) {
    return new RowContacts(shape, spacing, headToTail);
  }

  /**
   * Adds the first panels of a row.
   *
   * @param out takes the placements, numbered from its size on
   * @param id the piece
   * @param row panels and heights
   * @param n how many of its panels
   * @param lane height of the lane in which the row lies, free height included, in metres
   * @param x left end of the lane's box, in metres
   * @param y lower end of the lane's box, in metres
   */
  void place(List<Placement> out, String id, PanelRow row, int n, double lane, double x, double y) {
    double[] corners = row.corners();
    double length = upsideDown ? row.length() : 0;
    for (int i = 0; i < n; i++) {
      boolean turned = row.turned(i);
      double u = corners[i];
      double v = row.height(i);
      if (turned) {
        u += shape.l() + shape.t();
        v += shape.h();
      }
      if (upsideDown) {
        u = length - u;
        v = lane - v;
        turned = true;
      }
      double px = across ? x + lane - v : x + u;
      double py = across ? y + u : y + v;
      out.add(at(id, out.size() + 1, px, py, turned));
    }
  }

  /** The placement that brings the base's drawn left corner to (px, py). */
  Placement at(String id, int copy, double px, double py, boolean turned) {
    double rotation = shape.turn() + (across ? Math.PI / 2 : 0) + (turned ? Math.PI : 0);
    double c = Turns.cos(rotation);
    double s = Turns.sin(rotation);
    Vector2D o = shape.origin();
    Vector2D shift =
        Vector2D.of(px - (c * o.getX() - s * o.getY()), py - (s * o.getX() + c * o.getY()));
    double full = 2 * Math.PI;
    return new Placement(
        id, copy, false, rotation - full * Math.floor(rotation / full), shift, false);
  }
}
