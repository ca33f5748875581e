package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * A laboratory sheet with clay, silt and sand in a named system of size limits.
 *
 * <p>Likelihood: clay and sand as reported are normal about what the texture predicts for the
 * sheet's own limits, where shares at other diameters follow the grain size curve of {@link
 * GrainSizes}; half of what that conversion moves is added to the standard uncertainty. With
 * probability 0.02 the sheet belongs to another sample and says nothing.
 *
 * @param reported the three shares as reported, in the sheet's own system
 * @param standardUncertainty standard uncertainty of each share, 0.01 to 0.2; 0.02 is usual for
 *     hydrometer and pipette sheets (common practice)
 * @param limits the sheet's system of size limits
 */
public record LaboratoryTexture(Texture reported, double standardUncertainty, SizeLimits limits)
    implements SoilEvidence {

  private static final double MISLEADS = 0.02;

  public LaboratoryTexture {
    Args.within("standard uncertainty of each share", standardUncertainty, 0.01, 0.2, "");
  }

  /**
   * Makes a sheet with the usual standard uncertainty of 0.02.
   *
   * @param reported the three shares as reported
   * @param limits the sheet's system
   * @return the evidence
   */
  public static LaboratoryTexture of(Texture reported, SizeLimits limits) {
    return new LaboratoryTexture(reported, 0.02, limits);
  }

  @Override
  public String label() {
    return "laboratory sheet ("
        + limits.label()
        + "): clay "
        + percent(reported.clayRatio())
        + ", silt "
        + percent(reported.siltRatio())
        + ", sand "
        + percent(reported.sandRatio());
  }

  @Override
  public List<Source> sources() {
    return List.of(limits.source());
  }

  @Override
  public TextureLikelihood likelihood() {
    double[] clayParts = GrainSizes.partsFiner(limits.clayLimit());
    double[] finesParts = GrainSizes.partsFiner(limits.siltLimit());
    double variance = standardUncertainty * standardUncertainty;
    return (clayRatio, siltRatio, sandRatio) -> {
      double clay = GrainSizes.finer(clayParts, clayRatio, siltRatio);
      double sand = 1 - GrainSizes.finer(finesParts, clayRatio, siltRatio);
      return (1 - MISLEADS)
              * Densities.normal(
                  reported.clayRatio() - clay,
                  reported.sandRatio() - sand,
                  variance + 0.25 * (clay - clayRatio) * (clay - clayRatio),
                  variance + 0.25 * (sand - sandRatio) * (sand - sandRatio))
          + 2 * MISLEADS;
    };
  }

  @Override
  public List<String> remarks() {
    return limits.equals(SizeLimits.USDA)
        ? List.of()
        : List.of(
            "The sheet's limits ("
                + limits.label()
                + ") are turned into USDA limits along a straight grain size curve; its doubt is"
                + " kept.");
  }

  private static String percent(double ratio) {
    return Numbers.fixed(ratio * 100, 0) + " %";
  }
}
