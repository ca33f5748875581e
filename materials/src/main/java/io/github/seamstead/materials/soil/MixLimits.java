package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Optional;

/**
 * The limits of a mix of one soil with clean sand, asked of each texture that is possible.
 *
 * @param leastClay least clay share of the mix
 * @param greatestClay greatest clay share of the mix
 * @param greatestSilt greatest silt share of the mix
 * @param greatestShrinkage greatest linear shrinkage of the mix
 * @param fine share of the soil that is finer than 2 mm
 * @param shrinkage measured linear shrinkage of the soil alone, the greatest if several
 */
record MixLimits(
    double leastClay,
    double greatestClay,
    double greatestSilt,
    double greatestShrinkage,
    double fine,
    Optional<Double> shrinkage) {

  /** Probabilities that add to one. */
  record Chances(double asItIs, double withSand, double lean, double unfit) {}

  static MixLimits of(SoilFinding finding, SoilUse use, double leastClay, double greatestClay) {
    return new MixLimits(
        leastClay,
        greatestClay,
        use.greatestSilt(),
        use.greatestShrinkage(),
        fine(finding),
        finding.evidence().stream()
            .filter(LinearShrinkage.class::isInstance)
            .map(e -> ((LinearShrinkage) e).ratio())
            .max(Double::compare));
  }

  /** Share of the dry mass below the stones as it is mixed: stones that were screened are out. */
  private static double fine(SoilFinding finding) {
    boolean screened = finding.evidence().stream().anyMatch(StonesScreened.class::isInstance);
    return screened ? 1 : 1 - finding.gravelRatio().map(Uncertain::value).orElse(0.0);
  }

  Chances chances(TexturePosterior texture) {
    double asItIs = texture.expectation((c, si, sa) -> suits(c, si) ? 1 : 0);
    double lean = texture.expectation((c, si, sa) -> c * fine < leastClay ? 1 : 0);
    double unfit = texture.expectation((c, si, sa) -> unfit(c, si) ? 1 : 0);
    return new Chances(asItIs, Math.max(0, 1 - asItIs - lean - unfit), lean, unfit);
  }

  private boolean suits(double clay, double silt) {
    double whole = clay * fine;
    return whole >= leastClay && whole <= greatestClay && mostSoil(silt) >= 1;
  }

  /** Rich enough, but not even the leanest mix keeps the other limits. */
  private boolean unfit(double clay, double silt) {
    double whole = clay * fine;
    return whole >= leastClay && mostSoil(silt) < leastClay / whole;
  }

  /** Greatest share of soil in the mix that silt and shrinkage allow; shrinkage as the share. */
  private double mostSoil(double silt) {
    double bySilt = silt > 0 ? greatestSilt / (silt * fine) : 1;
    double byShrinkage =
        shrinkage.isPresent() && shrinkage.get() > 0 ? greatestShrinkage / shrinkage.get() : 1;
    return Math.min(1, Math.min(bySilt, byShrinkage));
  }

  /** Says what sand does not mend. */
  String unfitReason(TexturePosterior texture) {
    double clay = Math.max(leastClay, texture.clay().value() * fine);
    double share = leastClay / clay;
    double silt = texture.silt().value() * fine * share;
    String leanest = "Even with as much sand as the clay allows the mix ";
    if (shrinkage.isPresent() && shrinkage.get() * share > greatestShrinkage) {
      return leanest
          + "shrinks by about "
          + percent(shrinkage.get() * share)
          + ", and "
          + percent(greatestShrinkage)
          + " is the most: take a less active soil, or add fibre and judge by trial samples.";
    }
    return leanest
        + "has about "
        + percent(silt)
        + " of silt, and "
        + percent(greatestSilt)
        + " is the most: take another soil, or blend in a richer one.";
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 2) + " %";
  }
}
