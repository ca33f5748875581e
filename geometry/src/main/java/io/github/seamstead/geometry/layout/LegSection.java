package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Convex;
import io.github.seamstead.geometry.layout.internal.NoFitBuilder;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Rows of trapezoids that stand on a leg, head to tail: pairs of a standing and a turned panel
 * repeat along the row, and all turned ones lie higher, or all lower, by one rise x.
 *
 * <p>With {@code q(x)} the least distance along the row at which the second of two panels is clear
 * of the first, pairs repeat at {@code P = max(qUT(x) + qTU(-x), qUU(0))}. The no-fit region of two
 * convex panels is convex, so each q is a concave function of x and P is least where x is as large
 * as the free height allows, upwards or downwards. A short row is least where its second panel
 * begins level with the first, because beyond that it only reaches further back. All these are
 * tried, and no rise. Panels further apart are clear because a convex region, once left to the
 * right, is not entered again.
 */
final class LegSection implements SectionTable.Section {

  private final String id;
  private final PanelStand stand;
  private final int rows;
  private final double spacing;
  private final double rise;
  private final double[] standing;
  private final double[] turned;
  private final double toTurned;
  private final double pair;

  private LegSection(
      String id, PanelStand stand, double[] standing, int rows, double rise, double spacing) {
    this.id = id;
    this.stand = stand;
    this.rows = rows;
    this.spacing = spacing;
    this.rise = rise;
    this.standing = standing;
    turned = Convex.negated(standing);
    for (int i = 1; i < turned.length; i += 2) {
      turned[i] += stand.shape().h();
    }
    toTurned = apart(standing, turned, rise);
    pair = Math.max(toTurned + apart(turned, standing, -rise), apart(standing, standing, 0));
  }

  /** Offers such rows on every leg on which the panel may stand and lie turned. */
  static void offerAll(Piece piece, double width, double spacing, SectionTable table) {
    Outline o = piece.outline();
    for (int e = 0; e < o.size(); e++) {
      if (o.size() == 4 && PanelShape.all(o).size() > 0 && PanelShape.on(o, e).isEmpty()) {
        offerAll(piece, e, width, spacing, table);
      }
    }
  }

  private static void offerAll(
      Piece piece, int edge, double width, double spacing, SectionTable table) {
    Outline o = piece.outline();
    Vector2D origin = o.vertex(edge);
    Vector2D along = o.vertex(edge + 1).subtract(origin);
    double turn = -StrictMath.atan2(along.getY(), along.getX());
    if (!PieceTurns.allows(piece, turn) || !PieceTurns.allows(piece, turn + Math.PI)) {
      return;
    }
    double[] standing = new double[2 * o.size()];
    double h = 0;
    for (int i = 0; i < o.size(); i++) {
      Vector2D v = o.vertex(edge + i).subtract(origin);
      standing[2 * i] = v.dot(along) / along.norm();
      standing[2 * i + 1] = i < 2 ? 0 : along.signedArea(v) / along.norm();
      h = Math.max(h, standing[2 * i + 1]);
    }
    PanelShape shape = new PanelShape(along.norm(), 0, h, 0, turn, origin);
    PanelStand stand = new PanelStand(shape, false, true, false);
    for (int a = 1; a * (h + spacing) - spacing <= width * (1 + 1e-12); a++) {
      if (table.isEnded()) {
        return;
      }
      double free = Math.max(0, Math.min(h, (width + spacing) / a - h - spacing));
      int rows = a;
      DoubleFunction<LegSection> raised =
          rise -> new LegSection(piece.id(), stand, standing, rows, rise, spacing);
      raised.apply(0).offerTo(table);
      for (double most : free > 0 ? new double[] {free, -free} : new double[0]) {
        raised.apply(most).offerTo(table);
        raised.apply(levelStart(raised, most, false)).offerTo(table);
        raised.apply(levelStart(raised, most, true)).offerTo(table);
      }
    }
  }

  /**
   * The most rise up to the one given, 0 aside, at which no second panel begins before the first.
   */
  private static double levelStart(
      DoubleFunction<LegSection> raised, double most, boolean firstTurned) {
    double low = 0;
    double high = 1;
    if (raised.apply(most).beginsLater(firstTurned)) {
      return most;
    }
    for (int i = 0; i < 45; i++) {
      double mid = (low + high) / 2;
      if (raised.apply(mid * most).beginsLater(firstTurned)) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low * most;
  }

  private boolean beginsLater(boolean firstTurned) {
    return reach(1, firstTurned, false) >= reach(0, firstTurned, false);
  }

  private void offerTo(SectionTable table) {
    for (int n = 1; (n - 1) * rows < table.count(); n++) {
      double length = Math.min(length(n, false), length(n, true));
      if (length > table.longest()) {
        return;
      }
      table.offer(this, length, (n - 1) * rows + 1, n * rows);
    }
  }

  /** The least distance to the right at which b, raised against a, is clear of it. */
  private double apart(double[] a, double[] b, double raised) {
    double[] sum = NoFitBuilder.tooNear(a, b, spacing);
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < sum.length; i += 2) {
      int k = (i + 2) % sum.length;
      double low = Math.min(sum[i + 1], sum[k + 1]);
      double high = Math.max(sum[i + 1], sum[k + 1]);
      if (low <= raised && raised <= high) {
        double part = high > low ? (raised - sum[i + 1]) / (sum[k + 1] - sum[i + 1]) : 0;
        most = Math.max(most, sum[i] + part * (sum[k] - sum[i]));
        most = high > low ? most : Math.max(most, sum[k]);
      }
    }
    return most;
  }

  /** Where panel i's corner lies along the row, from that of the first panel. */
  private double corner(int i, boolean firstTurned) {
    int pairs = i / 2;
    double second = firstTurned ? pair - toTurned : toTurned;
    return pairs * pair + (i % 2 == 0 ? 0 : second);
  }

  private double reach(int i, boolean firstTurned, boolean right) {
    double[] panel = firstTurned == (i % 2 == 0) ? turned : standing;
    double out = panel[0];
    for (int j = 2; j < panel.length; j += 2) {
      out = right ? Math.max(out, panel[j]) : Math.min(out, panel[j]);
    }
    return corner(i, firstTurned) + out;
  }

  private double from(int n, boolean firstTurned) {
    double first = reach(0, firstTurned, false);
    return n == 1 ? first : Math.min(first, reach(1, firstTurned, false));
  }

  private double length(int n, boolean firstTurned) {
    double last = reach(n - 1, firstTurned, true);
    double to = n == 1 ? last : Math.max(last, reach(n - 2, firstTurned, true));
    return to - from(n, firstTurned);
  }

  @Override
  public void place(List<Placement> out, int m, double length, double x, double y) {
    int left = m;
    double h = stand.shape().h();
    double up = Math.max(0, -rise);
    for (int r = 0; r < rows && left > 0; r++) {
      int n = (left + rows - r - 1) / (rows - r);
      boolean firstTurned = length(n, true) < length(n, false);
      double base = y + r * (h + Math.abs(rise) + spacing);
      for (int i = 0; i < n; i++) {
        boolean turned = firstTurned == (i % 2 == 0);
        double px = x + corner(i, firstTurned) - from(n, firstTurned);
        double py = base + (turned ? h + up + rise : up);
        out.add(stand.at(id, out.size() + 1, px, py, turned));
      }
      left -= n;
    }
  }
}
