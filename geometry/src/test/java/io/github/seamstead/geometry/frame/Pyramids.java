package io.github.seamstead.geometry.frame;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random pyramids for property tests. */
public final class Pyramids {

  private Pyramids() {}

  /** Whole and truncated, 3 to 64 sides, from flat (6°) to steep (76°). */
  public static Arbitrary<RegularPyramid> any() {
    return Combinators.combine(
            Arbitraries.integers().between(3, 64),
            Arbitraries.doubles().between(0.2, 6).ofScale(9),
            Arbitraries.doubles().between(0.1, 4).ofScale(9),
            Arbitraries.doubles().between(0.05, 0.95).ofScale(9),
            Arbitraries.of(true, false))
        .as(
            (n, a, steep, share, cut) ->
                new RegularPyramid(
                    n, a, steep * new RegularPolygon(n, a).inradius(), cut ? share * a : 0))
        // Their product would use up all tries.
        .withoutEdgeCases();
  }
}
