package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.FastRandom;
import io.github.seamstead.geometry.layout.internal.Nest;

/** Puts a piece anywhere, from where the search takes its overlaps out. */
final class Strew {

  private Strew() {}

  /** Puts a piece anywhere in a region, on its line if it is one, and turned so that it fits. */
  static void put(NestSetup setup, Nest nest, int i, int r, FastRandom random) {
    turn(setup, nest, i, r, random);
    int o = nest.orientation[i];
    double x = random.next();
    // Off its line a hem would stay so where it meets nothing.
    double y = nest.regions.line[r] ? x : random.next();
    nest.place(
        i,
        r,
        between(nest.minX(r, o), nest.maxX(r, o), x),
        between(nest.minY(r, o), nest.maxY(r, o), y));
  }

  /** One of the angles from which a piece starts, drawn among those at which a region holds it. */
  private static void turn(NestSetup setup, Nest nest, int i, int r, FastRandom random) {
    double[] starts = setup.startAngles(nest.kind[i]);
    int from = random.below(starts.length);
    for (int k = 0; k < starts.length; k++) {
      nest.place(i, r, 0, 0, starts[(from + k) % starts.length]);
      if (nest.hasRoom(r, nest.orientation[i])) {
        return;
      }
    }
  }

  private static double between(double a, double b, double part) {
    return a + (b - a) * part;
  }
}
