package io.github.seamstead.geometry.layout;

/**
 * Changes a layout in a way that moving one piece after another does not come to: two pieces of
 * about one size exchange places, two slices of the strip do, or a slice is turned about its middle
 * with all that lies in it. Inside a slice the pieces stay as they fitted.
 */
final class Shake {

  /** Pieces whose areas are within this ratio nearly fit in each other's places. */
  private static final double ALIKE = 2;

  /** The widest slice, as a part of the strip. */
  private static final double WIDEST = Double.parseDouble(System.getProperty("WIDEST", "0.3"));

  private static final int EX = Integer.getInteger("EX", 1);
  private static final int SW = Integer.getInteger("SW", 1);
  private static final int TU = Integer.getInteger("TU", 1);

  private final Nest nest;
  private final FastRandom random;
  private final Mover mover;
  private final double[] size;
  private final int[] turnedOver;

  Shake(Nest nest, FastRandom random, Mover mover) {
    this.nest = nest;
    this.random = random;
    this.mover = mover;
    size = new double[nest.pieces];
    turnedOver = new int[nest.regions.count];
    java.util.Arrays.fill(turnedOver, -2);
  }

  /** Changes the layout that the nest holds, between two ends of the strip. */
  void shake(double from, double to) {
    int u = random.below(EX + SW + TU);
    if (u < EX) {
      exchange();
    } else if (u < EX + SW) {
      exchangeSlices(from, to);
    } else {
      turnSlice(from, to);
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
    double b = a + (to - from) * WIDEST * random.next();
    double c = b + (to - from) * WIDEST * random.next();
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
    double b = Math.min(to, a + (to - from) * WIDEST * random.next());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < nest.pieces; i++) {
      int o = nest.orientation[i];
      low = Math.min(low, nest.y[i] + nest.turns.minY[o]);
      high = Math.max(high, nest.y[i] + nest.turns.maxY[o]);
    }
    boolean turned = false;
    for (int i = 0; i < nest.pieces; i++) {
      double x = nest.x[i];
      if (x >= a && x < b) {
        int r = halfTurned(i);
        turned |= r >= 0;
        put(i, r >= 0 ? r : nest.region[i], a + b - x, low + high - nest.y[i]);
      }
    }
    if (!turned) {
      exchange();
    }
  }

  /** The region in which a piece lies turned by half a turn; -1 if there is none. */
  private int halfTurned(int i) {
    int r = nest.region[i];
    if (turnedOver[r] == -2) {
      turnedOver[r] = -1;
      int o = nest.regions.orientation[r];
      for (int k : nest.regions.ofKind(nest.kind[i])) {
        int other = nest.regions.orientation[k];
        if (o >= 0
            && other >= 0
            && !nest.regions.line[k]
            && !nest.regions.line[r]
            && nest.regions.bin[k] == nest.regions.bin[r]
            && nest.turns.isHalfTurn(o, other)) {
          turnedOver[r] = k;
        }
      }
    }
    return turnedOver[r];
  }

  private void put(int i, int r, double px, double py) {
    mover.clamp(r, nest.turnIn(i, r), px, py);
    nest.place(i, r, mover.clampedX(), mover.clampedY());
  }
}
