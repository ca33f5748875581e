package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * Group symbol of the Unified Soil Classification System from sieve and limits. Only the part below
 * 75 mm is classified; organic groups are not told apart here.
 *
 * @param symbol for example {@code CL}, {@code SP}, {@code SW-SC}
 * @param withGravel whether a sand has 15 % of gravel or more, or {@code false} for other soils
 */
public record UnifiedGroup(String symbol, boolean withGravel) {

  /** The standard. */
  public static final Source SOURCE = Source.found("ASTM", "D2487", "2017", "classification");

  private static final double GRAVEL_FROM = 4.75e-3;
  private static final double FINES_TO = 0.075e-3;

  /**
   * Classifies a soil by its sieve sheet, if that goes from 4.75 mm, or from where all passes, to
   * 0.075 mm.
   *
   * @param sieve the sieve sheet
   * @param limits the limits, if measured
   * @return the group; empty if the sieves do not reach, or limits are needed and not measured
   */
  public static Optional<UnifiedGroup> of(SieveAnalysis sieve, Optional<ConsistencyLimits> limits) {
    GradingCurve curve = sieve.curve();
    List<SieveAnalysis.Sieve> sieves = sieve.sieves();
    double coarsest = sieves.get(0).opening();
    double finest = sieves.get(sieves.size() - 1).opening();
    double fines = curve.finer(FINES_TO);
    boolean reaches =
        (coarsest >= GRAVEL_FROM || curve.finer(coarsest) >= 1) && finest <= FINES_TO * 1.001;
    // Between 10 and 12 % of fines D10 lies below the finest sieve.
    boolean known = fines < 0.10 || fines > 0.12;
    if (!reaches || !known || (fines >= 0.05 && limits.isEmpty())) {
      return Optional.empty();
    }
    double gravel = 1 - curve.finer(GRAVEL_FROM);
    return Optional.of(
        fines > 0.12
            ? of(gravel, fines, 1, 1, limits)
            : of(gravel, fines, curve.uniformity(), curve.curvature(), limits));
  }

  /**
   * Classifies.
   *
   * @param gravelRatio share coarser than 4.75 mm, 0 to 1
   * @param finesRatio share finer than 0.075 mm, 0 to 1 less the gravel
   * @param uniformity Cu = D60/D10, 1 or more; has no effect from 12 % of fines
   * @param curvature Cc = D30^2/(D10 D60), above 0; has no effect from 12 % of fines
   * @param limits the limits, needed from 5 % of fines
   * @return the group
   * @throws IllegalArgumentException if a share is out of range or needed limits are missing
   */
  public static UnifiedGroup of(
      double gravelRatio,
      double finesRatio,
      double uniformity,
      double curvature,
      Optional<ConsistencyLimits> limits) {
    Args.within("gravel ratio", gravelRatio, 0, 1, "");
    Args.within("fines ratio", finesRatio, 0, 1 - gravelRatio, "");
    Args.require(
        finesRatio < 0.05 || limits.isPresent(),
        "limits: given none, needed from 5 % of fines to tell clay from silt");
    if (finesRatio >= 0.5) {
      return new UnifiedGroup(limits.orElseThrow().chart().symbol(), false);
    }
    boolean gravel = gravelRatio > (1 - finesRatio) / 2;
    String main = gravel ? "G" : "S";
    boolean with = !gravel && gravelRatio >= 0.15;
    if (finesRatio > 0.12) {
      return new UnifiedGroup(coarseWithFines(main, limits.orElseThrow().chart()), with);
    }
    Args.within("coefficient of uniformity", uniformity, 1, 1e6, "");
    Args.positive("coefficient of curvature", curvature, "");
    boolean well = uniformity >= (gravel ? 4 : 6) && curvature >= 1 && curvature <= 3;
    String clean = main + (well ? "W" : "P");
    if (finesRatio < 0.05) {
      return new UnifiedGroup(clean, with);
    }
    String fines = limits.orElseThrow().chart().symbol().startsWith("C") ? "C" : "M";
    return new UnifiedGroup(clean + "-" + main + fines, with);
  }

  private static String coarseWithFines(String main, PlasticityChart chart) {
    if (chart.symbol().equals("CL-ML")) {
      return main + "C-" + main + "M";
    }
    return main + (chart.symbol().startsWith("C") ? "C" : "M");
  }
}
