package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.ConvexParts;
import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.NoFit;
import io.github.seamstead.geometry.layout.internal.Obstacles;
import io.github.seamstead.geometry.layout.internal.Orientations;
import io.github.seamstead.geometry.layout.internal.Orientations.Clearance;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.layout.internal.Regions;
import io.github.seamstead.geometry.layout.internal.Turns;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A request in the search's own terms: lengths divided by a unit of about the stock's width, each
 * piece about a reference point, orientations, regions and obstacles; and the way back.
 */
final class NestSetup {

  final Orientations turns;
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
  private final Drawn drawn;

  /** Of each shape: whether it is a piece turned over, and its reference point as drawn. */
  private final List<Boolean> mirrored = new ArrayList<>();

  private final List<Vector2D> reference = new ArrayList<>();

  /** For each kind that may lie at any angle its shapes, as drawn and turned over; else none. */
  private final List<int[]> freeShapes = new ArrayList<>();

  private final List<double[]> startAngles = new ArrayList<>();
  private final List<double[]> obstacles = new ArrayList<>();
  private final Map<String, Integer> shapes = new HashMap<>();

  /** Which band each edge of a stock item is, where a piece on it needs a shape of its own. */
  private final Map<StockEdge, Integer> bands = new HashMap<>();

  private final Map<Turned, Integer> orientations = new HashMap<>();

  /** Obstacles of each stock item, which its copies share. */
  private final Map<String, int[]> obstaclesOf = new HashMap<>();

  /**
   * What does not depend on the stock.
   *
   * @param built no-fit regions
   * @param parts the convex parts of the shapes, by name
   */
  record Drawn(Map<Orientations.Key, NoFit> built, Map<String, List<double[]>> parts) {
    Drawn() {
      this(new ConcurrentHashMap<>(), new ConcurrentHashMap<>());
    }

    List<double[]> parts(String name, double[] corners) {
      return parts.computeIfAbsent(name, n -> ConvexParts.of(corners));
    }
  }

  private record StockEdge(String stockId, int edge) {}

  private record Turned(int shape, long angle) {}

  NestSetup(List<Piece> pieces, List<Bin> bins, double spacing, double margin) {
    this(pieces, bins, spacing, margin, widest(bins), new Drawn());
  }

