package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.work.Progress;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thread of the strip search. It shortens the strip a little, takes the overlaps out, and so
 * on; where that fails it goes back to one of the least overlapping states seen at this length,
 * exchanges two large pieces and tries again. In the last part of the budget it only presses the
 * best layout together in ever smaller steps.
 */
final class StripWorker implements Runnable {

  private static final long EPOCH = 100_000;
  private static final double EXPLORE = 0.8;

  private final int id;
  private final Nest nest;
  private final FastRandom random;
  private final Separator separator;
  private final Clock clock;
  private final Exchange exchange;
  private final Poses best;
  private final Progress progress;
  private final double origin;
  private final double floor;
  private @Nullable RuntimeException fault;
  private double bestLength;
  private double target;
  private long nextEpoch = EPOCH;
  private boolean overtaken;
  private final List<Tried> pool = new ArrayList<>();

  private record Tried(Poses poses, double overlap) {}

  StripWorker(
      int id,
      Nest nest,
      FastRandom random,
      Clock clock,
      Exchange exchange,
      Poses start,
      double startLength,
      double origin,
      double floor,
      Progress progress) {
    this.origin = origin;
    this.floor = floor;
    this.progress = progress;
    this.id = id;
    this.nest = nest;
    this.random = random;
    this.clock = clock;
    this.exchange = exchange;
    best = start.copy();
    bestLength = startLength;
    nest.load(start);
    separator = new Separator(nest, random);
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

  @Override
  public void run() {
    try {
      explore();
      compress();
    } catch (RuntimeException e) {
      fault = e;
    } finally {
      exchange.leave(id, best, bestLength);
    }
  }

  /** Passes on what stopped the worker early, if anything did. */
  void rethrow() {
    if (fault != null) {
      throw fault;
    }
  }

  /** Part of the budget used up; all of it once nothing shorter is possible. */
  private double spent() {
    return bestLength <= floor ? 1 : clock.spent(nest.work);
  }

  /** Asked between moves: true to end the running separation. */
  private boolean stop(double until) {
    if (nest.work >= nextEpoch) {
      nextEpoch = nest.work + EPOCH;
      exchange.post(id, best, bestLength);
      int other = exchange.shortest();
      if (exchange.length(other) < bestLength - 1e-12) {
        best.set(exchange.poses(other));
        bestLength = exchange.length(other);
        overtaken = bestLength <= target;
      }
      exchange.read();
      if (id == 0) {
        progress.report(Math.min(1, spent()), "pressing the layout together");
      }
    }
    return overtaken || spent() >= until;
  }

  private void explore() {
    double shrink = 0.02;
    shorten(shrink);
    while (spent() < EXPLORE) {
      overtaken = false;
      long before = nest.work;
      boolean done = separator.separate(100, 3, () -> stop(EXPLORE));
      if (done) {
        accept();
        pool.clear();
        boolean easy = nest.work - before < 40L * EPOCH / 10;
        shrink = easy ? Math.min(0.03, shrink * 1.5) : Math.max(0.001, shrink * 0.5);
        shorten(shrink);
      } else if (overtaken) {
        pool.clear();
        nest.load(best);
        shorten(shrink);
      } else if (spent() < EXPLORE) {
        if (shrink > 0.001) {
          shrink = Math.max(0.001, shrink * 0.25);
          nest.load(best);
          shorten(shrink);
          continue;
        }
        remember();
        nest.load(pick());
        disrupt();
      }
    }
  }

  private void compress() {
    double from = 0.0005;
    double to = 0.00001;
    while (spent() < 1) {
      overtaken = false;
      double part = Math.max(0, (spent() - EXPLORE) / (1 - EXPLORE));
      double step = from * Math.pow(to / from, part);
      nest.load(best);
      shorten(step);
      if (separator.separate(60, 1, () -> stop(1))) {
        accept();
      }
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

  private void setEnd(double end) {
    Regions r = nest.regions;
    for (int k = 0; k < r.count; k++) {
      if (!r.line[k]) {
        r.x1[k] = end;
      } else if (r.y0[k] == r.y1[k]) {
        // A hem along the strip; hems across keep their line and are checked when accepted.
        double most = end - nest.turns.maxX[r.orientation[k]];
        r.x0[k] = Math.min(r.x0[k], most);
        r.x1[k] = Math.min(r.x1[k], most);
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
