package io.github.seamstead.geometry.tape;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;

/**
 * Accuracy class of a tape or rule: maximum permissible error {@code a + b L}, with {@code L} in
 * metres rounded up to the next whole metre, plus {@code c} where a measuring end is a face (a hook
 * or a block) and not a mark.
 *
 * <p>The class bounds the tape alone, under its reference temperature (20 °C) and pull.
 */
public enum TapeClass {
  /** Class I: (0.1 + 0.1 L) mm, end face 0.1 mm. */
  I(0.1e-3, 0.1e-3, 0.1e-3),
  /** Class II: (0.3 + 0.2 L) mm, end face 0.2 mm. */
  II(0.3e-3, 0.2e-3, 0.2e-3),
  /** Class III: (0.6 + 0.4 L) mm, end face 0.3 mm. */
  III(0.6e-3, 0.4e-3, 0.3e-3);

  /** Where the classes stand. */
  public static final Source SOURCE =
      Source.found(
          "European Union", "Directive 2014/32/EU on measuring instruments", "2014", "annex X");

  /**
   * Standard uncertainty of holding and reading a tape by hand at a node, in metres: common
   * practice, 1 mm.
   */
  public static final double HAND_UNCERTAINTY = 1e-3;

  private final double fixed;
  private final double perMetre;
  private final double endFace;

  TapeClass(double fixed, double perMetre, double endFace) {
    this.fixed = fixed;
    this.perMetre = perMetre;
    this.endFace = endFace;
  }

  /**
   * Gives the maximum permissible error between two marks, {@code a + b ceil(L)}.
   *
   * @param length the length measured, in metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  public double maximumPermissibleError(double length) {
    return fixed + perMetre * Math.ceil(Args.positive("length", length, "m"));
  }

  /**
   * Gives the maximum permissible error where one end is a face, {@code a + b ceil(L) + c}.
   *
   * @param length the length measured, in metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  public double maximumPermissibleErrorFromEndFace(double length) {
    return maximumPermissibleError(length) + endFace;
  }

  /**
   * Gives the standard uncertainty of one reading by hand: the permissible error as a rectangular
   * distribution (JCGM 100:2008, 4.3.7, from memory) and the hand, {@code u^2 = (a + b ceil(L))^2/3
   * + u_hand^2}.
   *
   * @param length the length measured, in metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  public double readingUncertainty(double length) {
    return StrictMath.hypot(maximumPermissibleError(length) / Math.sqrt(3), HAND_UNCERTAINTY);
  }
}
