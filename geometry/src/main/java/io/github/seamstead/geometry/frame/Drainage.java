package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * How a cover sheds water. Hips are flatter than faces, so laps and ponding are judged by the hips.
 *
 * @param faceSlope slope of a face's middle line, in radians; more than 0 and less than π/2
 * @param hipSlope slope of a hip, the least of the cover, in radians, less than {@code faceSlope};
 *     more than 0 and less than {@code faceSlope}
 */
public record Drainage(double faceSlope, double hipSlope) {

  /** The rise for which tables give the lap, in metres; any other follows in proportion. */
  public static final double TABLE_RISE = 0.1;

  private static final Source HEAD =
      Source.commonPractice(
          "a lap holds water back by its rise, so a flatter slope needs a longer lap");

  public Drainage {
    Args.between("face slope", faceSlope, 0, Math.PI / 2, "rad");
    Args.between("hip slope", hipSlope, 0, faceSlope, "rad");
  }

  /**
   * Reads the slopes off a pyramid's measures.
   *
   * @param measures the measures
   * @return its drainage
   */
  public static Drainage of(FrameMeasures measures) {
    return new Drainage(measures.faceSlope(), measures.hipSlope());
  }

  /**
   * Gives the length of lap, measured along a hip, that has a wanted rise; see {@link
   * #lapForRise(double, Steps)}.
   *
   * @param rise in metres, greater than 0
   * @return the lap along the hip, in metres
   * @throws IllegalArgumentException if the rise is not positive
   */
  public double lapForRise(double rise) {
    return lapForRise(rise, Steps.none());
  }

  /**
   * Gives the length of lap, measured along a hip, that has a wanted rise: {@code l = h /
   * sin(gamma)}. The last step is the lap.
   *
   * @param rise the height by which the upper edge of the lower sheet must stand above the lower
   *     edge of the upper one h, in metres, greater than 0
   * @param steps where the steps are written
   * @return the lap along the hip, in metres; a lap of this length anywhere else has more rise
   * @throws IllegalArgumentException if the rise is not positive
   */
  @Calculation("geometry.frame.lap")
  public double lapForRise(double rise, Steps steps) {
    Args.positive("rise of the lap", rise, "m");
    return steps
        .step("l", "lap along the hip")
        .formula("h / sin(gamma)")
        .with("h", rise, "m")
        .with("gamma", hipSlope, "rad")
        .from(HEAD)
        .gives(rise / StrictMath.sin(hipSlope), "m");
  }

  /**
   * Gives how far water falls along a hip for each metre in plan, {@code tan(gamma)}.
   *
   * @return the fall as a ratio
   */
  public double fallRatio() {
    return StrictMath.tan(hipSlope);
  }

  /**
   * Warns of slack cloth.
   *
   * @return the caution, with both slopes
   */
  public Caution caution() {
    return Caution.of(
        Hazard.STRUCTURE,
        "Water and snow lie longest along the hips, which slope "
            + Numbers.fixed(Math.toDegrees(hipSlope), 1)
            + "° where the faces slope "
            + Numbers.fixed(Math.toDegrees(faceSlope), 1)
            + "°; flat or slack cloth ponds, and a pond grows by its own weight.",
        "Keep the cover taut, judge laps by the hip slope, and clear snow early.",
        Source.commonPractice("ponding of fabric covers"));
  }
}
