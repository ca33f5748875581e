package io.github.seamstead.geometry.layout.internal;

/**
 * Finds a better place for one piece: looks at places over all that its kind may choose from, near
 * where it lies and corner to corner with others, then lets it slide on from the best few ({@link
 * Faces}). A piece that may lie at any angle is turned as well: along the stock, along a
 * neighbour's edge, at random, and in ever smaller steps as it slides.
 */
final class Mover {

  /** A piece that still slides after so many rounds has left where it was let go. */
  private static final int ROUNDS = 6;

  /** Few pieces need a wider look, for many the next pass is worth more. */
  private static final int MANY = 60;

  /** First and last step of a turn on the way down, in radians. */
  private static final double TURN = 0.05;

  private static final double LEAST_TURN = 1e-4;

  private final int wide;
  private final int near;
  private final int touch;

  private final Nest nest;
  private final FastRandom random;
  private final Touches touches;
  private final double[] exit = new double[2];
  private final Kept kept;
  private final Faces faces = new Faces();
  private final Vicinity vicinity;
  private double clampedX;
  private double clampedY;

  Mover(Nest nest, FastRandom random, Tuning tuning) {
    this.nest = nest;
    this.random = random;
    touches = new Touches(nest, random);
    vicinity = nest.vicinity();
    int part = nest.pieces > MANY ? 2 : 1;
    wide = tuning.wide() / part;
    near = tuning.near() / part;
    touch = tuning.touch() / part;
    kept = new Kept(tuning.kept());
  }

  /** Moves a piece to the best place found; false if none is better than where it lies. */
  boolean move(int i) {
    int[] choice = nest.regions.ofKind(nest.kind[i]);
    int o = nest.orientation[i];
    int home = nest.region[i];
    double angle = nest.turns.angle[o];
    double now = nest.evaluate(i, o, nest.x[i], nest.y[i], Double.POSITIVE_INFINITY);
    if (now <= 0) {
      return false;
    }
    kept.count = 0;
    double size =
        Math.min(nest.turns.maxX[o] - nest.turns.minX[o], nest.turns.maxY[o] - nest.turns.minY[o]);
    for (int s = 0; s < wide; s++) {
      offerAnywhere(i, choice[random.below(choice.length)], angle);
    }
    for (int s = 0; s < near; s++) {
      int r = random.below(2) == 0 ? home : choice[random.below(choice.length)];
      double reach = size * random.next();
      if (nest.isFree(r)) {
        turn(i, r, random.below(2) == 0 ? angle : angle + between(-4 * TURN, 4 * TURN));
      }
      offer(i, r, nest.x[i] + between(-reach, reach), nest.y[i] + between(-reach, reach));
    }
    for (int s = 0; s < touch; s++) {
      int r = choice[random.below(choice.length)];
      turn(i, r, angle);
      if (touches.next(i, r)) {
        offer(i, r, touches.x(), touches.y());
      }
    }
    // Where it lies takes part, so that a small slide is found too.
    kept.insert(now, home, nest.x[i], nest.y[i], angle, true);
    int best = -1;
    double least = now;
    for (int k = 0; k < kept.count && least > 0; k++) {
      double loss = settle(i, k);
      if (nest.isFree(kept.region[k])) {
        loss = turned(i, k);
      }
      if (loss < least) {
        least = loss;
        best = k;
      }
    }
    if (best < 0) {
      turn(i, home, angle);
      return false;
    }
    nest.place(i, kept.region[best], kept.x[best], kept.y[best], kept.angle[best]);
    nest.refresh(i);
    return true;
  }

  private void offerAnywhere(int i, int r, double angle) {
    int o = nest.turnIn(i, r);
    if (nest.isFree(r)) {
      switch (random.below(3)) {
        case 0 -> nest.turns.turn(o, angle);
        case 1 -> nest.turns.turn(o, touches.alongStock(o));
        default -> nest.turns.turn(o, 2 * Math.PI * random.next());
      }
    }
    offer(
        i, r, between(nest.minX(r, o), nest.maxX(r, o)), between(nest.minY(r, o), nest.maxY(r, o)));
  }

  private void turn(int i, int r, double angle) {
    if (nest.isFree(r)) {
      nest.turns.turn(nest.turnIn(i, r), angle);
    }
  }

