package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.work.Seeds;
import java.util.random.RandomGenerator;

/** Where the numbers of a task come from: the shelter of the lessons, or a seed. */
interface Draws {

  /** Gives a number: the shelter's, or one of the grid from low to high. */
  double of(double shelter, double low, double high, double step);

  /** Gives the number of a symbol; who draws by hand tells them apart by it. */
  default double named(String symbol, double shelter, double low, double high, double step) {
    return of(shelter, low, high, step);
  }

  /** The numbers of the shelter that all lessons build. */
  static Draws ofShelter() {
    return (shelter, low, high, step) -> shelter;
  }

  /** Other numbers for each seed, the same for the same seed. */
  static Draws ofSeed(long seed) {
    RandomGenerator random = Seeds.plain(seed);
    return (shelter, low, high, step) ->
        low + step * random.nextInt((int) Math.round((high - low) / step) + 1);
  }
}
