package io.github.seamstead.materials.mix;

import java.util.List;

/** Finds the simplest rounded buckets near an exact ratio. */
final class BucketSearch {

  private static final int MOST_SOIL_BUCKETS = 6;

  private BucketSearch() {}

  /**
   * Buckets of soil and sand: the fewest buckets of soil (whole) whose nearest rounded sand keeps
   * the clay in the band, else the pair whose clay is nearest the aim.
   */
  static double[] pair(
      MixComponent soil,
      MixComponent sand,
      ClayBand band,
      double sandPerSoil,
      double aim,
      BucketRounding rounding) {
    if (rounding == BucketRounding.NONE) {
      return new double[] {1, sandPerSoil};
    }
    double step = rounding.step();
    double[] best = {1, 0};
    double least = Double.POSITIVE_INFINITY;
    for (int s = 1; s <= MOST_SOIL_BUCKETS; s++) {
      double n = Math.rint(s * sandPerSoil / step) * step;
      double clay =
          new Recipe(List.of(new Recipe.Portion(soil, s), new Recipe.Portion(sand, n)))
              .clayRatio()
              .value();
      if (band.holds(clay)) {
        return new double[] {s, n};
      }
      double miss = Math.abs(clay - aim);
      if (miss < least - 1e-12) {
        least = miss;
        best = new double[] {s, n};
      }
    }
    return best;
  }
}
