package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.plane.Bounds;
import io.github.seamstead.geometry.plane.Outline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A request in the search's own terms: lengths divided by a unit of about the stock's width, each
 * piece about a reference point, orientations, regions and obstacles; and the way back.
 */
final class NestSetup {

  final Orientations turns = new Orientations();
  final Regions regions = new Regions();
  final List<Piece> pieces;
  final List<Bin> bins;
  final double unit;

  /** Kind of each copy, an index of {@link #pieces}. */
  final int[] kind;

  /** Which copy of its piece each is, from 1. */
  final int[] copy;

  private final double spacing;
  private final double margin;
  private final List<Boolean> mirrored = new ArrayList<>();
  private final List<Vector2D> reference = new ArrayList<>();
  private final List<double[]> obstacles = new ArrayList<>();
  private final Map<String, Integer> shapes = new HashMap<>();

  NestSetup(List<Piece> pieces, List<Bin> bins, double spacing, double margin) {
    this.pieces = pieces;
    this.bins = bins;
    this.spacing = spacing;
    this.margin = margin;
    double widest = 0;
    for (Bin bin : bins) {
      widest = Math.max(widest, bin.bounds().height());
    }
    unit = widest;
    int total = pieces.stream().mapToInt(Piece::count).sum();
    kind = new int[total];
    copy = new int[total];
    int at = 0;
    for (int k = 0; k < pieces.size(); k++) {
      for (int c = 1; c <= pieces.get(k).count(); c++) {
        kind[at] = k;
        copy[at++] = c;
      }
      addKind(pieces.get(k));
    }
    for (Bin bin : bins) {
      addObstacles(bin);
    }
    turns.close();
  }

  double margin() {
    return margin;
  }

  /** A nest of all copies on all stock, nothing placed yet. */
  Nest nest() {
    return nest(IntStream.range(0, kind.length).toArray(), b -> true);
  }

  /** A nest of some copies, in the order given, that may lie on some of the bins only. */
  Nest nest(int[] members, IntPredicate onBin) {
    int[] kinds = new int[members.length];
    for (int i = 0; i < kinds.length; i++) {
      kinds[i] = kind[members[i]];
    }
    return new Nest(turns, regions.on(onBin), kinds, obstacles.toArray(new double[0][]));
  }

  /** Where a placement's reference point lies in a region of its turn; empty if there is none. */
  Optional<double[]> pose(int kindIndex, int bin, Placement p) {
    for (int r : regions.ofKind(kindIndex)) {
      int o = regions.orientation[r];
      double off = Math.IEEEremainder(turns.angle[o] - p.rotation(), 2 * Math.PI);
      if (regions.bin[r] != bin
          || regions.line[r] != p.onReinforcedEdge()
          || mirrored.get(o) != p.mirrored()
          || Math.abs(off) > 1e-9) {
        continue;
      }
      Vector2D c = reference.get(o);
      double x = p.shift().getX() + turns.cos[o] * c.getX() - turns.sin[o] * c.getY();
      double y = p.shift().getY() + turns.sin[o] * c.getX() + turns.cos[o] * c.getY();
      return Optional.of(new double[] {r, (x + bins.get(bin).offset()) / unit, y / unit});
    }
    return Optional.empty();
  }

  private void addKind(Piece piece) {
    List<Integer> own = new ArrayList<>();
    boolean mustHem = piece.hem().isPresent() && piece.hem().get().required();
    boolean turnedOver = piece.mayMirror() || bins.stream().allMatch(b -> b.item().bothSidesGood());
    for (int side = 0; side < (turnedOver ? 2 : 1); side++) {
      boolean mirror = side == 1;
      Outline outline = mirror ? piece.outline().mirrored() : piece.outline();
      for (double angle : mustHem ? List.<Double>of() : PieceTurns.of(piece)) {
        int o = orientation(piece, outline, mirror, angle);
        for (int b = 0; b < bins.size(); b++) {
          addBox(own, o, b);
        }
      }
      if (piece.hem().isPresent()) {
        int edge = piece.hem().get().edge();
        int n = outline.size();
        int e = mirror ? Math.floorMod(n - 2 - edge, n) : edge;
        for (int b = 0; b < bins.size(); b++) {
          for (int stockEdge : bins.get(b).item().reinforcedEdges()) {
            addLine(own, piece, outline, mirror, e, b, stockEdge);
          }
        }
      }
    }
    regions.addKind(own.stream().mapToInt(Integer::intValue).toArray());
  }

  private int orientation(Piece piece, Outline outline, boolean mirror, double angle) {
    String key = piece.id() + (mirror ? "/over" : "/up");
    Integer known = shapes.get(key);
    Vector2D centre = outline.centroid();
    if (known == null) {
      double[] corners = Obstacles.corners(outline, centre, unit);
      known = turns.addShape(corners, ConvexParts.of(corners), spacing / unit, false);
      shapes.put(key, known);
    }
    for (int o = 0; o < turns.count; o++) {
      if (turns.shape[o] == known
          && Math.abs(Math.IEEEremainder(turns.angle[o] - angle, 2 * Math.PI)) < 1e-10) {
        return o;
      }
    }
    mirrored.add(mirror);
    reference.add(centre);
    return turns.addTurn(known, angle);
  }

