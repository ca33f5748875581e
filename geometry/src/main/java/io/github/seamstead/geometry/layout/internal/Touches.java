package io.github.seamstead.geometry.layout.internal;

/** Places and angles at which one piece touches another, drawn at random. */
final class Touches {

  private final Nest nest;
  private final FastRandom random;
  private double x;
  private double y;

  Touches(Nest nest, FastRandom random) {
    this.nest = nest;
    this.random = random;
  }

  /** Where the reference point lies after {@link #next}. */
  double x() {
    return x;
  }

  double y() {
    return y;
  }

  /**
   * Draws a place in a region where a piece touches some other; where it may be turned, half of
   * them lay it edge to edge. False if there is none this time.
   */
  boolean next(int i, int r) {
    int j = random.below(nest.all);
    if (j == i) {
      return false;
    }
    int oj = nest.orientation[j];
    int o = nest.turnIn(i, r);
    if (nest.turns.byParts(oj, o)) {
      return byCorners(j, oj, o, nest.isFree(r) && random.below(2) == 0);
    }
    byRegion(j, oj, o);
    return true;
  }

  private void byRegion(int j, int oj, int o) {
    NoFit fit = nest.turns.fit(oj, o);
    int k = 5 * random.below(fit.segments.length / 5);
    double dx = fit.segments[k];
    double dy = fit.segments[k + 1];
    double c = nest.turns.cos[oj];
    double s = nest.turns.sin[oj];
    x = nest.x[j] + c * dx - s * dy;
    y = nest.y[j] + s * dx + c * dy;
  }

  /** Corner to corner, beside an edge of the other. */
  private boolean byCorners(int j, int oj, int o, boolean edgeToEdge) {
    double[] there = nest.turns.outline(oj);
    double[] own = nest.turns.outline(o);
    int e = 2 * random.below(there.length / 2);
    int f = (e + 2) % there.length;
    int g = 2 * random.below(own.length / 2);
    int h = (g + 2) % own.length;
    double c = nest.turns.cos[oj];
    double s = nest.turns.sin[oj];
    double ex = there[f] - there[e];
    double ey = there[f + 1] - there[e + 1];
    double length = StrictMath.hypot(ex, ey);
    if (length == 0) {
      return false;
    }
    if (edgeToEdge) {
      double way = StrictMath.atan2(ey, ex) + nest.turns.angle[oj] + Math.PI;
      nest.turns.turn(o, way - direction(own, g, h));
    }
    // The edges run against each other, so the end of one meets the start of the other.
    boolean atEnd = random.below(2) == 0;
    int corner = atEnd ? f : e;
    int mine = atEnd ? g : h;
    double px = there[corner] + nest.turns.pad * ey / length;
    double py = there[corner + 1] - nest.turns.pad * ex / length;
    double co = nest.turns.cos[o];
    double so = nest.turns.sin[o];
    x = nest.x[j] + c * px - s * py - (co * own[mine] - so * own[mine + 1]);
    y = nest.y[j] + s * px + c * py - (so * own[mine] + co * own[mine + 1]);
    return true;
  }

  /** An angle that lays one of the edges of an orientation's shape along or across the stock. */
  double alongStock(int o) {
    double[] own = nest.turns.outline(o);
    int g = 2 * random.below(own.length / 2);
    return random.below(4) * Math.PI / 2 - direction(own, g, (g + 2) % own.length);
  }

  private static double direction(double[] p, int from, int to) {
    return StrictMath.atan2(p[to + 1] - p[from + 1], p[to] - p[from]);
  }
}
