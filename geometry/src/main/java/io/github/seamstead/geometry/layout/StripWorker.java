package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * One worker of the strip search. It shortens the strip a little, takes the overlaps out, and so
 * on; where that fails it goes back to one of the least overlapping states seen at this length,
 * exchanges two large pieces and tries again. In the last part of the budget it only presses the
 * best layout together in ever smaller steps.
 *
 * <p>It works from one epoch to the next and then gives the thread back, so that workers may run on
 * threads of their own or one after the other with the same outcome.
 */
final class StripWorker {

  private static final long EPOCH = 100_000;
  private static final double EXPLORE = 0.8;

  private final Nest nest;
  private final FastRandom random;
  private final Separator separator;
  private final Clock clock;
  private final Poses best;
  private final double origin;
  private final double floor;

  /** Both ends along x of each line on which a hem lies, before the strip was shortened. */
  private final double[] lineStart;

  private final double[] lineEnd;
  private double bestLength;
  private double target;
  private double shrink = 0.02;
  private long nextEpoch = EPOCH;
  private long begunAt;
  private boolean overtaken;
  private boolean exploring = true;
  private boolean separating;
  private final List<Tried> pool = new ArrayList<>();

  private record Tried(Poses poses, double overlap) {}

  StripWorker(
      Nest nest,
      FastRandom random,
      Clock clock,
      Poses start,
      double startLength,
      double origin,
      double floor) {
    this.origin = origin;
    this.floor = floor;
    this.nest = nest;
    this.random = random;
    this.clock = clock;
    lineStart = nest.regions.x0.clone();
    lineEnd = nest.regions.x1.clone();
    best = start.copy();
    bestLength = startLength;
    nest.load(start);
    separator = new Separator(nest, random);
    shorten(shrink);
  }

  double bestLength() {
    return bestLength;
  }

  Poses best() {
    return best;
  }

  long work() {
    return nest.work;
  }

  /** Part of the budget used up; all of it once nothing shorter is possible. */
  double spent() {
    return bestLength <= floor ? 1 : clock.spent(nest.work);
  }

  /** Takes over another's layout if it is shorter than this one's best. */
  void takeOver(Poses poses, double length) {
    if (length < bestLength - 1e-12) {
      best.set(poses);
      bestLength = length;
      overtaken = bestLength <= target;
    }
  }

  /** Works until the next epoch; false once the budget is used up. */
  boolean goOn() {
    while (separating || begin()) {
      double until = exploring ? EXPLORE : 1;
      if (!separator.goOn(() -> overtaken || spent() >= until, this::epoch)) {
        return true;
      }
      separating = false;
      boolean done = separator.bestOverlap() <= 0;
      if (exploring) {
        explored(done);
      } else if (done) {
        accept();
      }
    }
    return false;
  }

  private boolean epoch() {
    if (nest.work < nextEpoch) {
      return false;
    }
    nextEpoch = nest.work + EPOCH;
    return true;
  }

  /** Begins the next try; false if the budget is used up. */
  private boolean begin() {
    double spent = spent();
    exploring &= spent < EXPLORE;
    if (!exploring && spent >= 1) {
      return false;
    }
    overtaken = false;
    separating = true;
    begunAt = nest.work;
    if (exploring) {
      separator.begin(100, 3);
      return true;
    }
    double from = 0.0005;
    double to = 0.00001;
    double part = Math.max(0, (spent - EXPLORE) / (1 - EXPLORE));
    nest.load(best);
    shorten(from * StrictMath.pow(to / from, part));
    separator.begin(60, 1);
    return true;
  }