  /** The box in which a piece stays within the stock's bounds less the margin. */
  private void addBox(List<Integer> own, int o, int b) {
    Bin bin = bins.get(b);
    Bounds box = bin.bounds();
    double x0 = (box.minX() + bin.offset() + margin) / unit - turns.minX[o];
    double x1 = (box.maxX() + bin.offset() - margin) / unit - turns.maxX[o];
    double y0 = (box.minY() + margin) / unit - turns.minY[o];
    double y1 = (box.maxY() - margin) / unit - turns.maxY[o];
    double tolerance = NoFit.TOUCH;
    if (x1 >= x0 - tolerance && y1 >= y0 - tolerance) {
      own.add(regions.add(o, b, x0, y0, Math.max(x0, x1), Math.max(y0, y1), false));
    }
  }

  /** The line along which a piece's hem lies on a reinforced edge. */
  private void addLine(
      List<Integer> own, Piece piece, Outline outline, boolean mirror, int e, int b, int edge) {
    Bin bin = bins.get(b);
    Vector2D s0 = bin.item().outline().vertex(edge);
    Vector2D s1 = bin.item().outline().vertex(edge + 1);
    Vector2D h0 = outline.vertex(e);
    Vector2D along = outline.vertex(e + 1).subtract(h0);
    Vector2D stockWay = s1.subtract(s0);
    double angle =
        Math.atan2(stockWay.getY(), stockWay.getX()) - Math.atan2(along.getY(), along.getX());
    angle -= 2 * Math.PI * Math.floor(angle / (2 * Math.PI));
    double spare = stockWay.norm() - along.norm();
    if (!PieceTurns.allows(piece, angle) || spare < -NoFit.TOUCH * unit) {
      return;
    }
    int o = orientation(piece, outline, mirror, angle);
    Vector2D toCentre = outline.centroid().subtract(h0);
    double c = Turns.cos(angle);
    double s = Turns.sin(angle);
    double rx = s0.getX() + bin.offset() + c * toCentre.getX() - s * toCentre.getY();
    double ry = s0.getY() + s * toCentre.getX() + c * toCentre.getY();
    Vector2D unitWay = stockWay.multiply(1 / stockWay.norm());
    double[] stretch = {0, Math.max(0, spare)};
    Bounds box = bin.bounds();
    // The other edges keep their margin; across the hem's own edge there is none.
    clip(
        stretch,
        rx / unit,
        unitWay.getX(),
        turns.minX[o],
        turns.maxX[o],
        (box.minX() + bin.offset()) / unit,
        (box.maxX() + bin.offset()) / unit);
    clip(
        stretch,
        ry / unit,
        unitWay.getY(),
        turns.minY[o],
        turns.maxY[o],
        box.minY() / unit,
        box.maxY() / unit);
    if (stretch[0] <= stretch[1]) {
      own.add(
          regions.add(
              o,
              b,
              (rx + stretch[0] * unitWay.getX()) / unit,
              (ry + stretch[0] * unitWay.getY()) / unit,
              (rx + stretch[1] * unitWay.getX()) / unit,
              (ry + stretch[1] * unitWay.getY()) / unit,
              true));
    }
  }

  private void clip(
      double[] stretch, double at, double way, double min, double max, double low, double high) {
    double tolerance = NoFit.TOUCH;
    if (Math.abs(way) < 1e-12) {
      if (at + min < low - tolerance || at + max > high + tolerance) {
        stretch[1] = Double.NEGATIVE_INFINITY;
      }
      return;
    }
    double m = margin / unit;
    double a = (low + m - min - at) / way * unit;
    double b = (high - m - max - at) / way * unit;
    stretch[0] = Math.max(stretch[0], Math.min(a, b));
    stretch[1] = Math.min(stretch[1], Math.max(a, b));
  }

  private void addObstacles(Bin bin) {
    List<double[]> shapesToAvoid = new ArrayList<>();
    for (Outline flaw : bin.item().flaws()) {
      shapesToAvoid.add(Obstacles.corners(flaw, Vector2D.ZERO, unit));
    }
    if (!bin.isRectangle()) {
      double[] sheet = Obstacles.corners(bin.item().outline(), Vector2D.ZERO, unit);
      shapesToAvoid.add(Obstacles.outside(sheet));
    }
    for (double[] corners : shapesToAvoid) {
      int shape = turns.addShape(corners, ConvexParts.of(corners), margin / unit, true);
      mirrored.add(false);
      reference.add(Vector2D.ZERO);
      obstacles.add(new double[] {turns.addTurn(shape, 0), bin.offset() / unit, 0});
    }
  }

  /** The placement of one copy in the coordinates of its stock. */
  Placement placement(int i, int region, double x, double y, boolean onHem) {
    int o = regions.orientation[region];
    double c = turns.cos[o];
    double s = turns.sin[o];
    Vector2D r = reference.get(o);
    double px = x * unit - (c * r.getX() - s * r.getY()) - bins.get(regions.bin[region]).offset();
    double py = y * unit - (s * r.getX() + c * r.getY());
    return new Placement(
        pieces.get(kind[i]).id(),
        copy[i],
        mirrored.get(o),
        turns.angle[o],
        Vector2D.of(px, py),
        onHem);
  }
}
