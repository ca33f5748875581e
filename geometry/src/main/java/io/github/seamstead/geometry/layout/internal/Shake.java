package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * Changes a layout in a way that moving one piece after another does not come to: two pieces of
 * about one size exchange places, two slices of the strip do, or a slice is turned about its middle
 * with all that lies in it. Inside a slice the pieces stay as they fitted.
 */
final class Shake {

  /** Pieces whose areas are within this ratio nearly fit in each other's places. */
  private static final double ALIKE = 2;

  /** Stands for a region whose half turn is not yet known, and for one that has none. */
  private static final int UNKNOWN = -2;

  private static final int NONE = -1;

  private final double widest;
  private final Nest nest;
  private final FastRandom random;
  private final Mover mover;
  private final double[] size;
  private final int[] turned;

  Shake(Nest nest, FastRandom random, Mover mover, Tuning tuning) {
    widest = tuning.widest();
    this.nest = nest;
    this.random = random;
    this.mover = mover;
    size = new double[nest.pieces];
    turned = new int[nest.regions.count];
    Arrays.fill(turned, UNKNOWN);
  }

  /** Changes the layout that the nest holds, between two ends of the strip. */
  void shake(double from, double to) {
    switch (random.below(3)) {
      case 0 -> exchange();
      case 1 -> exchangeSlices(from, to);
      default -> turnSlice(from, to);
    }
  }

  private void exchange() {
    double most = 0;
    for (int i = 0; i < nest.pieces; i++) {
      size[i] = nest.turns.area(nest.orientation[i]);
      most = Math.max(most, size[i]);
    }
    int a = random.below(nest.pieces);
    // Large pieces more often: what they need is harder to come by.
    while (size[a] < most * random.next()) {
      a = random.below(nest.pieces);
    }
    int b = -1;
    int seen = 0;
    for (int i = 0; i < nest.pieces; i++) {
      boolean alike = size[i] <= ALIKE * size[a] && size[a] <= ALIKE * size[i];
      if (alike && nest.kind[i] != nest.kind[a] && random.below(++seen) == 0) {
        b = i;
      }
    }
    b = b < 0 ? random.below(nest.pieces) : b;
    double ax = nest.x[a];
    double ay = nest.y[a];
    put(a, nest.region[a], nest.x[b], nest.y[b]);
    put(b, nest.region[b], ax, ay);
  }

  private void exchangeSlices(double from, double to) {
    double a = from + (to - from) * random.next();
    double b = a + (to - from) * widest * random.next();
    double c = b + (to - from) * widest * random.next();
    c = Math.min(c, to);
    b = Math.min(b, c);
    for (int i = 0; i < nest.pieces; i++) {
      double x = nest.x[i];
      if (x >= a && x < b) {
        put(i, nest.region[i], x + c - b, nest.y[i]);
      } else if (x >= b && x < c) {
        put(i, nest.region[i], x - (b - a), nest.y[i]);
      }
    }
  }

  private void turnSlice(double from, double to) {
    double a = from + (to - from) * random.next();
    double b = Math.min(to, a + (to - from) * widest * random.next());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < nest.pieces; i++) {
      int o = nest.orientation[i];
      low = Math.min(low, nest.y[i] + nest.turns.minY[o]);
      high = Math.max(high, nest.y[i] + nest.turns.maxY[o]);
    }
    boolean any = false;
    for (int i = 0; i < nest.pieces; i++) {
      double x = nest.x[i];
      if (x >= a && x < b) {
        int r = halfTurned(i);
        any |= r >= 0;
        put(i, r >= 0 ? r : nest.region[i], a + b - x, low + high - nest.y[i]);
      }
    }
    if (!any) {
      exchange();
    }
  }

  /** The region in which a piece lies turned by half a turn; -1 if there is none. */
  private int halfTurned(int i) {
    int r = nest.region[i];
    if (turned[r] == UNKNOWN) {
      turned[r] = NONE;
      int o = nest.regions.orientation[r];
      for (int k : nest.regions.ofKind(nest.kind[i])) {
        int other = nest.regions.orientation[k];
        if (o >= 0
            && other >= 0
            && !nest.regions.line[k]
            && !nest.regions.line[r]
            && nest.regions.bin[k] == nest.regions.bin[r]
            && nest.turns.isHalfTurn(o, other)) {
          turned[r] = k;
        }
      }
    }
    return turned[r];
  }

  private void put(int i, int r, double px, double py) {
    mover.clamp(r, nest.turnIn(i, r), px, py);
    nest.place(i, r, mover.clampedX(), mover.clampedY());
  }
}
