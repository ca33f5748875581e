package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Pieces on stock, perhaps overlapping, with the depth of each overlap and a weight on each pair.
 *
 * <p>Indices below {@link #pieces} move; those from there on are fixed obstacles (flaws, what lies
 * outside a sheet). One instance belongs to one thread. Evaluating a placement costs O(k) for k
 * shapes whose boxes meet the piece's box, plus one box test for each other shape.
 */
public final class Nest {

  public final Orientations turns;
  public final Regions regions;
  public final int pieces;
  public final int all;
  public final int[] kind;

  /** The orientation of each piece that may be turned to any angle; the next one is turned over. */
  private final int[] free;

  public final int[] orientation;
  public final int[] region;
  public final double[] x;
  public final double[] y;
  private final BoxIndex boxes;
  private final int[] met;
  private final DepthTable depths;
  private final Losses losses;

  private @Nullable Pairs pairs;

  /** Placements evaluated so far. */
  public long work;

  /**
   * Makes a nest without places.
   *
   * @param kind kind of each piece, an index of {@link Regions#ofKind}
   * @param freeShapes for each kind the shapes, as drawn and turned over, that may lie at any
   *     angle; an empty array for a kind that may not
   * @param obstacles orientation index, x and y of each fixed shape
   */
  public Nest(
      Orientations turns,
      Regions regions,
      int[] kind,
      List<int[]> freeShapes,
      double[][] obstacles) {
    free = new int[kind.length];
    int[] shapes = new int[2 * kind.length];
    int slots = 0;
    for (int i = 0; i < kind.length; i++) {
      free[i] = turns.count + slots;
      for (int shape : freeShapes.get(kind[i])) {
        shapes[slots++] = shape;
      }
    }
    this.turns = turns.own(Arrays.copyOf(shapes, slots));
    this.regions = regions;
    this.kind = kind;
    pieces = kind.length;
    all = pieces + obstacles.length;
    orientation = new int[all];
    region = new int[pieces];
    x = new double[all];
    y = new double[all];
    boxes = new BoxIndex(all);
    met = new int[all];
    depths = this.turns.depths();
    losses = new Losses(this, boxes, depths);
    for (int i = 0; i < obstacles.length; i++) {
      int k = pieces + i;
      put(k, (int) obstacles[i][0], obstacles[i][1], obstacles[i][2]);
    }
  }

  /** Depths and weights of pairs, made on first use: until then every weight is 1. */
  Pairs pairs() {
    Pairs known = pairs;
    return known == null ? weigh(0) : known;
  }

  /**
   * Weighs pairs by the sizes of their pieces, until their overlaps teach otherwise.
   *
   * @param power the power of the piece's area that is its part in the weight; 0 weighs all alike
   */
  Pairs weigh(double power) {
    double[] area = new double[pieces];
    Arrays.setAll(area, this::area);
    Pairs made = Pairs.weighed(area, all, power);
    pairs = made;
    return made;
  }

  /** Area of a piece wherever it lies. */
  private double area(int i) {
    int[] choice = regions.ofKind(kind[i]);
    // A piece that may lie nowhere overlaps nothing, so that any size does.
    return choice.length == 0 ? 1 : turns.area(turnIn(i, choice[0]));
  }

  private void put(int i, int o, double px, double py) {
    orientation[i] = o;
    x[i] = px;
    y[i] = py;
    // Boxes grow by the distance to keep, so that a pair too close meets here.
    boxes.put(
        i,
        px + turns.minX[o] - turns.pad,
        px + turns.maxX[o] + turns.pad,
        py + turns.minY[o] - turns.pad,
        py + turns.maxY[o] + turns.pad);
  }

  /** The orientation in which a piece lies in a region. */
  public int turnIn(int i, int r) {
    int o = regions.orientation[r];
    return o >= 0 ? o : free[i] + Regions.ANY - o;
  }

  /** Whether a piece may be turned in a region. */
  public boolean isFree(int r) {
    return regions.orientation[r] < 0;
  }

  /** Least x of a piece's reference point in a region. */
  public double minX(int r, int o) {
    return regions.line[r] ? regions.x0[r] : regions.x0[r] - turns.minX[o];
  }

  /** Greatest x of a piece's reference point in a region; less than the least if it is too long. */
  public double maxX(int r, int o) {
    return regions.line[r] ? regions.x1[r] : regions.x1[r] - turns.maxX[o];
  }

  public double minY(int r, int o) {
    return regions.line[r] ? regions.y0[r] : regions.y0[r] - turns.minY[o];
  }

  public double maxY(int r, int o) {
    return regions.line[r] ? regions.y1[r] : regions.y1[r] - turns.maxY[o];
  }

  /** Whether a piece is no larger than a region. */
  public boolean hasRoom(int r, int o) {
    double most = -NoFit.TOUCH;
    return regions.line[r] || (maxX(r, o) - minX(r, o) >= most && maxY(r, o) - minY(r, o) >= most);
  }

  /** Puts a piece without looking at overlaps, at the angle at which it lies. */
  public void place(int i, int r, double px, double py) {
    region[i] = r;
    put(i, turnIn(i, r), px, py);
  }

