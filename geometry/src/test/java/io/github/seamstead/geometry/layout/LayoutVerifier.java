package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Holds a layout to its rules with a geometry library that shares no code with the engine. */
public final class LayoutVerifier {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private LayoutVerifier() {}

  static void verify(LayoutRequest request, LayoutResult result) {
    Map<String, Piece> pieces = new HashMap<>();
    request.pieces().forEach(p -> pieces.put(p.id(), p));
    Map<String, Integer> seen = new HashMap<>();
    Set<String> copies = new HashSet<>();
    for (StockUse use : result.used()) {
      StockItem item =
          request.stock().stream().filter(s -> s.id().equals(use.stockId())).findFirst().get();
      assertThat(use.copy()).isBetween(1, item.count());
      assertThat(copies.add(use.stockId() + "#" + use.copy())).isTrue();
      List<Polygon> placed = new ArrayList<>();
      for (Placement p : use.placements()) {
        Piece piece = pieces.get(p.pieceId());
        assertTurn(piece, item, p);
        seen.merge(p.pieceId(), 1, Integer::sum);
        assertThat(copies.add(p.pieceId() + "/" + p.copy())).isTrue();
        Polygon polygon = polygon(p.place(piece.outline()));
        placed.add(polygon);
        double size = size(item);
        Polygon sheet = polygon(item.outline());
        assertThat(outside(polygon, sheet, size))
            .as("outside %s", p)
            .isLessThan(1e-8 * size * size);
        Set<Integer> bands = bands(piece, item, p, size);
        assertThat(!p.onReinforcedEdge() || !bands.isEmpty()).as("hem of %s", p).isTrue();
        for (int e = 0; e < item.outline().size() && request.edgeMargin() > 0; e++) {
          if (!bands.contains(e)) {
            assertThat(polygon.distance(edge(item.outline(), e)))
                .as("edge %s from %s", e, p)
                .isGreaterThan(request.edgeMargin() - 1e-8 * size);
          }
        }
        for (Outline flaw : item.flaws()) {
          assertThat(overlap(polygon, polygon(flaw), size)).isLessThan(1e-8 * size * size);
          if (request.edgeMargin() > 0) {
            assertThat(polygon.distance(polygon(flaw)))
                .isGreaterThan(request.edgeMargin() - 1e-8 * size);
          }
        }
        if (piece.hem().isPresent() && piece.hem().get().required()) {
          assertThat(bands).as("hem of %s", p).isNotEmpty();
        }
        double reach =
            polygon.getEnvelopeInternal().getMaxX() - sheet.getEnvelopeInternal().getMinX();
        assertThat(reach).isLessThan(use.usedLength() + 1e-8 * size);
      }
      assertApart(placed, request.spacing(), size(item));
    }
    for (Piece piece : request.pieces()) {
      int missing =
          result.unplaced().stream()
              .filter(u -> u.pieceId().equals(piece.id()))
              .mapToInt(Shortfall::count)
              .sum();
      assertThat(seen.getOrDefault(piece.id(), 0) + missing).isEqualTo(piece.count());
    }
    assertThat(result.lowerBound()).isLessThanOrEqualTo(result.objectiveValue());
    assertBounds(request, result, seen);
  }

  /** The bounds as they are reckoned: a result gives none above its own value. */
  private static void assertBounds(
      LayoutRequest request, LayoutResult result, Map<String, Integer> seen) {
    List<Piece> there =
        request.pieces().stream()
            .filter(piece -> seen.containsKey(piece.id()))
            .map(piece -> piece.withCount(seen.get(piece.id())))
            .toList();
    if (there.isEmpty()) {
      return;
    }
    List<Bin> bins = StockOrder.bins(request.stock(), 1_000);
    double spacing = request.spacing();
    double margin = request.edgeMargin();
    assertThat(GrownArea.items(there, bins, spacing, margin))
        .isLessThanOrEqualTo(result.used().size());
    assertThat(SectionBounds.items(there, bins, spacing, margin))
        .isLessThanOrEqualTo(result.used().size());
    assertThat(LayoutSums.lengthBound(request, result, Steps.none()))
        .isLessThanOrEqualTo(result.usedLength() * (1 + 1e-9));
  }

