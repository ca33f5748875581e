package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The cut line round a stitch line: each edge moved out by its own allowance, mitred at the
 * corners, or mirrored at the fold beside a hem. O(n²) for n edges, by the check for crossings.
 *
 * @param outline the cut line
 * @param owners for each cut edge the stitch edge whose allowance it bounds, −1 at a corner
 */
record CutLine(Outline outline, List<Integer> owners) {

  /** Sine of the angle below which two edges count as one straight line. */
  private static final double STRAIGHT = 1e-9;

  /** Part of a full mitre from which on it counts as whole. */
  private static final double WHOLE = 1 - 1e-12;

  /** So many widths can still be read in a message. */
  private static final int MOST_LISTED = 8;

  static final int CORNER = -1;

  static CutLine around(
      String piece, Outline stitch, List<EdgeAllowance> allowances, double mitreLimit) {
    int n = stitch.size();
    List<Vector2D> points = new ArrayList<>();
    List<Integer> owners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      List<Vector2D> corner =
          corner(stitch, i, allowances.get((i + n - 1) % n), allowances.get(i), mitreLimit);
      points.addAll(corner);
      for (int j = 1; j < corner.size(); j++) {
        owners.add(CORNER);
      }
      owners.add(i);
    }
    requireFolds(piece, stitch, allowances);
    requireForward(piece, stitch, allowances, points, owners);
    try {
      return new CutLine(new Outline(points), List.copyOf(owners));
    } catch (IllegalArgumentException e) {
      throw ArgumentFault.finding(
              piece
                  + ": the allowances make the cut line cross itself; given "
                  + widths(allowances),
              "must be narrower (" + e.getMessage() + ")")
          .causedBy(e);
    }
  }

  private static List<Vector2D> corner(
      Outline stitch, int i, EdgeAllowance in, EdgeAllowance out, double mitreLimit) {
    Vector2D v = stitch.vertex(i);
    Vector2D e1 = v.subtract(stitch.vertex(i - 1)).normalize();
    Vector2D e2 = stitch.vertex(i + 1).subtract(v).normalize();
    Vector2D n1 = outward(e1);
    Vector2D n2 = outward(e2);
    double a = in.width();
    double b = out.width();
    double turn = e1.signedArea(e2);
    if (Math.abs(turn) < STRAIGHT) {
      return a == b ? List.of(v.add(n1.multiply(a))) : step(v, n1.multiply(a), n2.multiply(b));
    }
    if (in.folds() != out.folds()) {
      return in.folds()
          ? foldAfter(v, e1, n1.multiply(a), e2, n2.multiply(b))
          : foldBefore(v, e1, n1.multiply(a), e2, n2.multiply(b));
    }
    double cos = -e1.dot(e2);
    Vector2D mitre =
        n1.multiply(a + b * cos).add(n2.multiply(b + a * cos)).multiply(1 / (turn * turn));
    double full = mitre.norm();
    double angle = Math.PI - StrictMath.atan2(turn, e1.dot(e2));
    double reach = Mitre.reach(angle, a, b, mitreLimit);
    if (full == 0 || reach >= full * WHOLE) {
      return List.of(v.add(mitre));
    }
    if (angle >= Math.PI / 2) {
      return step(v, n1.multiply(a), n2.multiply(b));
    }
    Vector2D along = mitre.multiply(1 / full);
    Vector2D before = mitre.subtract(e1.multiply((full - reach) / e1.dot(along)));
    Vector2D after = mitre.subtract(e2.multiply((full - reach) / e2.dot(along)));
    return step(v, before, after);
  }

  /** Tells whether two allowances end square to their edges at a corner, and not in a mitre. */
  static boolean endsSquare(double angle, double a, double b, double mitreLimit) {
    double full = Mitre.reach(angle, a, b, Double.MAX_VALUE);
    return angle >= Math.PI / 2 && Mitre.reach(angle, a, b, mitreLimit) < full * WHOLE;
  }

  private static List<Vector2D> step(Vector2D v, Vector2D first, Vector2D second) {
    return List.of(v.add(first), v.add(second));
  }

  /** A hem runs into the corner: its end is the mirror image of the next edge at the fold. */
  private static List<Vector2D> foldAfter(
      Vector2D v, Vector2D fold, Vector2D depth, Vector2D side, Vector2D allowance) {
    Vector2D onFold = meet(v, fold, v.add(allowance), side);
    return List.of(meet(v.add(depth), fold, onFold, mirror(side, fold)), onFold);
  }

  /** A hem runs out of the corner. */
  private static List<Vector2D> foldBefore(
      Vector2D v, Vector2D side, Vector2D allowance, Vector2D fold, Vector2D depth) {
    Vector2D onFold = meet(v, fold, v.add(allowance), side);
    return List.of(onFold, meet(v.add(depth), fold, onFold, mirror(side, fold)));
  }

  private static Vector2D outward(Vector2D direction) {
    return Vector2D.of(direction.getY(), -direction.getX());
  }

  private static Vector2D mirror(Vector2D direction, Vector2D axis) {
    return axis.multiply(2 * direction.dot(axis)).subtract(direction);
  }

  private static Vector2D meet(Vector2D p, Vector2D u, Vector2D q, Vector2D w) {
    return p.add(u.multiply(q.subtract(p).signedArea(w) / u.signedArea(w)));
  }

  /** What is folded back must end on the piece. */
  private static void requireFolds(String piece, Outline stitch, List<EdgeAllowance> allowances) {
    for (int i = 0; i < stitch.size(); i++) {
      if (!allowances.get(i).folds()) {
        continue;
      }
      Vector2D from = stitch.vertex(i);
      Vector2D along = stitch.vertex(i + 1).subtract(from).normalize();
      double depth = 0;
      for (Vector2D v : stitch.vertices()) {
        depth = Math.max(depth, along.signedArea(v.subtract(from)));
      }
      Args.agree(
          allowances.get(i).width() < depth,
          piece
              + ": the "
              + allowances.get(i).role().label()
              + " of edge "
              + (i + 1)
              + " folds beyond the panel; given "
              + Numbers.plain(allowances.get(i).width())
              + " m",
          "must be less than " + Numbers.fixed(depth, 3) + " m");
    }
  }

  /** An edge that is eaten up by the allowances of its neighbours would run backwards. */
  private static void requireForward(
      String piece,
      Outline stitch,
      List<EdgeAllowance> allowances,
      List<Vector2D> points,
      List<Integer> owners) {
    for (int k = 0; k < points.size(); k++) {
      int edge = owners.get(k);
      if (edge == CORNER) {
        continue;
      }
      Vector2D along = stitch.vertex(edge + 1).subtract(stitch.vertex(edge)).normalize();
      double length = points.get((k + 1) % points.size()).subtract(points.get(k)).dot(along);
      Args.agree(
          length > 0,
          () ->
              piece
                  + ": the "
                  + allowances.get(edge).role().label()
                  + " of edge "
                  + (edge + 1)
                  + " makes the cut line cross itself, its cut edge would be "
                  + Numbers.fixed(length * 1000, 1)
                  + " mm long; given "
                  + widths(allowances),
          "must be narrower");
    }
  }

  private static String widths(List<EdgeAllowance> allowances) {
    if (allowances.size() > MOST_LISTED) {
      double[] sorted = allowances.stream().mapToDouble(EdgeAllowance::width).sorted().toArray();
      return "widths of "
          + Numbers.plain(sorted[0])
          + " m to "
          + Numbers.plain(sorted[sorted.length - 1])
          + " m";
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < allowances.size(); i++) {
      text.append(i == 0 ? "" : ", ")
          .append("edge ")
          .append(i + 1)
          .append(' ')
          .append(Numbers.plain(allowances.get(i).width()))
          .append(" m");
    }
    return text.toString();
  }
}
