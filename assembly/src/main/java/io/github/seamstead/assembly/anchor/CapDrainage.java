package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * Whether a cap sheds its water. A hip is flatter than its faces, so the hip slope is judged:
 * {@code tan(hip) = tan(face) cos(pi / n)}.
 *
 * @param sides sides of the cap, 3 to {@link ShelterForm#MOST_SIDES}
 * @param faceSlope slope of a face, in radians, 0 or more and less than a right angle
 * @param flat width of a flat or slack part at the top, in metres, 0 if it comes to a point; 0 or
 *     more
 */
public record CapDrainage(int sides, double faceSlope, double flat) {

  /** The least slope of a roof membrane: a quarter inch in a foot. */
  public static final double LEAST_SLOPE = 0.25 / 12;

  /** The least slope of a tensioned sheet: 20 cm for each metre. */
  public static final double TENSIONED_SLOPE = 0.2;

  private static final Source MEMBRANE =
      Source.found("International Code Council", "International Building Code", "2012", "1507");
  private static final Source SHEET =
      Source.found("shade-sail trade", "Drainage of waterproof sheets", "", "20 cm for each metre");
  private static final Source GEOMETRY = Source.derived("hip of a regular pyramid");

  /** How the cap sheds water. */
  public enum Drains {
    /** A flat part, or a hip flatter than a roof membrane may be: water stands. */
    PONDS,
    /** Steeper than a membrane roof, flatter than a tensioned sheet: it must be kept taut. */
    ONLY_IF_TAUT,
    /** Steep enough for a tensioned sheet. */
    SHEDS
  }

  public CapDrainage {
    Args.within("sides of the cap", sides, 3, ShelterForm.MOST_SIDES);
    Args.within("face slope of the cap", Math.toDegrees(faceSlope), 0, 89.9, "deg");
    Args.notNegative("flat part of the cap", flat, "m");
  }

  /**
   * Judges a cap.
   *
   * @param sides sides of the cap, 3 to {@link ShelterForm#MOST_SIDES}
   * @param faceSlope slope of a face, in radians, less than a right angle
   * @param flat width of a flat or slack part at the top, in metres, 0 or more
   * @return the cap
   * @throws IllegalArgumentException if a number is out of range
   */
  public static CapDrainage of(int sides, double faceSlope, double flat) {
    return new CapDrainage(sides, faceSlope, flat);
  }

  /**
   * Computes the slope of a hip.
   *
   * @return in radians
   */
  public double hipSlope() {
    return hipSlope(Steps.none());
  }

  /**
   * Computes the slope of a hip with the steps.
   *
   * @param steps where the steps go
   * @return in radians
   */
  @Calculation("assembly.anchor.hip")
  public double hipSlope(Steps steps) {
    return steps
        .step("beta", "slope of a hip of the cap")
        .formula("atan(tan(theta) * cos(pi / n))")
        .with("theta", faceSlope, "rad")
        .with("n", sides, "")
        .from(GEOMETRY)
        .gives(StrictMath.atan(StrictMath.tan(faceSlope) * StrictMath.cos(Math.PI / sides)), "rad");
  }

  /**
   * Judges the drainage.
   *
   * @return whether water stands
   */
  public Drains drains() {
    double slope = StrictMath.tan(hipSlope());
    if (flat > 0 || slope < LEAST_SLOPE - 1e-12) {
      return Drains.PONDS;
    }
    return slope < TENSIONED_SLOPE - 1e-12 ? Drains.ONLY_IF_TAUT : Drains.SHEDS;
  }

  /**
   * Writes the judgement with its source.
   *
   * @return one sentence
   */
  public String text() {
    return switch (drains()) {
      case PONDS ->
          "Water stands on this cap, weighs it down and stretches it: give it a point and a hip"
              + " slope of at least 1 in 48 ("
              + MEMBRANE.citation()
              + "), better 1 in 5.";
      case ONLY_IF_TAUT ->
          "This cap drains only while it is taut: a tensioned sheet asks for 1 in 5 along its"
              + " hips ("
              + SHEET.citation()
              + ").";
      case SHEDS -> "This cap sheds water along its hips while it is taut; look after rain.";
    };
  }
}