  /** Puts a piece at an angle, which counts only in a region where it may be turned. */
  public void place(int i, int r, double px, double py, double angle) {
    if (isFree(r)) {
      turns.turn(turnIn(i, r), angle);
    }
    place(i, r, px, py);
  }

  /** Takes a piece out of the way of all others. */
  public void park(int i) {
    region[i] = Poses.PARKED;
    boxes.hide(i);
    x[i] = 0;
    y[i] = 0;
  }

  public void load(Poses poses) {
    span(poses);
    for (int i = 0; i < pieces; i++) {
      if (poses.region[i] == Poses.PARKED) {
        park(i);
      } else {
        place(i, poses.region[i], poses.x[i], poses.y[i], poses.angle[i]);
      }
    }
  }

  /** Spreads the index of boxes over where the pieces are to lie. */
  private void span(Poses poses) {
    double x0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double y0 = x0;
    double y1 = x1;
    for (int i = 0; i < pieces; i++) {
      if (poses.region[i] != Poses.PARKED) {
        int o = turnIn(i, poses.region[i]);
        x0 = Math.min(x0, poses.x[i] + turns.minX[o]);
        x1 = Math.max(x1, poses.x[i] + turns.maxX[o]);
        y0 = Math.min(y0, poses.y[i] + turns.minY[o]);
        y1 = Math.max(y1, poses.y[i] + turns.maxY[o]);
      }
    }
    if (x0 < x1) {
      boxes.span(x0, x1, y0, y1);
    }
  }

  public void save(Poses poses) {
    System.arraycopy(region, 0, poses.region, 0, pieces);
    System.arraycopy(x, 0, poses.x, 0, pieces);
    System.arraycopy(y, 0, poses.y, 0, pieces);
    for (int i = 0; i < pieces; i++) {
      poses.angle[i] = region[i] == Poses.PARKED ? 0 : turns.angle[orientation[i]];
    }
  }

  /**
   * Sum of weighted depths of a piece at a place; stops early once it exceeds a limit.
   *
   * @return the sum, or any value of at least {@code limit} if the sum is at least that
   */
  public double evaluate(int i, int o, double px, double py, double limit) {
    work++;
    return losses.at(i, o, px, py, limit);
  }

  /** Depths and weights of pairs, if they have been made. */
  @Nullable Pairs weights() {
    return pairs;
  }

  /** The weight of a pair. */
  double weight(int i, int j) {
    Pairs known = pairs;
    return known == null ? 1 : known.weight(i, j);
  }

  /** Looks at many places of a piece near one another. */
  Vicinity vicinity() {
    return new Vicinity(this, depths);
  }

  /**
   * Finds the shapes whose boxes meet a piece's box at a place.
   *
   * @param found takes their indices
   * @return how many
   */
  int meet(int i, int o, double px, double py, int[] found) {
    return boxes.find(
        i, px + turns.minX[o], px + turns.maxX[o], py + turns.minY[o], py + turns.maxY[o], found);
  }

  /** Finds the shapes whose boxes come within a distance of a piece's box where it lies. */
  int meetWithin(int i, double far, int[] found) {
    return meetWithin(i, orientation[i], x[i], y[i], far, found);
  }

  /** Likewise at a place. */
  int meetWithin(int i, int o, double px, double py, double far, int[] found) {
    return boxes.find(
        i,
        px + turns.minX[o] - far,
        px + turns.maxX[o] + far,
        py + turns.minY[o] - far,
        py + turns.maxY[o] + far,
        found);
  }

  /**
   * Gives the move that ends the overlap of a piece at a place with another shape whose box it
   * meets.
   *
   * @param exit takes the move
   * @return its length, 0 if they do not overlap
   */
  double exit(int j, int o, double px, double py, double[] exit) {
    return losses.exit(j, o, px, py, exit);
  }

  /** How far the pieces that are placed reach along x; negative infinity if none is. */
  public double reach() {
    double reach = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pieces; i++) {
      if (region[i] != Poses.PARKED) {
        reach = Math.max(reach, x[i] + turns.maxX[orientation[i]]);
      }
    }
    return reach;
  }

  /** Tells whether no piece that is placed overlaps anything. O(n²) box tests. */
  public boolean isApart() {
    for (int i = 0; i < pieces; i++) {
      if (region[i] != Poses.PARKED
          && evaluate(i, orientation[i], x[i], y[i], Double.MIN_VALUE) > 0) {
        return false;
      }
    }
    return true;
  }

  /** Renews the depths of a piece's overlaps after it moved. */
  void refresh(int i) {
    Pairs kept = pairs();
    kept.clear(i);
    if (region[i] == Poses.PARKED) {
      return;
    }
    int count = meet(i, orientation[i], x[i], y[i], met);
    for (int m = 0; m < count; m++) {
      double deep = losses.depth(met[m], orientation[i], x[i], y[i]);
      if (deep > 0) {
        kept.add(i, met[m], deep);
      }
    }
  }

  void refreshAll() {
    for (int i = 0; i < pieces; i++) {
      refresh(i);
    }
  }
}
