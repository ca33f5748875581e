package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.Comparator;
import java.util.List;

/** Compacted volume of a blend between perfect filling of voids and none. */
final class Packing {

  private Packing() {}

  static Range compactedVolume(List<Recipe.Portion> portions) {
    List<Recipe.Portion> finestFirst =
        portions.stream()
            .filter(p -> p.looseVolume() > 0)
            .sorted(Comparator.comparingDouble(p -> p.component().grading().diameterAt(0.5)))
            .toList();
    double filled = 0;
    double apart = 0;
    for (Recipe.Portion p : finestFirst) {
      double bulk = p.dryMass() / p.component().compactedDryDensity();
      double solids = p.dryMass() / p.component().particleDensity();
      filled = Math.max(bulk, solids + filled);
      apart += bulk;
    }
    // One component alone: solids + 0 is below its bulk, so both ends agree.
    return new Range(filled, (filled + apart) / 2, apart);
  }
}
