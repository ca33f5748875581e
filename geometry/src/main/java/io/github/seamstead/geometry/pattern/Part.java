package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A face or a part of it, each edge knowing where it comes from.
 *
 * @param corners counter-clockwise, in metres
 * @param sides side {@code i} runs from corner {@code i} to the next
 */
record Part(List<Vector2D> corners, List<Side> sides) {

  /** Nearer to the cutting line than this, in metres, a corner counts as on it. */
  private static final double ON_LINE = 1e-9;

  /** Where an edge comes from; {@code faceEdge} is −1 for a splice. */
  record Side(int faceEdge, String letter, String joint, EdgeAllowance allowance) {}

  static Part whole(Outline face, PanelSpec spec) {
    List<EdgeAllowance> allowances = spec.edges().forFaces(face, spec.faces());
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < face.size(); i++) {
      sides.add(new Side(i, spec.marks().edge(i), spec.marks().joint(i), allowances.get(i)));
    }
    return new Part(face.vertices(), sides);
  }

  Outline outline() {
    return new Outline(corners);
  }

  List<EdgeAllowance> allowances() {
    return sides.stream().map(Side::allowance).toList();
  }

  /** Keeps what lies left of a directed line; the part must be convex. */
  Part leftOf(Vector2D point, Vector2D direction, Side fresh) {
    List<Vector2D> kept = new ArrayList<>();
    List<Side> keptSides = new ArrayList<>();
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      Vector2D a = corners.get(i);
      Vector2D b = corners.get((i + 1) % n);
      double sa = height(a, point, direction);
      double sb = height(b, point, direction);
      boolean leaves = sa >= 0 && sb < 0;
      if (sa >= 0) {
        kept.add(a);
        keptSides.add(sa == 0 && leaves ? fresh : sides.get(i));
      }
      if (sa > 0 && leaves) {
        kept.add(a.lerp(b, sa / (sa - sb)));
        keptSides.add(fresh);
      } else if (sa < 0 && sb > 0) {
        kept.add(a.lerp(b, sa / (sa - sb)));
        keptSides.add(sides.get(i));
      }
    }
    return new Part(kept, keptSides);
  }

  private static double height(Vector2D v, Vector2D point, Vector2D direction) {
    double s = direction.signedArea(v.subtract(point));
    return Math.abs(s) < ON_LINE ? 0 : s;
  }
}
