package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Linear shrinkage of a bar dried in a mould, on the wet (mould) length: {@code LS = (L0 - L) /
 * L0}. Cracked pieces are pushed together first; for a curled bar the mean of top and bottom
 * counts.
 *
 * <p>Short moulds (140 or 250 mm, wetted to the liquid limit): {@code PI = 2.13 LS}, and the
 * plasticity index tells the clay as in {@link ConsistencyLimits}, with a log deviation of 0.5.
 * Long boxes (from 400 mm, filled at working moisture) shrink less for the same clay: 0.6 times,
 * with a log deviation of 0.7 (common practice). The part of it that is the clay's minerals is
 * shared with limits and hand tests of the same soil. With probability 0.05 it misleads.
 *
 * @param mouldLengthMetres length of the mould, 0.05 to 1.5 m
 * @param driedLengthMetres length when dry, above half the mould, at most the mould
 */
public record LinearShrinkage(double mouldLengthMetres, double driedLengthMetres)
    implements SoilEvidence {

  /** The test and its link to plasticity. */
  public static final Source SOURCE =
      Source.fromMemory("BSI", "BS 1377-2", "1990", "6.5, linear shrinkage; PI = 2.13 LS");

  private static final double MISLEADS = 0.05;
  private static final double LONG_FROM = 0.4;
  private static final double INDEX_PER_SHRINKAGE = 2.13;
  private static final double LONG_BOX_SHARE = 0.6;

  public LinearShrinkage {
    Args.within("mould length", mouldLengthMetres, 0.05, 1.5, "m");
    Args.require(
        driedLengthMetres > mouldLengthMetres / 2 && driedLengthMetres <= mouldLengthMetres,
        "dried length",
        Numbers.plain(driedLengthMetres) + " m",
        "must be at most the mould's "
            + Numbers.plain(mouldLengthMetres)
            + " m and above half of it (it is the length left, not the gap)");
  }

  /**
   * Makes the test from the gap that opened in the mould.
   *
   * @param mouldLengthMetres length of the mould, 0.05 to 1.5 m
   * @param gapMetres sum of all gaps and cracks, 0 to half the mould
   * @return the test
   */
  public static LinearShrinkage ofGap(double mouldLengthMetres, double gapMetres) {
    Args.notNegative("gap", gapMetres, "m");
    return new LinearShrinkage(mouldLengthMetres, mouldLengthMetres - gapMetres);
  }

  /**
   * Gives the linear shrinkage.
   *
   * @return a ratio of the wet length
   */
  public double ratio() {
    return ratio(Steps.none());
  }

  /**
   * As {@link #ratio()}, with its worked step.
   *
   * @param steps receives the worked step
   * @return a ratio of the wet length
   */
  @Calculation("materials.soil.linear_shrinkage")
  public double ratio(Steps steps) {
    return steps
        .step("LS", "linear shrinkage on the wet length")
        .formula("(L0 - L) / L0")
        .with("L0", mouldLengthMetres, "m")
        .with("L", driedLengthMetres, "m")
        .from(SOURCE)
        .gives((mouldLengthMetres - driedLengthMetres) / mouldLengthMetres, "");
  }

  /** Whether the mould is a long box filled at working moisture. */
  boolean longBox() {
    return mouldLengthMetres >= LONG_FROM;
  }

  @Override
  public String label() {
    return "linear shrinkage: "
        + Numbers.significant(ratio() * 100, 2)
        + " % in a mould of "
        + Numbers.significant(mouldLengthMetres * 1000, 4)
        + " mm";
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    return reading().likelihood();
  }

  /** What the bar tells of the index; a shrinkage of nothing is the least that a ruler shows. */
  IndexReading reading() {
    double share = longBox() ? LONG_BOX_SHARE : 1;
    double index = Math.max(ratio(), 0.0005 / mouldLengthMetres) * INDEX_PER_SHRINKAGE / share;
    return new IndexReading(
        StrictMath.log(index), longBox() ? 0.7 : 0.5, MISLEADS, 1 / 5.0);
  }

  @Override
  public List<String> remarks() {
    return longBox()
        ? List.of(
            "A long box is filled at working moisture; its shrinkage is not that of a short"
                + " mould at the liquid limit.")
        : List.of();
  }
}