  /** The reinforced edges near both ends of the hem; what the layout says of it is not asked. */
  private static Set<Integer> bands(Piece piece, StockItem item, Placement p, double size) {
    Set<Integer> bands = new HashSet<>();
    if (piece.hem().isEmpty()) {
      return bands;
    }
    AffineTransform move = new AffineTransform();
    move.translate(p.shift().getX(), p.shift().getY());
    move.rotate(p.rotation());
    move.scale(p.mirrored() ? -1 : 1, 1);
    int h = piece.hem().get().edge();
    double[] ends = {
      piece.outline().vertex(h).getX(),
      piece.outline().vertex(h).getY(),
      piece.outline().vertex(h + 1).getX(),
      piece.outline().vertex(h + 1).getY()
    };
    move.transform(ends, 0, ends, 0, 2);
    for (int e : item.reinforcedEdges()) {
      LineString band = edge(item.outline(), e);
      double off =
          Math.max(
              band.distance(FACTORY.createPoint(new Coordinate(ends[0], ends[1]))),
              band.distance(FACTORY.createPoint(new Coordinate(ends[2], ends[3]))));
      if (off < 1e-8 * size) {
        bands.add(e);
      }
    }
    return bands;
  }

  private static LineString edge(Outline o, int e) {
    return FACTORY.createLineString(
        new Coordinate[] {
          new Coordinate(o.vertex(e).getX(), o.vertex(e).getY()),
          new Coordinate(o.vertex(e + 1).getX(), o.vertex(e + 1).getY())
        });
  }

  static void verify(StripProblem problem, StripResult result) {
    Map<String, Piece> pieces = new HashMap<>();
    problem.pieces().forEach(p -> pieces.put(p.id(), p));
    Map<String, Integer> seen = new HashMap<>();
    List<Polygon> placed = new ArrayList<>();
    double w = problem.width();
    for (Placement p : result.placements()) {
      Piece piece = pieces.get(p.pieceId());
      assertThat(PieceTurnsOracle.allowed(piece, p.mirrored(), p.rotation())).isTrue();
      assertThat(!p.mirrored() || piece.mayMirror()).isTrue();
      seen.merge(p.pieceId(), 1, Integer::sum);
      Polygon polygon = polygon(p.place(piece.outline()));
      placed.add(polygon);
      var box = polygon.getEnvelopeInternal();
      double m = problem.margin() - 1e-9 * w;
      assertThat(box.getMinX()).isGreaterThanOrEqualTo(m);
      assertThat(box.getMinY()).isGreaterThanOrEqualTo(m);
      assertThat(box.getMaxY()).isLessThanOrEqualTo(w - m);
      assertThat(box.getMaxX()).isLessThanOrEqualTo(result.length() - m);
    }
    problem.pieces().forEach(p -> assertThat(seen.get(p.id())).isEqualTo(p.count()));
    assertApart(placed, problem.spacing(), w);
    assertThat(result.lowerBound()).isLessThanOrEqualTo(result.length());
    assertThat(StripLayout.bound(problem, Steps.none()))
        .isLessThanOrEqualTo(result.length() * (1 + 1e-9));
  }

  static double worstOverlap(List<Polygon> placed, double size) {
    double worst = 0;
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        worst = Math.max(worst, overlap(placed.get(i), placed.get(j), size));
      }
    }
    return worst;
  }

  private static void assertApart(List<Polygon> placed, double spacing, double size) {
    assertThat(worstOverlap(placed, size)).isLessThan(1e-8 * size * size);
    for (int i = 0; i < placed.size() && spacing > 0; i++) {
      for (int j = 0; j < i; j++) {
        assertThat(placed.get(i).distance(placed.get(j))).isGreaterThan(spacing - 1e-8 * size);
      }
    }
  }

  private static void assertTurn(Piece piece, StockItem item, Placement p) {
    assertThat(PieceTurnsOracle.allowed(piece, p.mirrored(), p.rotation()))
        .as("turn of %s", p)
        .isTrue();
    assertThat(!p.mirrored() || piece.mayMirror() || item.bothSidesGood()).isTrue();
  }

  private static double size(StockItem item) {
    return Math.max(item.outline().bounds().width(), item.outline().bounds().height());
  }

  /** Exact noding on a fine grid: plain floating overlay can fail where edges nearly coincide. */
  public static double overlap(Polygon a, Polygon b, double size) {
    if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
      return 0;
    }
    Geometry common =
        OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, new PrecisionModel(1e11 / size));
    return common.getArea();
  }

  private static double outside(Polygon a, Polygon sheet, double size) {
    return OverlayNG.overlay(a, sheet, OverlayNG.DIFFERENCE, new PrecisionModel(1e11 / size))
        .getArea();
  }

  public static Polygon polygon(Outline o) {
    Coordinate[] c = new Coordinate[o.size() + 1];
    for (int i = 0; i <= o.size(); i++) {
      c[i] = new Coordinate(o.vertex(i).getX(), o.vertex(i).getY());
    }
    return FACTORY.createPolygon(c);
  }
}
