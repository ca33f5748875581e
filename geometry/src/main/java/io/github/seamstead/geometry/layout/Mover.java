package io.github.seamstead.geometry.layout;

/**
 * Finds a better place for one piece: samples over all that its kind may choose from, samples near
 * where it lies and corner-to-corner touches, then lets the best few descend.
 */
final class Mover {

  private static final int KEEP = 3;

  /** Few pieces need a wider look, for many the next pass is worth more. */
  private static final int MANY = 60;

  private final int wide;
  private final int near;
  private final int touch;

  private final Nest nest;
  private final FastRandom random;
  private final double[] exit = new double[2];
  private final int[] around;
  private final double[] keptLoss = new double[KEEP + 1];
  private final double[] keptX = new double[KEEP + 1];
  private final double[] keptY = new double[KEEP + 1];
  private final int[] keptRegion = new int[KEEP + 1];
  private int kept;
  private double clampedX;
  private double clampedY;

  Mover(Nest nest, FastRandom random) {
    this.nest = nest;
    this.random = random;
    around = new int[nest.all];
    int part = nest.pieces > MANY ? 2 : 1;
    wide = 40 / part;
    near = 20 / part;
    touch = 30 / part;
  }

  /** Moves a piece to the best place found; false if none is better than where it lies. */
  boolean move(int i) {
    Regions r = nest.regions;
    int[] choice = r.ofKind(nest.kind[i]);
    double now =
        nest.evaluate(i, nest.orientation[i], nest.x[i], nest.y[i], Double.POSITIVE_INFINITY);
    if (now <= 0) {
      return false;
    }
    kept = 0;
    for (int s = 0; s < wide; s++) {
      int region = choice[random.below(choice.length)];
      offer(i, region, between(r.x0[region], r.x1[region]), between(r.y0[region], r.y1[region]));
    }
    int o = nest.orientation[i];
    double size =
        Math.min(nest.turns.maxX[o] - nest.turns.minX[o], nest.turns.maxY[o] - nest.turns.minY[o]);
    for (int s = 0; s < near; s++) {
      int region = random.below(2) == 0 ? nest.region[i] : choice[random.below(choice.length)];
      double reach = size * random.next();
      offer(i, region, nest.x[i] + between(-reach, reach), nest.y[i] + between(-reach, reach));
    }
    for (int s = 0; s < touch; s++) {
      offerTouch(i, choice[random.below(choice.length)]);
    }
    // Where it lies takes part, so that a small slide is found too.
    insert(now, nest.region[i], nest.x[i], nest.y[i], true);
    double best = now;
    int bestRegion = -1;
    double bestX = 0;
    double bestY = 0;
    for (int k = 0; k < kept; k++) {
      double loss = descend(i, k, size);
      if (loss < best) {
        best = loss;
        bestRegion = keptRegion[k];
        bestX = keptX[k];
        bestY = keptY[k];
        if (loss <= 0) {
          break;
        }
      }
    }
    if (bestRegion < 0) {
      return false;
    }
    nest.place(i, bestRegion, bestX, bestY);
    nest.refresh(i);
    return true;
  }

  private double between(double a, double b) {
    return a + (b - a) * random.next();
  }

  private void offer(int i, int region, double px, double py) {
    clamp(region, px, py);
    double limit = kept < KEEP ? Double.POSITIVE_INFINITY : keptLoss[KEEP - 1];
    double loss = nest.evaluate(i, nest.regions.orientation[region], clampedX, clampedY, limit);
    if (loss < limit) {
      insert(loss, region, clampedX, clampedY, false);
    }
  }

  private void offerTouch(int i, int region) {
    int j = random.below(nest.all);
    if (j == i) {
      return;
    }
    int oj = nest.orientation[j];
    int o = nest.regions.orientation[region];
    NoFit fit = nest.turns.fit(oj, o);
    int k = 5 * random.below(fit.segments.length / 5);
    double dx = fit.segments[k];
    double dy = fit.segments[k + 1];
    double c = nest.turns.cos[oj];
    double s = nest.turns.sin[oj];
    offer(i, region, nest.x[j] + c * dx - s * dy, nest.y[j] + s * dx + c * dy);
  }

  double clampedX() {
    return clampedX;
  }

  double clampedY() {
    return clampedY;
  }