  /**
   * Sets a request up.
   *
   * @param unit about the stock's width, in metres
   * @param drawn what setups of the same pieces, distances and unit share
   */
  NestSetup(
      List<Piece> pieces, List<Bin> bins, double spacing, double margin, double unit, Drawn drawn) {
    this.drawn = drawn;
    turns = new Orientations(drawn.built);
    this.unit = unit;
    this.pieces = pieces;
    this.bins = bins;
    this.spacing = spacing;
    this.margin = margin;
    int total = pieces.stream().mapToInt(Piece::count).sum();
    kind = new int[total];
    copy = new int[total];
    if (margin > 0 && pieces.stream().anyMatch(p -> p.hem().isPresent())) {
      nameBands();
    }
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

  private static double widest(List<Bin> bins) {
    return bins.stream().mapToDouble(bin -> bin.bounds().height()).max().orElse(0);
  }

  double spacing() {
    return spacing;
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
    return new Nest(
        turns, regions.on(onBin), kinds, freeShapes, obstacles.toArray(new double[0][]));
  }

  /** The shape with which a kind lies in a region. */
  private int shapeIn(int kindIndex, int r) {
    int o = regions.orientation[r];
    return o >= 0 ? turns.shape[o] : freeShapes.get(kindIndex)[Regions.ANY - o];
  }

  private double angleIn(int r, double angle) {
    int o = regions.orientation[r];
    return o >= 0 ? turns.angle[o] : angle;
  }

  /** Angles from which a kind that may lie at any of them starts; 0 alone for another. */
  double[] startAngles(int kindIndex) {
    return startAngles.get(kindIndex);
  }

  /** How far a copy reaches beyond its reference point along x. */
  double reachX(int i, int r, double angle) {
    int o = regions.orientation[r];
    return o >= 0 ? turns.maxX[o] : turns.greatestX(shapeIn(kind[i], r), angle);
  }

  /** Region, place and turn of a placement in the search's terms; empty if no region allows it. */
  Optional<double[]> pose(int kindIndex, int bin, Placement p) {
    for (int r : regions.ofKind(kindIndex)) {
      double angle = angleIn(r, p.rotation());
      int s = shapeIn(kindIndex, r);
      if (regions.bin[r] != bin
          || regions.line[r] != p.onReinforcedEdge()
          || mirrored.get(s) != p.mirrored()
          || Math.abs(Math.IEEEremainder(angle - p.rotation(), 2 * Math.PI)) > 1e-9) {
        continue;
      }
      Vector2D c = reference.get(s);
      double cos = Turns.cos(angle);
      double sin = Turns.sin(angle);
      double x = p.shift().getX() + cos * c.getX() - sin * c.getY();
      double y = p.shift().getY() + sin * c.getX() + cos * c.getY();
      return Optional.of(new double[] {r, (x + bins.get(bin).offset()) / unit, y / unit, angle});
    }
    return Optional.empty();
  }

  /**
   * Names the bands of odd-shaped stock. On a rectangle the rooms keep the margin; elsewhere an
   * obstacle does, and must let a piece come up to the band on which it lies.
   */
  private void nameBands() {
    for (Bin bin : bins) {
      if (!bin.isRectangle()) {
        for (int edge : bin.item().reinforcedEdges()) {
          bands.computeIfAbsent(new StockEdge(bin.item().id(), edge), e -> bands.size());
        }
      }
    }
  }

  private void addKind(Piece piece) {
    List<Integer> own = new ArrayList<>();
    List<Integer> free = new ArrayList<>();
    double[] starts = new double[1];
    boolean mustHem = piece.hem().isPresent() && piece.hem().get().required();
    boolean turnedOver = piece.mayMirror() || bins.stream().anyMatch(b -> b.item().bothSidesGood());
    for (int side = 0; side < (turnedOver ? 2 : 1); side++) {
      boolean mirror = side == 1;
      Outline outline = mirror ? piece.outline().mirrored() : piece.outline();
      if (!mustHem && PieceTurns.isFree(piece)) {
        int s = shape(piece, outline, mirror, Clearance.NO_BAND);
        StartAngles angles = new StartAngles(piece, mirror, turns.corners(s), this::fits);
        for (int b = 0; b < bins.size(); b++) {
          if (mayLie(piece, mirror, b) && angles.fitting(b).isPresent()) {
            addRoom(own, Regions.ANY - side, b);
          }
        }
        free.add(s);
        starts = mirror ? starts : angles.few(bins.size());
      } else if (!mustHem) {
        for (double angle : PieceTurns.of(piece, mirror)) {
          int o = orientation(shape(piece, outline, mirror, Clearance.NO_BAND), angle);
          for (int b = 0; b < bins.size(); b++) {
            if (mayLie(piece, mirror, b)
                && fits(turns.maxX[o] - turns.minX[o], turns.maxY[o] - turns.minY[o], b)) {
              addRoom(own, o, b);
            }
          }
        }
      }
      if (piece.hem().isPresent()) {
        int edge = piece.hem().get().edge();
        int n = outline.size();
        int e = mirror ? Math.floorMod(n - 2 - edge, n) : edge;
        for (int b = 0; b < bins.size(); b++) {
          if (!mayLie(piece, mirror, b)) {
            continue;
          }
          for (int stockEdge : bins.get(b).item().reinforcedEdges()) {
            addLine(own, piece, outline, mirror, e, b, stockEdge);
          }
        }
      }
    }
    regions.addKind(own.stream().mapToInt(Integer::intValue).toArray());
    freeShapes.add(free.stream().mapToInt(Integer::intValue).toArray());
    startAngles.add(starts);
  }

  private boolean mayLie(Piece piece, boolean mirror, int b) {
    return !mirror || piece.mayMirror() || bins.get(b).item().bothSidesGood();
  }

  private int shape(Piece piece, Outline outline, boolean mirror, int band) {
    String key = piece.id() + (mirror ? "/over" : "/up") + "/" + band;
    Integer known = shapes.get(key);
    Vector2D centre = outline.centroid();
    if (known == null) {
      double[] corners = Obstacles.corners(outline, centre, unit);
      Clearance clearance = new Clearance(spacing / unit, spacing / unit, band);
      String name = nameOf(piece, mirror, band);
      known = turns.addShape(name, corners, drawn.parts(name, corners), clearance, false);
      shapes.put(key, known);
      mirrored.add(mirror);
      reference.add(centre);
    }
    return known;
  }

  /** What a shape is called in any setup; each numbers its bands for itself. */
  private String nameOf(Piece piece, boolean mirror, int band) {
    String on = "";
    for (Map.Entry<StockEdge, Integer> each : bands.entrySet()) {
      on = each.getValue() == band ? each.getKey().stockId() + '/' + each.getKey().edge() : on;
    }
    return (mirror ? "over/" : "up/") + piece.id() + '/' + on;
  }

  private int orientation(int ofShape, double angle) {
    double full = 2 * Math.PI;
    // Angles nearer than a billionth are one; rounded and turned to one full turn they meet here.
    long steps = Math.round((angle - full * Math.floor(angle / full)) * 1e9);
    long turn = steps % Math.round(full * 1e9);
    return orientations.computeIfAbsent(
        new Turned(ofShape, turn), t -> turns.addTurn(ofShape, angle));
  }

  private boolean fits(double width, double height, int b) {
    Bounds box = bins.get(b).bounds();
    return width <= (box.width() - 2 * margin) / unit + NoFit.TOUCH
        && height <= (box.height() - 2 * margin) / unit + NoFit.TOUCH;
  }

  /** The stock's bounds less the margin. */
  private void addRoom(List<Integer> own, int o, int b) {
    Bin bin = bins.get(b);
    Bounds box = bin.bounds();
    own.add(
        regions.add(
            o,
            b,
            (box.minX() + bin.offset() + margin) / unit,
            (box.minY() + margin) / unit,
            (box.maxX() + bin.offset() - margin) / unit,
            (box.maxY() - margin) / unit,
            false));
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
        StrictMath.atan2(stockWay.getY(), stockWay.getX())
            - StrictMath.atan2(along.getY(), along.getX());
    angle -= 2 * Math.PI * Math.floor(angle / (2 * Math.PI));
    double spare = stockWay.norm() - along.norm();
    if (!PieceTurns.allows(piece, mirror, angle) || spare < -NoFit.TOUCH * unit) {
      return;
    }
    int band = bands.getOrDefault(new StockEdge(bin.item().id(), edge), Clearance.NO_BAND);
    int o = orientation(shape(piece, outline, mirror, band), angle);
    double[] line = HemLine.of(bin, edge, outline, e, turns, o, margin, unit);
    if (line.length > 0) {
      own.add(regions.add(o, b, line[0], line[1], line[2], line[3], true));
    }
  }

  private void addObstacles(Bin bin) {
    int[] turned = obstaclesOf.computeIfAbsent(bin.item().id(), id -> itsObstacles(bin));
    for (int o : turned) {
      obstacles.add(new double[] {o, bin.offset() / unit, 0});
    }
  }

  private int[] itsObstacles(Bin bin) {
    List<Integer> turned = new ArrayList<>();
    for (Outline flaw : bin.item().flaws()) {
      double[] corners = Obstacles.corners(flaw, Vector2D.ZERO, unit);
      turned.add(
          obstacle(
              bin, turned.size(), corners, ConvexParts.of(corners), Clearance.of(margin / unit)));
    }
    if (bin.isRectangle()) {
      return turned.stream().mapToInt(Integer::intValue).toArray();
    }
    double[] sheet = Obstacles.corners(bin.item().outline(), Vector2D.ZERO, unit);
    double[] outside = Obstacles.outside(sheet);
    boolean banded = !bands.isEmpty() && !bin.item().reinforcedEdges().isEmpty();
    // From a piece on a band the edges keep the margin one by one, all but the band's own.
    Clearance whole = new Clearance(margin / unit, banded ? 0 : margin / unit, Clearance.NO_BAND);
    turned.add(obstacle(bin, turned.size(), outside, ConvexParts.of(outside), whole));
    for (int e = 0; banded && e < sheet.length / 2; e++) {
      int next = (2 * e + 2) % sheet.length;
      double[] edge = {sheet[2 * e], sheet[2 * e + 1], sheet[next], sheet[next + 1]};
      int band = bands.getOrDefault(new StockEdge(bin.item().id(), e), Clearance.NO_BAND);
      turned.add(
          obstacle(bin, turned.size(), edge, List.of(edge), new Clearance(0, margin / unit, band)));
    }
    return turned.stream().mapToInt(Integer::intValue).toArray();
  }

  private int obstacle(
      Bin bin, int number, double[] corners, List<double[]> parts, Clearance clearance) {
    String name = "stock/" + number + '/' + bin.item().id();
    int shape = turns.addShape(name, corners, parts, clearance, true);
    mirrored.add(false);
    reference.add(Vector2D.ZERO);
    return turns.addTurn(shape, 0);
  }

  /** The placement of one copy in the coordinates of its stock; a hem is marked by {@link Hems}. */
  Placement placement(int i, Poses poses) {
    int region = poses.region[i];
    double angle = angleIn(region, poses.angle[i]);
    angle -= 2 * Math.PI * Math.floor(angle / (2 * Math.PI));
    double c = Turns.cos(angle);
    double s = Turns.sin(angle);
    int shape = shapeIn(kind[i], region);
    Vector2D r = reference.get(shape);
    double px =
        poses.x[i] * unit - (c * r.getX() - s * r.getY()) - bins.get(regions.bin[region]).offset();
    double py = poses.y[i] * unit - (s * r.getX() + c * r.getY());
    return new Placement(
        pieces.get(kind[i]).id(), copy[i], mirrored.get(shape), angle, Vector2D.of(px, py), false);
  }
}
