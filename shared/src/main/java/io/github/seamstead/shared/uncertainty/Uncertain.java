package io.github.seamstead.shared.uncertainty;

import io.github.seamstead.shared.check.Args;

/**
 * A value with its standard uncertainty, both in the same unit, which the holder states.
 *
 * <p>Arithmetic propagates to first order for independent operands: for {@code y = f(a, b)}, {@code
 * u(y)^2 = (df/da u(a))^2 + (df/db u(b))^2} (JCGM 100:2008, eq. 10). Operands that share a
 * measurement are not independent: {@code a.minus(a)} does not give certainty. Invariant: the value
 * is finite and the uncertainty is finite and not negative.
 *
 * <pre>{@code
 * Uncertain length = new Uncertain(5.2, 0.003);
 * length.standardUncertainty(); // 0.003
 * }</pre>
 *
 * @param value the best estimate, in the holder's unit; finite
 * @param standardUncertainty one standard deviation of the estimate, in the same unit, 0 or more;
 *     finite
 */
public record Uncertain(double value, double standardUncertainty) {

  /** Two-sided normal coverage factor for 95 %. */
  public static final double COVERAGE_95 = 1.959963984540054;

  public Uncertain {
    Args.finite("value", value, "");
    Args.notNegative("standard uncertainty", standardUncertainty, "");
  }

  /**
   * Makes a value without doubt.
   *
   * @param value any finite value, in the holder's unit
   * @return the value with zero uncertainty
   */
  public static Uncertain exact(double value) {
    return new Uncertain(value, 0);
  }

  /**
   * Adds an independent value: {@code u^2 = u(a)^2 + u(b)^2}.
   *
   * @param other the value to add, in the same unit
   * @return the sum
   */
  public Uncertain plus(Uncertain other) {
    return new Uncertain(
        value + other.value, StrictMath.hypot(standardUncertainty, other.standardUncertainty));
  }

  /**
   * Subtracts an independent value: {@code u^2 = u(a)^2 + u(b)^2}.
   *
   * @param other the value to subtract, in the same unit
   * @return the difference
   */
  public Uncertain minus(Uncertain other) {
    return new Uncertain(
        value - other.value, StrictMath.hypot(standardUncertainty, other.standardUncertainty));
  }

  /**
   * Multiplies by an independent value: {@code u^2 = (b u(a))^2 + (a u(b))^2}.
   *
   * @param other the factor, in any unit
   * @return the product, in the product of the units
   */
  public Uncertain times(Uncertain other) {
    return new Uncertain(
        value * other.value,
        StrictMath.hypot(other.value * standardUncertainty, value * other.standardUncertainty));
  }

  /**
   * Divides by an independent value: {@code u^2 = (u(a)/b)^2 + (a u(b)/b^2)^2}.
   *
   * @param other the divisor, not zero
   * @return the quotient, in the quotient of the units
   * @throws IllegalArgumentException if the divisor's value is zero
   */
  public Uncertain dividedBy(Uncertain other) {
    Args.require(other.value != 0, "divisor", "0", "must not be 0");
    double quotient = value / other.value;
    return new Uncertain(
        quotient,
        StrictMath.hypot(
            standardUncertainty / other.value, quotient * other.standardUncertainty / other.value));
  }

  /**
   * Multiplies by an exact factor.
   *
   * @param factor any finite number
   * @return the product
   */
  public Uncertain times(double factor) {
    return new Uncertain(value * factor, Math.abs(factor) * standardUncertainty);
  }

  /**
   * Gives the same doubt about another value: {@code value + z u}, held within limits.
   *
   * @param score z, how many standard uncertainties the value is moved; finite
   * @param least the least value that there can be, in the same unit
   * @param greatest the greatest value that there can be, in the same unit
   * @return the moved value
   * @throws IllegalArgumentException if the score is not finite
   */
  public Uncertain moved(double score, double least, double greatest) {
    if (score == 0) {
      return this;
    }
    double moved = value + Args.finite("score", score, "") * standardUncertainty;
    return new Uncertain(Math.max(least, Math.min(greatest, moved)), standardUncertainty);
  }

  /**
   * Gives the interval {@code value ± k u}.
   *
   * @param coverageFactor k, 0 or more; {@link #COVERAGE_95} for 95 % of a normal distribution
   * @return the range with the value as its likely member
   */
  public Range range(double coverageFactor) {
    double half = Args.notNegative("coverage factor", coverageFactor, "") * standardUncertainty;
    return new Range(value - half, value, value + half);
  }
}
