package io.github.seamstead.examples.fuzz;

import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Holds the pieces of a plan to their cloth with a library that shares no code with the layout. */
final class LaidPieces {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private LaidPieces() {}

  static void check(LayoutPart part, Stock stock, List<String> wrong) {
    Set<String> copies = new HashSet<>();
    for (StockUse use : part.result().used()) {
      StockItem item =
          part.stock().stream().filter(s -> s.id().equals(use.stockId())).findFirst().orElseThrow();
      if (use.copy() < 1
          || use.copy() > item.count()
          || !copies.add(use.stockId() + "#" + use.copy())) {
        wrong.add("copy " + use.copy() + " of " + item.id() + " is not there or used twice");
      }
      List<Polygon> placed = new ArrayList<>();
      for (Placement p : use.placements()) {
        if (!copies.add(p.pieceId() + "/" + p.copy())) {
          wrong.add("laid twice: " + p);
        }
        placed.add(polygon(part.outlines().get(p.pieceId()), p));
      }
      onCloth(use, item, placed, wrong);
      apart(placed, stock.spacing(), size(item), wrong);
    }
  }

  private static void onCloth(
      StockUse use, StockItem item, List<Polygon> placed, List<String> wrong) {
    double size = size(item);
    Polygon sheet = polygon(item.outline());
    for (Polygon piece : placed) {
      double out = OverlayNG.overlay(piece, sheet, OverlayNG.DIFFERENCE, grid(size)).getArea();
      if (out > 1e-7 * size * size) {
        wrong.add("a piece leaves " + item.id() + " by " + out + " m2");
      }
      for (Outline flaw : item.flaws()) {
        if (overlap(piece, polygon(flaw), size) > 1e-7 * size * size) {
          wrong.add("a piece covers a flaw of " + item.id());
        }
      }
      double reach = piece.getEnvelopeInternal().getMaxX() - sheet.getEnvelopeInternal().getMinX();
      if (reach > use.usedLength() + 1e-7 * size) {
        wrong.add("a piece reaches " + reach + " m, told are " + use.usedLength());
      }
    }
  }

  private static void apart(List<Polygon> placed, double spacing, double size, List<String> wrong) {
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (overlap(placed.get(i), placed.get(j), size) > 1e-7 * size * size) {
          wrong.add("pieces overlap");
        }
        if (spacing > 0 && placed.get(i).distance(placed.get(j)) < spacing - 1e-7 * size) {
          wrong.add("pieces nearer than " + spacing + " m");
        }
      }
    }
  }

  private static double overlap(Polygon a, Polygon b, double size) {
    return a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())
        ? OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, grid(size)).getArea()
        : 0;
  }

  /** Exact noding on a fine grid: plain floating overlay can fail where edges nearly coincide. */
  private static PrecisionModel grid(double size) {
    return new PrecisionModel(1e10 / size);
  }

  private static double size(StockItem item) {
    return Math.max(item.outline().bounds().width(), item.outline().bounds().height());
  }

  private static Polygon polygon(Outline outline, Placement placement) {
    AffineTransform move = new AffineTransform();
    move.translate(placement.shift().getX(), placement.shift().getY());
    move.rotate(placement.rotation());
    move.scale(placement.mirrored() ? -1 : 1, 1);
    return polygon(outline, move);
  }

  private static Polygon polygon(Outline outline) {
    return polygon(outline, new AffineTransform());
  }

  private static Polygon polygon(Outline outline, AffineTransform move) {
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i <= outline.size(); i++) {
      double[] at = {outline.vertex(i).getX(), outline.vertex(i).getY()};
      move.transform(at, 0, at, 0, 1);
      ring[i] = new Coordinate(at[0], at[1]);
    }
    return FACTORY.createPolygon(ring);
  }
}
