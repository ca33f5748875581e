package io.github.seamstead.geometry.layout.internal;

import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Every shape in every turn that it may take, with the no-fit region of each pair. Regions depend
 * on the two shapes and their relative turn alone, so they are built once for each of those, on
 * first use. Safe for use by several threads: a region is immutable, and whoever builds it builds
 * the same.
 *
 * <p>{@link #own} gives a copy for one thread with further orientations that may be turned to any
 * angle. Pairs with one of those, and all pairs where there are too many to build regions for, are
 * told apart from their parts ({@link Solid}).
 */
public final class Orientations {

  /** Building a region takes some tenths of a millisecond, so that these take seconds. */
  private static final int MOST_REGIONS = 60_000;

  private static final int MOST_PAIRS = 4_000_000;

  private final List<List<double[]>> shapes;
  private final List<double[]> outlines;
  private final List<Solid> drawn;
  private final List<Clearance> clearances;
  private final List<Boolean> fixed;
  private final List<String> names;
  private final Map<Key, NoFit> built;

  /** The greatest distance that any pair keeps. */
  public double pad;

  int count;
  public int[] shape = new int[8];
  public double[] angle = new double[8];
  public double[] cos = new double[8];
  public double[] sin = new double[8];
  public double[] minX = new double[8];
  public double[] maxX = new double[8];
  public double[] minY = new double[8];
  public double[] maxY = new double[8];
  private @Nullable NoFit[] table = new NoFit[0];
  private @Nullable Solid[] solids = new Solid[0];

  /** Orientations from this index on may be turned. */
  private int given;

  private boolean many;

  /**
   * What a region depends on beside its unit and distances.
   *
   * @param a the name of one shape
   * @param b the name of the other
   * @param relative the turn of the second against the first, in steps of 1e-10 rad
   */
  public record Key(String a, String b, long relative) {}

  /**
   * The distance that a shape keeps from others. A piece whose hem lies on a band of the stock is a
   * shape of its own, since it keeps none from that band.
   *
   * @param usual an obstacle's from pieces, a piece's from other pieces
   * @param fromHemmed an obstacle's from pieces that lie on a band
   * @param band of a piece on a band and of the obstacle along that band, whose distance from one
   *     another is 0; {@link #NO_BAND} for others
   */
  public record Clearance(double usual, double fromHemmed, int band) {

    public static final int NO_BAND = -1;

    public static Clearance of(double distance) {
      return new Clearance(distance, distance, NO_BAND);
    }

    double from(Clearance piece) {
      if (piece.band == NO_BAND) {
        return usual;
      }
      return piece.band == band ? 0 : fromHemmed;
    }
  }

  /**
   * Starts without shapes.
   *
   * @param built regions that others with the same unit, distances and names have built or will
   */
  public Orientations(Map<Key, NoFit> built) {
    names = new ArrayList<>();
    shapes = new ArrayList<>();
    outlines = new ArrayList<>();
    drawn = new ArrayList<>();
    clearances = new ArrayList<>();
    fixed = new ArrayList<>();
    this.built = built;
  }

  private Orientations(Orientations of, int[] shapeOfFree) {
    shapes = of.shapes;
    outlines = of.outlines;
    drawn = of.drawn;
    clearances = of.clearances;
    fixed = of.fixed;
    names = of.names;
    built = of.built;
    table = of.table;
    given = of.given;
    many = of.many;
    pad = of.pad;
    count = of.count;
    int all = count + shapeOfFree.length;
    shape = Arrays.copyOf(of.shape, all);
    angle = Arrays.copyOf(of.angle, all);
    cos = Arrays.copyOf(of.cos, all);
    sin = Arrays.copyOf(of.sin, all);
    minX = Arrays.copyOf(of.minX, all);
    maxX = Arrays.copyOf(of.maxX, all);
    minY = Arrays.copyOf(of.minY, all);
    maxY = Arrays.copyOf(of.maxY, all);
    solids = new Solid[all];
    for (int s : shapeOfFree) {
      int o = count++;
      shape[o] = s;
      turn(o, 0);
    }
  }

  /**
   * A copy for one thread.
   *
   * @param shapeOfFree the shape of each further orientation, which may be turned to any angle
   */
  Orientations own(int[] shapeOfFree) {
    return new Orientations(this, shapeOfFree);
  }

  /**
   * Adds a shape.
   *
   * @param name what it is called wherever regions are shared
   * @param outline corners about the reference point
   * @param parts the convex parts of what it covers
   * @param clearance the distance it keeps from others; an obstacle's counts before a piece's
   * @param obstacle true for what no piece may cover
   * @return its index
   */
  public int addShape(
      String name, double[] outline, List<double[]> parts, Clearance clearance, boolean obstacle) {
    names.add(name);
    fixed.add(obstacle);
    pad = Math.max(pad, Math.max(clearance.usual(), clearance.fromHemmed()));
    outlines.add(outline);
    shapes.add(parts);
    drawn.add(new Solid(parts));
    clearances.add(clearance);
    return shapes.size() - 1;
  }

  /** Adds a turn of a shape and gives its index. All must be added before the first use. */
  public int addTurn(int shapeIndex, double turn) {
    if (count == shape.length) {
      int more = 2 * count;
      shape = Arrays.copyOf(shape, more);
      angle = Arrays.copyOf(angle, more);
      cos = Arrays.copyOf(cos, more);
      sin = Arrays.copyOf(sin, more);
      minX = Arrays.copyOf(minX, more);
      maxX = Arrays.copyOf(maxX, more);
      minY = Arrays.copyOf(minY, more);
      maxY = Arrays.copyOf(maxY, more);
    }
    int o = count++;
    shape[o] = shapeIndex;
    setAngle(o, turn);
    return o;
  }

  private void setAngle(int o, double turn) {
    cos[o] = Turns.cos(turn);
    sin[o] = Turns.sin(turn);
    angle[o] = turn;
    Bounds box = Turns.box(outline(o), cos[o], sin[o]);
    minX[o] = box.minX();
    maxX[o] = box.maxX();
    minY[o] = box.minY();
    maxY[o] = box.maxY();
  }

  /** Area of a shape's parts, in square units of the search. */
  double area(int o) {
    double area = 0;
    for (double[] part : shapes.get(shape[o])) {
      int n = part.length;
      for (int k = 0; k < n; k += 2) {
        area += part[k] * part[(k + 3) % n] - part[(k + 2) % n] * part[k + 1];
      }
    }
    return area / 2;
  }

  /** Whether one orientation is another turned by half a turn. */
  boolean isHalfTurn(int o, int other) {
    double off = Math.IEEEremainder(angle[o] - angle[other] - Math.PI, 2 * Math.PI);
    return shape[o] == shape[other] && Math.abs(off) < 1e-9;
  }

  /** Ends the adding. */
  public void close() {
    given = count;
    Map<Integer, Integer> turnsOf = new HashMap<>();
    for (int o = 0; o < count; o++) {
      turnsOf.merge(shape[o], 1, Integer::sum);
    }
    int most = turnsOf.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    many =
        (long) shapes.size() * shapes.size() * most > MOST_REGIONS
            || (long) count * count > MOST_PAIRS;
    table = new NoFit[many ? 0 : count * count];
  }

  /** Turns an orientation of those that {@link #own} added. */
  public void turn(int o, double to) {
    setAngle(o, to);
    solid(o).turn(drawn.get(shape[o]), cos[o], sin[o]);
  }

  /** Whether a pair is told apart from its parts and not by a no-fit region. */
  public boolean byParts(int a, int b) {
    return many || a >= given || b >= given;
  }

  /**
   * Depth of the overlap of orientation b at a move from orientation a, from their parts.
   *
   * @param exit takes the move of b that ends it; null if not wanted
   */
  double depthOfParts(int a, int b, double dx, double dy, double @Nullable [] exit) {
    return solid(a).depth(solid(b), dx, dy, keep(a, b), exit);
  }

  private double keep(int a, int b) {
    Clearance ofA = clearances.get(shape[a]);
    Clearance ofB = clearances.get(shape[b]);
    if (fixed.get(shape[b])) {
      return ofB.from(ofA);
    }
    return fixed.get(shape[a]) ? ofA.from(ofB) : ofA.usual();
  }

  private Solid solid(int o) {
    Solid known = solids[o];
    if (known != null) {
      return known;
    }
    Solid made = drawn.get(shape[o]).copy();
    made.turn(drawn.get(shape[o]), cos[o], sin[o]);
    solids[o] = made;
    return made;
  }

  /** Greatest x of a shape turned to an angle. */
  public double greatestX(int ofShape, double turn) {
    return Turns.box(corners(ofShape), turn).maxX();
  }

  /** Corners of an orientation about its reference point, not turned. */
  public double[] outline(int o) {
    return corners(shape[o]);
  }

  /** Corners of a shape about its reference point. */
  public double[] corners(int ofShape) {
    return outlines.get(ofShape);
  }

  /** The no-fit region of orientation b around orientation a, in a's own frame. */
  public NoFit fit(int a, int b) {
    NoFit fit = table[a * given + b];
    return fit != null ? fit : build(a, b);
  }

  /** A table of depths for one thread; it has no pairs where all are told apart from parts. */
  DepthTable depths() {
    return new DepthTable(many ? 0 : given);
  }

  private NoFit build(int a, int b) {
    double relative = angle[b] - angle[a];
    double full = 2 * Math.PI;
    relative -= full * Math.floor(relative / full);
    if (full - relative < 1e-10) {
      relative = 0;
    }
    double turn = relative;
    Key key = new Key(names.get(shape[a]), names.get(shape[b]), Math.round(turn * 1e10));
    NoFit fit =
        built.computeIfAbsent(
            key,
            k -> {
              double c = Turns.cos(turn);
              double s = Turns.sin(turn);
              List<double[]> turned = new ArrayList<>();
              for (double[] part : shapes.get(shape[b])) {
                turned.add(Convex.turned(part, c, s));
              }
              return NoFitBuilder.build(shapes.get(shape[a]), turned, keep(a, b));
            });
    table[a * given + b] = fit;
    return fit;
  }
}
