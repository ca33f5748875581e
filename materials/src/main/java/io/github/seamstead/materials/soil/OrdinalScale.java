package io.github.seamstead.materials.soil;

/**
 * Ordered outcomes of a hand test against the clay share: the proportional-odds model {@code
 * P(outcome <= k) = 1 / (1 + exp(-(x(t_k) - x(clay)) / s))} with {@code x(c) = ln(c + 0.05)}, so
 * that neighbouring outcomes overlap and the overlap grows with the clay share: fingers tell 5 from
 * 10 % as well as 25 from 40 %. With a stated probability the test misleads and every outcome is
 * alike.
 */
final class OrdinalScale {

  static final double MISLEADS = 0.08;

  private static final double OFFSET = 0.05;
  private static final double REFERENCE_CLAY = 0.25;

  private final double spread;
  private final double[] cuts;

  /**
   * Takes the logistic spread at 25 % of clay and the clay shares between neighbouring outcomes,
   * rising.
   */
  OrdinalScale(double spreadAtReference, double... clayCuts) {
    spread = spreadAtReference / (REFERENCE_CLAY + OFFSET);
    cuts = clayCuts.clone();
    for (int i = 0; i < cuts.length; i++) {
      cuts[i] = axis(cuts[i]);
    }
  }

  ClayLikelihood of(int outcome) {
    double below = outcome == 0 ? Double.NEGATIVE_INFINITY : cuts[outcome - 1];
    double above = outcome == cuts.length ? Double.POSITIVE_INFINITY : cuts[outcome];
    double floor = MISLEADS / (cuts.length + 1);
    return clay -> {
      double x = axis(clay);
      return (1 - MISLEADS)
              * (Densities.logistic((above - x) / spread)
                  - Densities.logistic((below - x) / spread))
          + floor;
    };
  }

  private static double axis(double clay) {
    return StrictMath.log(clay + OFFSET);
  }
}