  private double between(double a, double b) {
    return a + (b - a) * random.next();
  }

  /** Looks at a place in a region, at the angle at which the piece is turned for it. */
  private void offer(int i, int r, double px, double py) {
    int o = nest.turnIn(i, r);
    if (nest.isFree(r) && !nest.hasRoom(r, o)) {
      return;
    }
    clamp(r, o, px, py);
    double limit = kept.limit();
    double loss = nest.evaluate(i, o, clampedX, clampedY, limit);
    if (loss < limit) {
      kept.insert(loss, r, clampedX, clampedY, nest.turns.angle[o], false);
    }
  }

  double clampedX() {
    return clampedX;
  }

  double clampedY() {
    return clampedY;
  }

  /** Finds the point of a region nearest to a place for a piece in an orientation. */
  void clamp(int region, int o, double px, double py) {
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
      clampedX = Math.max(nest.minX(region, o), Math.min(nest.maxX(region, o), px));
      clampedY = Math.max(nest.minY(region, o), Math.min(nest.maxY(region, o), py));
    }
  }

  /**
   * Lets a kept place slide to where its loss is least around it. The loss is linear between the
   * faces of the no-fit regions, so that it is least where two of them cross, or one and a side of
   * the region: the faces through which the piece can leave what it overlaps are gathered on the
   * way, and their crossings tried.
   */
  private double settle(int i, int k) {
    int r = kept.region[k];
    int o = nest.turnIn(i, r);
    turn(i, r, kept.angle[k]);
    faces.begin(nest, r, o);
    vicinity.gather(i, o, kept.x[k], kept.y[k]);
    for (int round = 0; round < ROUNDS && kept.loss[k] > 0; round++) {
      double px = kept.x[k];
      double py = kept.y[k];
      double before = kept.loss[k];
      int known = faces.count();
      double sumX = 0;
      double sumY = 0;
      if (!vicinity.covers(px, py)) {
        vicinity.gather(i, o, px, py);
      }
      int count = vicinity.meet(px, py);
      for (int m = 0; m < count; m++) {
        double deep = vicinity.exit(m, px, py, exit);
        if (deep > 0) {
          sumX += exit[0];
          sumY += exit[1];
          slide(k, r, o, px + exit[0], py + exit[1]);
          if (deep > NoFit.TOUCH) {
            faces.add(px, py, exit[0] / deep, exit[1] / deep, deep);
          }
        }
      }
      slide(k, r, o, px + sumX, py + sumY);
      for (int f = known; f < faces.count() && kept.loss[k] > 0; f++) {
        int crossings = faces.cross(f);
        for (int c = 0; c < crossings; c++) {
          slide(k, r, o, faces.x(c), faces.y(c));
        }
      }
      if (kept.loss[k] >= before) {
        break;
      }
    }
    return kept.loss[k];
  }

  /** Turns a kept place by ever smaller steps, sliding after each turn that helps. */
  private double turned(int i, int k) {
    int r = kept.region[k];
    int o = nest.turnIn(i, r);
    double step = TURN;
    while (kept.loss[k] > 0 && step > LEAST_TURN) {
      double from = kept.angle[k];
      double before = kept.loss[k];
      for (int sign = 1; sign >= -1 && kept.loss[k] >= before; sign -= 2) {
        nest.turns.turn(o, from + sign * step);
        if (nest.hasRoom(r, o)) {
          clamp(r, o, kept.x[k], kept.y[k]);
          double l = nest.evaluate(i, o, clampedX, clampedY, before);
          if (l < before) {
            kept.set(k, l, clampedX, clampedY, from + sign * step);
          }
        }
      }
      if (kept.loss[k] < before) {
        settle(i, k);
      } else {
        step /= 2;
      }
    }
    turn(i, r, kept.angle[k]);
    return kept.loss[k];
  }

  private boolean slide(int k, int r, int o, double px, double py) {
    clamp(r, o, px, py);
    double l = vicinity.evaluate(clampedX, clampedY, kept.loss[k]);
    if (l >= kept.loss[k]) {
      return false;
    }
    kept.set(k, l, clampedX, clampedY, kept.angle[k]);
    return true;
  }
}
