package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Congruent triangles or trapezoids that must all have their hem edge on a reinforced selvedge, in
 * closed form.
 *
 * <p><b>One selvedge.</b> All panels stand side by side on it, each at most one base from the next:
 * bases on one line cannot overlap, so the pitch b + g is the least possible and the row is optimal
 * among all layouts, not only of a class.
 *
 * <p><b>Both selvedges.</b> Panels stand on one and hang from the other in turn. With v = width - h
 * the height by which the hanging ones lie above the standing ones, the legs meet over the heights
 * from v to h and each pair needs {@code P = max(b + g, b + t - (b - t) v / h + gR + gL)} for v at
 * most h, and b + g above that; g is the spacing between bases, gR and gL are the spacing measured
 * along the base across the legs. The first term is the row's own limit, the second is where both
 * legs touch. Alternating in this order is the documented class; within it neither term can be
 * undercut.
 */
public final class HemRows {

  private HemRows() {}

  /**
   * Lays panels with their hem on the reinforced selvedges of a strip.
   *
   * @param piece the panel with its hem edge
   * @param count how many to lay, 1 to {@link LayoutRequest#MOST_COPIES}
   * @param width of the strip, in metres
   * @param mostLength how long the strip may become, in metres; positive infinity for no limit
   * @param low true if the selvedge at y = 0 is reinforced
   * @param high true if the selvedge at y = width is reinforced
   * @param spacing between panels, in metres, 0 or more
   * @param margin of a panel from the edges on which its own hem does not lie, in metres, 0 or more
   * @return as many panels as fit, at most {@code count}; empty if none fits, the piece has no hem
   *     edge, is no triangle or trapezoid on it, or may not be turned as needed
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Optional<PanelRows.Arrangement> onStrip(
      Piece piece,
      int count,
      double width,
      double mostLength,
      boolean low,
      boolean high,
      double spacing,
      double margin) {
    Args.within("count", count, 1, LayoutRequest.MOST_COPIES);
    Args.positive("width", width, "m");
    Args.notNegative("spacing", spacing, "m");
    Args.notNegative("margin", margin, "m");
    Optional<PanelShape> onHem =
        piece.hem().flatMap(hem -> PanelShape.on(piece.outline(), hem.edge()));
    if (onHem.isEmpty()) {
      return Optional.empty();
    }
    PanelShape p = onHem.get();
    boolean up = low && PieceTurns.allows(piece, p.turn());
    boolean down = high && PieceTurns.allows(piece, p.turn() + Math.PI);
    // A panel keeps its margin from the far edge, be that reinforced or not: its hem is not on it.
    double room = width - margin;
    if (!(up || down) || p.h() > room * (1 + 1e-12)) {
      return Optional.empty();
    }
    List<Placement> out = new ArrayList<>();
    PanelStand stand = new PanelStand(p, false, false, false);
    double reach = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < Math.min(2, count); i++) {
      boolean hangs = down && (!up || i % 2 == 1);
      double x = start(p, i, up && down, hangs, width, spacing);
      least = Math.min(least, x + (hangs ? -Math.max(p.b(), p.l() + p.t()) : Math.min(0, p.l())));
    }
    for (int i = 0; i < count; i++) {
      boolean hangs = down && (!up || i % 2 == 1);
      double x = start(p, i, up && down, hangs, width, spacing) + margin - least;
      double right = x + (hangs ? -Math.min(0, p.l()) : Math.max(p.b(), p.l() + p.t()));
      if (right + margin > mostLength * (1 + 1e-12)) {
        break;
      }
      reach = Math.max(reach, right + margin);
      Placement at = stand.at(piece.id(), i + 1, x, hangs ? width : 0, hangs);
      out.add(new Placement(at.pieceId(), at.copy(), false, at.rotation(), at.shift(), true));
    }
    return out.isEmpty() ? Optional.empty() : Optional.of(new PanelRows.Arrangement(reach, out));
  }

  /** Where the drawn left base corner of panel i comes to lie, up to the row's own start. */
  private static double start(
      PanelShape p, int i, boolean both, boolean hangs, double width, double spacing) {
    double gap = p.baseGap(spacing);
    if (!both) {
      return i * (p.b() + gap);
    }
    int pairs = i / 2;
    double v = Math.min(width - p.h(), p.h());
    boolean apart = width - p.h() >= p.h() + spacing;
    double gR = p.legGap(true, spacing);
    double gL = p.legGap(false, spacing);
    double meet = p.b() + p.t() - (p.b() - p.t()) * v / p.h() + gR + gL;
    double pair = apart ? p.b() + gap : Math.max(p.b() + gap, meet);
    if (!hangs) {
      return pairs * pair;
    }
    // The hanging panel's top left end lies at height v; its base corner is l + t further right.
    double top = apart ? -Math.min(0, p.l()) : p.b() - (p.b() - p.l() - p.t()) * v / p.h() + gR;
    double corner =
        apart ? Math.max(p.b(), p.l() + p.t()) + Math.min(0, p.l()) : top + p.l() + p.t();
    return pairs * pair + corner;
  }
}
