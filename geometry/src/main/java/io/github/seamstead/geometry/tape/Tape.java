package io.github.seamstead.geometry.tape;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * What is known of a tape. Only what is given is corrected for.
 *
 * @param trueRatio true length over marked length under the reference conditions: 1.0003 for a 30 m
 *     tape that is 9 mm too long; from 0.9 to 1.1
 * @param expansion coefficient of thermal expansion, per kelvin, 0 for none; steel 11.6e-6; 0 to
 *     1e-3
 * @param referenceTemperature at which the true ratio holds, in degrees Celsius; -50 to 60
 * @param axialStiffness A E, cross-section times modulus of elasticity, in newtons, greater than 0;
 *     empty if the stretch is not corrected
 * @param referencePull at which the true ratio holds, in newtons, 0 or more
 * @param weightPerMetre in newtons per metre, 0 if the sag is not corrected; 0 or more
 */
public record Tape(
    double trueRatio,
    double expansion,
    double referenceTemperature,
    Optional<Double> axialStiffness,
    double referencePull,
    double weightPerMetre) {

  /** Reference temperature of the measuring instruments directive, in degrees Celsius. */
  public static final double REFERENCE_TEMPERATURE = 20;

  /** Usual reference pull of steel tapes, in newtons; 20 for glass fibre. */
  public static final double STEEL_PULL = 50;

  /** Thermal expansion of tape steel, per kelvin (common handbook value). */
  public static final double STEEL_EXPANSION = 11.6e-6;

  public Tape {
    Args.within("true over marked length", trueRatio, 0.9, 1.1, "");
    Args.within("thermal expansion", expansion, 0, 1e-3, "1/K");
    Args.within("reference temperature", referenceTemperature, -50, 60, "degC");
    axialStiffness.ifPresent(ae -> Args.positive("axial stiffness", ae, "N"));
    Args.notNegative("reference pull", referencePull, "N");
    Args.notNegative("weight per metre", weightPerMetre, "N/m");
  }

  /**
   * A tape that is taken as it is marked.
   *
   * @return a tape without any correction
   */
  public static Tape asMarked() {
    return new Tape(1, 0, REFERENCE_TEMPERATURE, Optional.empty(), STEEL_PULL, 0);
  }

  /**
   * The same tape, compared with a standard.
   *
   * @param markedLength what the tape shows, in metres, greater than 0
   * @param trueLength what it is, in metres, greater than 0
   * @return the new tape
   * @throws IllegalArgumentException if a length is not positive or they differ by more than a
   *     tenth
   */
  public Tape standardised(double markedLength, double trueLength) {
    Args.positive("marked length", markedLength, "m");
    Args.positive("true length", trueLength, "m");
    return new Tape(
        trueLength / markedLength,
        expansion,
        referenceTemperature,
        axialStiffness,
        referencePull,
        weightPerMetre);
  }

  /**
   * The same tape with its thermal expansion.
   *
   * @param coefficient per kelvin, 0 or more
   * @param reference the temperature at which it is true, in degrees Celsius
   * @return the new tape
   * @throws IllegalArgumentException if a value is out of range
   */
  public Tape expanding(double coefficient, double reference) {
    return new Tape(
        trueRatio, coefficient, reference, axialStiffness, referencePull, weightPerMetre);
  }

  /**
   * The same tape with its stretch.
   *
   * @param stiffness A E, in newtons, greater than 0
   * @param reference the pull at which it is true, in newtons, 0 or more
   * @return the new tape
   * @throws IllegalArgumentException if a value is out of range
   */
  public Tape stretching(double stiffness, double reference) {
    return new Tape(
        trueRatio,
        expansion,
        referenceTemperature,
        Optional.of(stiffness),
        reference,
        weightPerMetre);
  }

  /**
   * The same tape with its weight.
   *
   * @param weightPerLength 0 or more
   * @return the new tape
   * @throws IllegalArgumentException if the weight is negative
   */
  public Tape weighing(double weightPerLength) {
    return new Tape(
        trueRatio, expansion, referenceTemperature, axialStiffness, referencePull, weightPerLength);
  }

  /**
   * The same tape with its mass, which weighs by standard gravity.
   *
   * @param massPerLength 0 or more
   * @return the new tape
   * @throws IllegalArgumentException if the mass is negative
   */
  public Tape ofMass(double massPerLength) {
    return weighing(massPerLength * STANDARD_GRAVITY);
  }
}
