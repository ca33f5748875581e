package io.github.seamstead.geometry.layout.internal;

/**
 * One worker of the strip search. It shortens the strip, parts the pieces that then overlap ({@link
 * Separator}) and presses all together at once ({@link Press}); how much it shortens follows from
 * how its tries end ({@link Stride}). Where even the smallest step fails it shakes a state in which
 * a try has ended ({@link Shake}, {@link Reserve}) and parts the pieces again.
 *
 * <p>It works from one epoch to the next and then gives the thread back, so that workers may run on
 * threads of their own or one after the other with the same outcome.
 */
final class StripWorker {

  private static final long EPOCH = 100_000;

  /** What a press must gain, as a part of the length, for the next to be worth its cost. */
  private static final double WORTH_IT = 2e-5;

  private final Nest nest;
  private final FastRandom random;
  private final Separator separator;
  private final Press press;
  private final double reach;
  private final double spread;
  private final Stride stride;
  private final Reserve reserve;
  private final Shake shake;
  private final Clock clock;
  private final Poses best;
  private final Poses tried;
  private final double origin;
  private final double floor;

  /** Both ends along x of each line on which a hem lies, before the strip was shortened. */
  private final double[] lineStart;

  private final double[] lineEnd;
  private double bestLength;
  private double target;
  private long nextEpoch = EPOCH;
  private boolean overtaken;
  private boolean separating;

  StripWorker(
      Nest nest,
      FastRandom random,
      Clock clock,
      Poses start,
      double startLength,
      double origin,
      double floor,
      Tuning tuning) {
    this.origin = origin;
    this.floor = floor;
    this.nest = nest;
    this.random = random;
    this.clock = clock;
    lineStart = nest.regions.x0.clone();
    lineEnd = nest.regions.x1.clone();
    best = start.copy();
    tried = start.copy();
    bestLength = startLength;
    nest.load(start);
    reach = tuning.reach();
    spread = tuning.spread();
    stride = new Stride(tuning);
    reserve = new Reserve(tuning);
    separator = new Separator(nest, random, tuning);
    shake = new Shake(nest, random, separator.mover, tuning);
    press = new Press(nest);
    shorten();
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

  /** Takes on the count of work of a worker in whose place this one stands. */
  void countFrom(long work) {
    nest.work += work;
    nextEpoch = nest.work + EPOCH;
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
    while (separating || spent() < 1) {
      if (!separating) {
        separator.begin();
        separating = true;
      }
      if (!separator.goOn(() -> overtaken || spent() >= 1, this::epoch)) {
        return true;
      }
      separating = false;
      if (spent() < 1 || separator.bestOverlap() <= 0) {
        judge();
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

  /** What to try next after a try at the strip's present length. */
  private void judge() {
    double before = bestLength;
    if (separator.bestOverlap() <= 0) {
      accept(nest.reach());
    } else if (!overtaken) {
      nest.save(tried);
    }
    pressOn();
    if (bestLength < before) {
      if (bestLength <= target) {
        stride.succeeded();
      }
      reserve.clear();
      nest.load(best);
      shorten();
    } else if (overtaken) {
      reserve.clear();
      nest.load(best);
      shorten();
    } else if (!stride.isLeast()) {
      stride.failed();
      nest.load(best);
      shorten();
    } else {
      reserve.keep(tried, separator.bestOverlap());
      nest.load(reserve.draw(random));
      shake.shake(origin, target);
    }
    overtaken = false;
  }

  /**
   * Presses as long as it helps. A state with overlaps may be parted to more than the best length
   * at first, since pressing with the sides chosen anew may yet make it the shorter.
   */
  private void pressOn() {
    boolean apart = separator.bestOverlap() <= 0;
    double limit = bestLength * (apart ? 1 - 1e-9 : 1 + spread);
    double length = apart ? bestLength : limit;
    while (press.press(reach, limit)) {
      double gain = length - press.least();
      length = press.least();
      accept(length);
      if (gain < WORTH_IT * bestLength) {
        break;
      }
      limit = Math.min(length, bestLength * (1 + spread)) - WORTH_IT * bestLength;
    }
  }

  private void accept(double length) {
    if (length < bestLength) {
      bestLength = length;
      nest.save(best);
    }
  }

  /**
   * Makes the strip shorter than the best layout by the present stride; pieces right of a random
   * cut move left by as much.
   */
  private void shorten() {
    double by = (bestLength - origin) * stride.part();
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

  private void clamped(int i, double px, double py) {
    int r = nest.region[i];
    separator.mover.clamp(r, nest.orientation[i], px, py);
    nest.place(i, r, separator.mover.clampedX(), separator.mover.clampedY());
  }
}
