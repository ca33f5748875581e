package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Holds a layout to its request, from the two alone: plain and slow geometry that shares nothing
 * with the search. {@link CuttingLayout} and {@link StripLayout} give out no layout in which it
 * finds a fault.
 *
 * <p>It checks that every piece lies on its stock, keeps the margin from its edges and flaws (but
 * from the band on which its hem lies) and the spacing from other pieces; that it is turned, runs
 * along the grain and is cut turned over only as allowed; that a hem that must lie on a band does;
 * and that no copy comes twice or is lost.
 */
public final class LayoutCheck {

  /** What still counts as touching, in parts of the stock's size. */
  private static final double TOUCH = 1e-8;

  private static final double SAME_ANGLE = 1e-8;

  private static final String STRIP = "strip";

  private final LayoutRequest request;
  private final Map<String, Piece> pieces = new HashMap<>();
  private final Map<String, StockItem> stock = new HashMap<>();
  private final Map<String, Integer> placed = new HashMap<>();
  private final Set<String> copies = new HashSet<>();
  private final List<String> faults = new ArrayList<>();
  private double touch;

  /** A piece in its place. */
  private record Lying(String name, Outline outline, Bounds box) {}

  private LayoutCheck(LayoutRequest request) {
    this.request = request;
    request.pieces().forEach(p -> pieces.put(p.id(), p));
    request.stock().forEach(s -> stock.put(s.id(), s));
  }

  /**
   * Lists what is wrong with a layout. Lengths count as kept within a hundred millionth of the
   * stock's size, angles within 1e-8 rad.
   *
   * @param request what was asked for
   * @param result the layout
   * @return a line for each fault; empty for a layout that holds. O(n log n) for n pieces of few
   *     corners with few neighbours
   */
  public static List<String> faults(LayoutRequest request, LayoutResult result) {
    LayoutCheck check = new LayoutCheck(request);
    result.used().forEach(check::use);
    check.count(result.unplaced());
    return List.copyOf(check.faults);
  }

  /**
   * Lists what is wrong with a layout on a strip, as {@link #faults(LayoutRequest, LayoutResult)}
   * does: the strip is then a roll of the length that the layout says it uses.
   *
   * @param problem what was asked for
   * @param result the layout
   * @return a line for each fault; empty for a layout that holds
   */
  public static List<String> faults(StripProblem problem, StripResult result) {
    List<Piece> pieces = problem.pieces().stream().map(Piece::withoutHem).toList();
    Roll strip = Roll.of(STRIP, problem.width(), result.length());
    LayoutCheck check =
        new LayoutCheck(
            new LayoutRequest(
                pieces,
                List.of(strip),
                problem.spacing(),
                problem.margin(),
                Objective.LEAST_LENGTH));
    check.use(new StockUse(STRIP, 1, result.placements(), result.length(), 0, List.of()));
    check.count(List.of());
    return List.copyOf(check.faults);
  }

  /** Throws if there is a fault: an error of the program, never the caller's. */
  static void require(LayoutRequest request, LayoutResult result) {
    require(faults(request, result));
  }

  /** Throws if there is a fault: an error of the program, never the caller's. */
  static void require(StripProblem problem, StripResult result) {
    require(faults(problem, result));
  }

  private static void require(List<String> faults) {
    if (!faults.isEmpty()) {
      throw new IllegalStateException(
          "layout: "
              + faults.size()
              + (faults.size() == 1 ? " fault, " : " faults, first ")
              + faults.get(0));
    }
  }

  private void fault(String where, String what) {
    faults.add(where + ": " + what);
  }

  private void use(StockUse use) {
    String name = "stock " + use.stockId() + " number " + use.copy();
    StockItem item = stock.get(use.stockId());
    if (item == null) {
      fault(name, "not asked for");
      return;
    }
    if (use.copy() > item.count() || !copies.add("stock " + use.stockId() + '/' + use.copy())) {
      fault(name, "used twice, or there are not so many");
    }
    Outline sheet = item.outline();
    touch = TOUCH * size(sheet.bounds());
    List<Lying> lying = new ArrayList<>();
    for (Placement p : use.placements()) {
      String piece = name + ", piece " + p.pieceId() + " number " + p.copy();
      Piece asked = pieces.get(p.pieceId());
      if (asked == null) {
        fault(piece, "not asked for");
        continue;
      }
      if (p.copy() > asked.count() || !copies.add("piece " + p.pieceId() + '/' + p.copy())) {
        fault(piece, "laid twice, or there are not so many");
      }
      placed.merge(p.pieceId(), 1, Integer::sum);
      turn(piece, asked, item, p);
      Outline outline = new Outline(moved(asked.outline().vertices(), p));
      onStock(piece, asked, item, p, outline);
      reach(piece, use, sheet, outline);
      lying.add(new Lying(piece, outline, outline.bounds()));
    }
    apart(lying);
  }

  /** The search's own grain of length goes with the widest stock of the request. */
  private double size(Bounds sheet) {
    double size = Math.max(sheet.width(), sheet.height());
    for (StockItem item : request.stock()) {
      size = Math.max(size, item.outline().bounds().height());
    }
    return size;
  }

  private static List<Vector2D> moved(List<Vector2D> drawn, Placement p) {
    double c = StrictMath.cos(p.rotation());
    double s = StrictMath.sin(p.rotation());
    List<Vector2D> moved = new ArrayList<>();
    for (Vector2D v : drawn) {
      double x = p.mirrored() ? -v.getX() : v.getX();
      moved.add(Vector2D.of(c * x - s * v.getY(), s * x + c * v.getY()).add(p.shift()));
    }
    return moved;
  }