  /** Finds the point of a region nearest to a place. */
  void clamp(int region, double px, double py) {
    Regions r = nest.regions;
    if (r.line[region]) {
      double ex = r.x1[region] - r.x0[region];
      double ey = r.y1[region] - r.y0[region];
      double square = ex * ex + ey * ey;
      double t = square > 0 ? ((px - r.x0[region]) * ex + (py - r.y0[region]) * ey) / square : 0;
      t = Math.max(0, Math.min(1, t));
      clampedX = r.x0[region] + t * ex;
      clampedY = r.y0[region] + t * ey;
    } else {
      clampedX = Math.max(r.x0[region], Math.min(r.x1[region], px));
      clampedY = Math.max(r.y0[region], Math.min(r.y1[region], py));
    }
  }

  /** Keeps a candidate in rising order of loss; {@code extra} takes one place more. */
  private void insert(double loss, int region, double px, double py, boolean extra) {
    int limit = extra ? KEEP + 1 : KEEP;
    int at = kept < limit ? kept++ : limit - 1;
    while (at > 0 && keptLoss[at - 1] > loss) {
      keptLoss[at] = keptLoss[at - 1];
      keptRegion[at] = keptRegion[at - 1];
      keptX[at] = keptX[at - 1];
      keptY[at] = keptY[at - 1];
      at--;
    }
    keptLoss[at] = loss;
    keptRegion[at] = region;
    keptX[at] = px;
    keptY[at] = py;
  }

  /** Walks downhill from a kept candidate by axis and diagonal steps and by clean exits. */
  private double descend(int i, int k, double size) {
    int region = keptRegion[k];
    int o = nest.regions.orientation[region];
    double px = keptX[k];
    double py = keptY[k];
    double loss = keptLoss[k];
    double stepX = 0.05 * size;
    double stepY = stepX;
    double least = 1e-3 * size;
    while (loss > 0 && (stepX > least || stepY > least)) {
      int axis = random.below(4);
      double sx = axis == 1 ? 0 : stepX;
      double sy = axis == 0 ? 0 : axis == 3 ? -stepY : stepY;
      double ox = px;
      double oy = py;
      boolean better = false;
      for (int sign = 1; sign >= -1; sign -= 2) {
        clamp(region, ox + sign * sx, oy + sign * sy);
        double tx = clampedX;
        double ty = clampedY;
        double l = nest.evaluate(i, o, tx, ty, loss);
        if (l < loss) {
          loss = l;
          px = tx;
          py = ty;
          better = true;
        }
      }
      double factor = better ? 1.1 : 0.5;
      if (sx != 0) {
        stepX *= axis >= 2 && !better ? Math.sqrt(factor) : factor;
      }
      if (sy != 0) {
        stepY *= axis >= 2 && !better ? Math.sqrt(factor) : factor;
      }
    }
    keptX[k] = px;
    keptY[k] = py;
    return leave(i, k, o, loss);
  }

  /** Tries the clean exits from each overlap left, the shortest way first to zero overlap. */
  private double leave(int i, int k, int o, double start) {
    double loss = start;
    for (int round = 0; round < 6 && loss > 0; round++) {
      double baseX = keptX[k];
      double baseY = keptY[k];
      boolean better = false;
      double sumX = 0;
      double sumY = 0;
      int count = nest.meet(i, o, baseX, baseY, around);
      for (int m = 0; m < count; m++) {
        if (nest.exit(around[m], o, baseX, baseY, exit) <= 0) {
          continue;
        }
        sumX += exit[0];
        sumY += exit[1];
        clamp(keptRegion[k], baseX + exit[0], baseY + exit[1]);
        double l = nest.evaluate(i, o, clampedX, clampedY, loss);
        if (l < loss) {
          loss = l;
          keptX[k] = clampedX;
          keptY[k] = clampedY;
          better = true;
        }
      }
      clamp(keptRegion[k], baseX + sumX, baseY + sumY);
      double l = nest.evaluate(i, o, clampedX, clampedY, loss);
      if (l < loss) {
        loss = l;
        keptX[k] = clampedX;
        keptY[k] = clampedY;
        better = true;
      }
      if (!better) {
        break;
      }
    }
    keptLoss[k] = loss;
    return loss;
  }
}
