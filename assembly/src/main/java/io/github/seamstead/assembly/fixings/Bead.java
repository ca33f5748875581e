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
 * @param widthMetres diameter or width, in metres, 0.00001 to 10
 * @param depthMetres depth of a fillet, rectangle or film, in metres, 0.00001 to 10; the width for
 *     a round or half-round bead, which has no other measure
 */
public record Bead(BeadShape shape, double widthMetres, double depthMetres) {

  private static final double LEAST = 1e-5;
  private static final double GREATEST = 10;

  static final Source SECTIONS =
      Source.found(
          "sealant trade",
          "Cost for each metre of sealant",
          "",
          "rectangle W D, fillet W D / 2, half round pi / 8 W^2");

  public Bead {
    Args.within("width of the bead", widthMetres, LEAST, GREATEST, "m");
    Args.within("depth of the bead", depthMetres, LEAST, GREATEST, "m");
    boolean round = shape == BeadShape.ROUND || shape == BeadShape.HALF_ROUND;
    Args.require(
        !round || widthMetres == depthMetres,
        shape.label(),
        "two measures",
        "must have its diameter alone");
  }

  /**
   * Makes a round bead.
   *
   * @param diameterMetres in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if the diameter is out of range
   */
  public static Bead round(double diameterMetres) {
    return new Bead(BeadShape.ROUND, diameterMetres, diameterMetres);
  }

  /**
   * Makes a half-round bead.
   *
   * @param widthMetres its width, the diameter, in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if the width is out of range
   */
  public static Bead halfRound(double widthMetres) {
    return new Bead(BeadShape.HALF_ROUND, widthMetres, widthMetres);
  }

  /**
   * Makes a fillet.
   *
   * @param widthMetres one leg, in metres, 0.00001 to 10
   * @param depthMetres the other leg, in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static Bead fillet(double widthMetres, double depthMetres) {
    return new Bead(BeadShape.FILLET, widthMetres, depthMetres);
  }

  /**
   * Makes a filled joint, or a film on a lap: a maker's volume for each square metre, divided by a
   * square metre, is the depth of the film.
   *
   * @param widthMetres width of the joint or lap, in metres, 0.00001 to 10
   * @param depthMetres depth of the joint or film, in metres, 0.00001 to 10
   * @return the bead
   * @throws IllegalArgumentException if a measure is out of range
   */
  public static Bead rectangle(double widthMetres, double depthMetres) {
    return new Bead(BeadShape.RECTANGLE, widthMetres, depthMetres);
  }

  /**
   * Computes the cross-section.
   *
   * @return in square metres, which is cubic metres for each metre
   */
  public double areaSquareMetres() {
    return areaSquareMetres(Steps.none());
  }

  /**
   * Computes the cross-section with the steps.
   *
   * @param steps where the steps go
   * @return in square metres, which is cubic metres for each metre
   */
  @Calculation("assembly.fixings.bead")
  public double areaSquareMetres(Steps steps) {
    Steps.Entry step =
        steps
            .step("A", "cross-section of the " + shape.label())
            .formula(shape.formula())
            .with("w", widthMetres, "m");
    if (shape == BeadShape.FILLET || shape == BeadShape.RECTANGLE) {
      step = step.with("d", depthMetres, "m");
    }
    double area =
        switch (shape) {
          case ROUND -> Math.PI / 4 * widthMetres * widthMetres;
          case HALF_ROUND -> Math.PI / 8 * widthMetres * widthMetres;
          case FILLET -> widthMetres * depthMetres / 2;
          case RECTANGLE -> widthMetres * depthMetres;
        };
    return step.from(SECTIONS).gives(area, "m2");
  }

  /**
   * Computes the length that a cartridge gives, without waste.
   *
   * @param cartridgeCubicMetres content of a cartridge, in cubic metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the content is not positive
   */
  public double metresPerCartridge(double cartridgeCubicMetres) {
    return Args.positive("cartridge", cartridgeCubicMetres, "m3") / areaSquareMetres();
  }
}