  private void turn(String name, Piece piece, StockItem item, Placement p) {
    if (p.mirrored() && !piece.mayMirror() && !item.bothSidesGood()) {
      fault(name, "turned over, which is not allowed");
    }
    boolean allowed = piece.rotations().any();
    for (double angle : piece.rotations().angles()) {
      allowed |= Math.abs(Math.IEEEremainder(angle - p.rotation(), 2 * Math.PI)) < SAME_ANGLE;
    }
    if (!allowed) {
      fault(name, "turned as it may not be");
    }
    if (piece.grain().isPresent()) {
      Grain grain = piece.grain().get();
      Vector2D drawn = Vector2D.of(StrictMath.cos(grain.angle()), StrictMath.sin(grain.angle()));
      Vector2D ends = moved(List.of(drawn), p).get(0).subtract(p.shift());
      if (Math.abs(ends.getY()) > SAME_ANGLE || (grain.oneWay() && ends.getX() < 0)) {
        fault(name, "its grain does not run along the stock");
      }
    }
  }

  private void onStock(String name, Piece piece, StockItem item, Placement p, Outline outline) {
    Outline sheet = item.outline();
    if (Intrusion.outside(outline, sheet) > touch) {
      fault(name, "sticks out of the stock");
    }
    double margin = request.edgeMargin();
    Set<Integer> bands = bands(piece, item, p);
    for (int e = 0; e < sheet.size() && margin > 0; e++) {
      double off = outline.distanceToSegment(sheet.vertex(e), sheet.vertex(e + 1));
      if (!bands.contains(e) && off < margin - touch) {
        fault(name, metres(off) + " from edge " + e + ", nearer than the margin");
      }
    }
    for (Outline flaw : item.flaws()) {
      if (Intrusion.depth(outline, flaw) > touch
          || (margin > 0 && distance(outline, flaw) < margin - touch)) {
        fault(name, "covers a flaw or its margin");
      }
    }
    if (p.onReinforcedEdge() && bands.isEmpty()) {
      fault(name, "its hem is not on a reinforced edge as told");
    }
    if (bands.isEmpty() && piece.hem().map(HemEdge::required).orElse(false)) {
      fault(name, "its hem is not on a reinforced edge as it must be");
    }
  }

  /** The reinforced edges along which the piece's hem lies. */
  private Set<Integer> bands(Piece piece, StockItem item, Placement p) {
    Set<Integer> bands = new HashSet<>();
    if (piece.hem().isEmpty()) {
      return bands;
    }
    int edge = piece.hem().get().edge();
    List<Vector2D> ends =
        moved(List.of(piece.outline().vertex(edge), piece.outline().vertex(edge + 1)), p);
    for (int e : item.reinforcedEdges()) {
      Vector2D from = item.outline().vertex(e);
      Vector2D to = item.outline().vertex(e + 1);
      if (ends.stream().allMatch(end -> lies(end, from, to))) {
        bands.add(e);
      }
    }
    return bands;
  }

  private boolean lies(Vector2D point, Vector2D from, Vector2D to) {
    double length = from.distance(to);
    Vector2D along = to.subtract(from).multiply(1 / length);
    double at = point.subtract(from).dot(along);
    double off = along.signedArea(point.subtract(from));
    return Math.abs(off) <= touch && at >= -touch && at <= length + touch;
  }

  private void reach(String name, StockUse use, Outline sheet, Outline outline) {
    double reach = outline.bounds().maxX() - sheet.bounds().minX();
    if (reach > use.usedLength() + touch) {
      fault(name, "reaches " + metres(reach) + ", beyond the used length");
    }
  }

  /** Pieces sorted by their left ends, each against those that begin before it ends. */
  private void apart(List<Lying> lying) {
    double spacing = request.spacing();
    List<Lying> sorted =
        lying.stream().sorted(Comparator.comparingDouble(l -> l.box().minX())).toList();
    for (int i = 0; i < sorted.size(); i++) {
      Lying a = sorted.get(i);
      for (int j = i + 1; j < sorted.size(); j++) {
        Lying b = sorted.get(j);
        if (b.box().minX() >= a.box().maxX() + spacing) {
          break;
        }
        if (b.box().minY() >= a.box().maxY() + spacing
            || a.box().minY() >= b.box().maxY() + spacing) {
          continue;
        }
        if (Intrusion.depth(a.outline(), b.outline()) > touch) {
          fault(a.name(), "overlaps " + b.name());
        } else if (spacing > 0 && distance(a.outline(), b.outline()) < spacing - touch) {
          fault(a.name(), "nearer than the spacing to " + b.name());
        }
      }
    }
  }

  private static double distance(Outline a, Outline b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < a.size(); i++) {
      least = Math.min(least, b.distanceToSegment(a.vertex(i), a.vertex(i + 1)));
    }
    return least;
  }

  private void count(List<Shortfall> unplaced) {
    Map<String, Integer> missing = new HashMap<>();
    for (Shortfall lack : unplaced) {
      missing.merge(lack.pieceId(), lack.count(), Integer::sum);
    }
    for (Piece piece : request.pieces()) {
      int told = placed.getOrDefault(piece.id(), 0) + missing.getOrDefault(piece.id(), 0);
      if (told != piece.count()) {
        fault("piece " + piece.id(), told + " laid or left over of " + piece.count());
      }
    }
  }

  private static String metres(double length) {
    return Numbers.significant(length, 4) + " m";
  }
}
