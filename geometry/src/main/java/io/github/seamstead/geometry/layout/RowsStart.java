package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.plane.Bounds;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Lays a request of one triangle or trapezoid in closed form on rectangular stock without flaws.
 */
final class RowsStart {

  private RowsStart() {}

  /** Fills the bins in order; empty if the request is not of that kind or nothing could be laid. */
  static Optional<Poses> lay(
      NestSetup setup, LayoutRequest request, int[] binOrder, BooleanSupplier ended) {
    // The search holds the spacing's circle to a polygon around it; corners that face one another
    // may have to stand further apart for it.
    double wider = request.spacing() / Math.cos(Math.PI / NoFitBuilder.SPACING_SIDES);
    return lay(setup, request, binOrder, request.spacing(), ended)
        .or(() -> lay(setup, request, binOrder, wider, ended));
  }

  private static Optional<Poses> lay(
      NestSetup setup,
      LayoutRequest request,
      int[] binOrder,
      double spacing,
      BooleanSupplier ended) {
    if (request.pieces().size() != 1) {
      return Optional.empty();
    }
    Piece piece = request.pieces().get(0);
    Poses poses = new Poses(piece.count());
    Arrays.fill(poses.region, Poses.PARKED);
    int done = 0;
    for (int b : binOrder) {
      if (ended.getAsBoolean()) {
        return Optional.empty();
      }
      Bin bin = setup.bins.get(b);
      if (done == piece.count() || !bin.isRectangle() || !bin.item().flaws().isEmpty()) {
        continue;
      }
      Optional<PanelRows.Arrangement> laid =
          onBin(piece, piece.count() - done, bin, request, spacing, ended);
      if (laid.isEmpty()) {
        continue;
      }
      for (Placement p : laid.get().placements()) {
        Placement there =
            new Placement(
                p.pieceId(),
                p.copy(),
                false,
                p.rotation(),
                p.shift().add(Vector2D.of(bin.bounds().minX(), bin.bounds().minY())),
                p.onReinforcedEdge());
        Optional<double[]> pose = setup.pose(0, b, there);
        if (pose.isEmpty()) {
          return Optional.empty();
        }
        poses.region[done] = (int) pose.get()[0];
        poses.x[done] = pose.get()[1];
        poses.y[done] = pose.get()[2];
        poses.angle[done] = pose.get()[3];
        done++;
      }
    }
    if (ended.getAsBoolean()) {
      return Optional.empty();
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
