package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * A bead of adhesive or sealant. Its volume for each metre is its cross-section: one mm² is one ml
 * for each metre.
 *
 * @param shape the cross-section
 * @param width diameter or width, in metres, 0.00001 to 10
 * @param depth depth of a fillet, rectangle or film, in metres, 0.00001 to 10; the width for a
 *     round or half-round bead, which has no other measure
 */
public record Bead(BeadShape shape, double width, double depth) {

  private static final double LEAST = 1e-5;
  private static final double GREATEST = 10;

  static final Source SECTIONS =
      Source.found(
          "sealant trade",
          "Cost for each metre of sealant",
          "",
          "rectangle W D, fillet W D / 2, half round pi / 8 W^2");

  public Bead {
    Args.within("width of the bead", width, LEAST, GREATEST, "m");
    Args.within("depth of the bead", depth, LEAST, GREATEST, "m");
    boolean round = shape == BeadShape.ROUND || shape == BeadShape.HALF_ROUND;
    Args.require(
        !round || width == depth, shape.label(), "two measures", "must have its diameter alone");
  }

  /**
   * Makes a round bead.
   *
   * @param diameter in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if the diameter is out of range
   */
  public static Bead round(double diameter) {
    return new Bead(BeadShape.ROUND, diameter, diameter);
  }

  /**
   * Makes a half-round bead.
   *
   * @param width its width, the diameter, in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if the width is out of range
   */
  public static Bead halfRound(double width) {
    return new Bead(BeadShape.HALF_ROUND, width, width);
  }

  /**
   * Makes a fillet.
   *
   * @param width one leg, in metres, 0.00001 to 10
   * @param depth the other leg, in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static Bead fillet(double width, double depth) {
    return new Bead(BeadShape.FILLET, width, depth);
  }

  /**
   * Makes a filled joint, or a film on a lap: a maker's volume for each square metre, divided by a
   * square metre, is the depth of the film.
   *
   * @param width width of the joint or lap, in metres, 0.00001 to 10
   * @param depth depth of the joint or film, in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static Bead rectangle(double width, double depth) {
    return new Bead(BeadShape.RECTANGLE, width, depth);
  }

  /**
   * Computes the cross-section.
   *
   * @return in square metres, which is cubic metres for each metre
   */
  public double area() {
    return area(Steps.none());
  }

  /**
   * Computes the cross-section with the steps.
   *
   * @param steps where the steps go
   * @return in square metres, which is cubic metres for each metre
   */
  @Calculation("assembly.fixings.bead")
  public double area(Steps steps) {
    Steps.Entry step =
        steps
            .step("A", "cross-section of the " + shape.label())
            .formula(shape.formula())
            .with("w", width, "m");
    if (shape == BeadShape.FILLET || shape == BeadShape.RECTANGLE) {
      step = step.with("d", depth, "m");
    }
    double area =
        switch (shape) {
          case ROUND -> Math.PI / 4 * width * width;
          case HALF_ROUND -> Math.PI / 8 * width * width;
          case FILLET -> width * depth / 2;
          case RECTANGLE -> width * depth;
        };
    return step.from(SECTIONS).gives(area, "m2");
  }

  /**
   * Computes the length that a cartridge gives, without waste.
   *
   * @param cartridgeVolume content of a cartridge, in cubic metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the content is not positive
   */
  public double lengthPerCartridge(double cartridgeVolume) {
    return Args.positive("cartridge", cartridgeVolume, "m3") / area();
  }
}
