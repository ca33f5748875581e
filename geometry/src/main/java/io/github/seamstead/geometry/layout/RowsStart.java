package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.NoFitBuilder;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.shared.plane.Bounds;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Lays a request of one triangle or trapezoid in closed form on rectangular stock without flaws.
 */
final class RowsStart {

  private RowsStart() {}

  /**
   * Fills an item; empty if the request is not of that kind or nothing could be laid.
   *
   * @param setup the request on the item alone
   * @param left how many are left to cut
   */
  static Optional<Poses> lay(
      NestSetup setup, LayoutRequest request, Bin bin, int[] left, BooleanSupplier ended) {
    if (left.length != 1 || left[0] == 0 || !bin.isRectangle() || !bin.item().flaws().isEmpty()) {
      return Optional.empty();
    }
    // The search holds the spacing's circle to a polygon around it; corners that face one another
    // may have to stand further apart for it.
    double wider = request.spacing() / StrictMath.cos(Math.PI / NoFitBuilder.SPACING_SIDES);
    return lay(setup, request, bin, left[0], request.spacing(), ended)
        .or(() -> lay(setup, request, bin, left[0], wider, ended));
  }

  private static Optional<Poses> lay(
      NestSetup setup,
      LayoutRequest request,
      Bin bin,
      int count,
      double spacing,
      BooleanSupplier ended) {
    if (ended.getAsBoolean()) {
      return Optional.empty();
    }
    Optional<PanelRows.Arrangement> laid =
        onBin(setup.pieces.get(0), count, bin, request, spacing, ended);
    if (laid.isEmpty() || ended.getAsBoolean()) {
      return Optional.empty();
    }
    Poses poses = new Poses(setup.kind.length);
    Arrays.fill(poses.region, Poses.PARKED);
    int done = 0;
    for (Placement p : laid.get().placements()) {
      Placement there =
          new Placement(
              p.pieceId(),
              p.copy(),
              false,
              p.rotation(),
              p.shift().add(Vector2D.of(bin.bounds().minX(), bin.bounds().minY())),
              p.onReinforcedEdge());
      Optional<double[]> pose = setup.pose(0, 0, there);
      if (pose.isEmpty()) {
        return Optional.empty();
      }
      poses.region[done] = (int) pose.get()[0];
      poses.x[done] = pose.get()[1];
      poses.y[done] = pose.get()[2];
      poses.angle[done] = pose.get()[3];
      done++;
    }
    Nest nest = setup.nest();
    nest.load(poses);
    return done > 0 && nest.isApart() ? Optional.of(poses) : Optional.empty();
  }

  private static Optional<PanelRows.Arrangement> onBin(
      Piece piece,
      int count,
      Bin bin,
      LayoutRequest request,
      double spacing,
      BooleanSupplier ended) {
    Bounds box = bin.bounds();
    double margin = request.edgeMargin();
    if (piece.hem().map(HemEdge::required).orElse(false)) {
      boolean low = false;
      boolean high = false;
      for (int e : bin.item().reinforcedEdges()) {
        double y0 = bin.item().outline().vertex(e).getY();
        double y1 = bin.item().outline().vertex(e + 1).getY();
        low |= y0 == box.minY() && y1 == box.minY();
        high |= y0 == box.maxY() && y1 == box.maxY();
      }
      return HemRows.onStrip(piece, count, box.height(), box.width(), low, high, spacing, margin);
    }
    return PanelRows.onStrip(piece, count, box.height(), box.width(), spacing, margin, ended);
  }
}
