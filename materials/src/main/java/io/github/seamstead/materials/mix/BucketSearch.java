package io.github.seamstead.materials.mix;

import java.util.ArrayList;
import java.util.List;

/** Finds the simplest rounded buckets near an exact ratio. */
final class BucketSearch {

  private static final int MOST_SOIL_BUCKETS = 6;
  private static final double MOST_BUCKETS = 12;
  private static final double PRICE_OF_A_BUCKET = 0.002;

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

  /**
   * Rounds any recipe: of all totals up to 12 buckets, the one whose shares of dry mass move least,
   * with a small price on every further bucket; a total that leaves the clay band counts only if
   * the exact mix is outside too or nothing else is found.
   */
  static Recipe round(Recipe exact, ClayBand band, BucketRounding rounding) {
    if (rounding == BucketRounding.NONE) {
      return exact;
    }
    double step = rounding.step();
    boolean inside = band.holds(exact.clayRatio().value());
    Recipe best = exact;
    double least = Double.POSITIVE_INFINITY;
    for (double total = step; total <= MOST_BUCKETS; total += step) {
      List<Recipe.Portion> portions = new ArrayList<>();
      double buckets = 0;
      for (Recipe.Portion p : exact.portions()) {
        double count = Math.rint(total * p.looseVolume() / exact.looseVolume() / step) * step;
        portions.add(new Recipe.Portion(p.component(), count));
        buckets += count;
      }
      if (buckets > 0) {
        Recipe candidate = new Recipe(portions);
        double score = shift(exact, candidate) + PRICE_OF_A_BUCKET * buckets;
        if (inside && !band.holds(candidate.clayRatio().value())) {
          score += 1;
        }
        if (score < least - 1e-12) {
          least = score;
          best = candidate;
        }
      }
    }
    return best;
  }

  private static double shift(Recipe exact, Recipe candidate) {
    double most = 0;
    for (int i = 0; i < exact.portions().size(); i++) {
      most =
          Math.max(most, Math.abs(exact.dryMassRatios().get(i) - candidate.dryMassRatios().get(i)));
    }
    return most;
  }
}