  /** What to try next after a try at the strip's present length. */
  private void explored(boolean done) {
    if (done) {
      accept();
      pool.clear();
      boolean easy = nest.work - begunAt < 40L * EPOCH / 10;
      shrink = easy ? Math.min(0.03, shrink * 1.5) : Math.max(0.001, shrink * 0.5);
      shorten(shrink);
    } else if (overtaken) {
      pool.clear();
      nest.load(best);
      shorten(shrink);
    } else if (spent() < EXPLORE && shrink > 0.001) {
      shrink = Math.max(0.001, shrink * 0.25);
      nest.load(best);
      shorten(shrink);
    } else if (spent() < EXPLORE) {
      remember();
      nest.load(pick());
      disrupt();
    }
  }

  private void accept() {
    double reach = nest.reach();
    if (reach < bestLength) {
      bestLength = reach;
      nest.save(best);
    }
  }

  /**
   * Makes the strip shorter than the best layout by a part of its length; pieces right of a random
   * cut move left by as much.
   */
  private void shorten(double part) {
    double by = (bestLength - origin) * part;
    target = bestLength - by;
    setEnd(target);
    double cut = origin + random.next() * (target - origin);
    for (int i = 0; i < nest.pieces; i++) {
      clamped(i, nest.x[i] > cut ? nest.x[i] - by : nest.x[i], nest.y[i]);
    }
  }

  /**
   * Ends the strip. A line on which a hem lies is cut at its right end, wherever that is the first
   * or the second of its ends, and never shorter than its left end.
   */
  private void setEnd(double end) {
    Regions r = nest.regions;
    for (int k = 0; k < r.count; k++) {
      if (!r.line[k]) {
        r.x1[k] = end;
      } else if (r.y0[k] == r.y1[k]) {
        // Hems across or aslant keep their line and are checked when accepted.
        double most = end - nest.turns.maxX[r.orientation[k]];
        double least = Math.min(lineStart[k], lineEnd[k]);
        r.x0[k] = Math.max(least, Math.min(lineStart[k], most));
        r.x1[k] = Math.max(least, Math.min(lineEnd[k], most));
      }
    }
  }

  private void remember() {
    Poses poses = new Poses(nest.pieces);
    nest.save(poses);
    double overlap = separator.bestOverlap();
    int at = 0;
    while (at < pool.size() && pool.get(at).overlap() <= overlap) {
      at++;
    }
    pool.add(at, new Tried(poses, overlap));
    if (pool.size() > 50) {
      pool.remove(pool.size() - 1);
    }
  }

  /** A state tried at this length, the better ones more often. */
  private Poses pick() {
    double u = random.next();
    return pool.get((int) (u * u * u * pool.size())).poses();
  }

  /** Exchanges the places of two large pieces of different kinds. */
  private void disrupt() {
    double largest = 0;
    for (int i = 0; i < nest.pieces; i++) {
      largest = Math.max(largest, size(i));
    }
    double least = largest * (0.3 + 0.4 * random.next());
    int a = anyLarge(least, -1);
    int b = anyLarge(least, nest.kind[a]);
    double ax = nest.x[a];
    double ay = nest.y[a];
    clamped(a, nest.x[b], nest.y[b]);
    clamped(b, ax, ay);
  }

  private void clamped(int i, double px, double py) {
    int r = nest.region[i];
    separator.mover.clamp(r, nest.orientation[i], px, py);
    nest.place(i, r, separator.mover.clampedX(), separator.mover.clampedY());
  }

  private double size(int i) {
    int o = nest.orientation[i];
    return (nest.turns.maxX[o] - nest.turns.minX[o]) * (nest.turns.maxY[o] - nest.turns.minY[o]);
  }

  /** A random piece of at least a size, of another kind than given if there is one. */
  private int anyLarge(double least, int notKind) {
    int found = -1;
    int seen = 0;
    for (int round = 0; round < 2 && found < 0; round++) {
      for (int i = 0; i < nest.pieces; i++) {
        if ((round == 1 || size(i) >= least) && nest.kind[i] != notKind) {
          seen++;
          if (random.below(seen) == 0) {
            found = i;
          }
        }
      }
    }
    return found < 0 ? random.below(nest.pieces) : found;
  }
}
