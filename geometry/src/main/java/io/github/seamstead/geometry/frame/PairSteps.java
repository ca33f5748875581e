package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;

/** Steps and sentences that all pairs of measures share. */
final class PairSteps {

  private final int n;
  private final Steps steps;

  PairSteps(int sides, Steps steps) {
    this.n = sides;
    this.steps = steps;
  }

  /** The leg of a right triangle, as a product so that nearly equal sides keep their digits. */
  double leg(String x, String name, String longer, double c, String shorter, double b) {
    return step(
        x,
        name,
        "sqrt((" + longer + " - " + shorter + ") * (" + longer + " + " + shorter + "))",
        "m",
        Math.sqrt((c - b) * (c + b)),
        in(longer, c, "m"),
        in(shorter, b, "m"));
  }

  record In(String symbol, double value, String unit) {}

  static In in(String symbol, double value, String unit) {
    return new In(symbol, value, unit);
  }

  double step(String symbol, String name, String formula, String unit, double value, In... inputs) {
    Steps.Entry entry = steps.step(symbol, name).formula(formula).from(FrameSources.PYRAMID);
    if (formula.contains("pi/n")) {
      entry.with("n", n, "");
    }
    for (In input : inputs) {
      entry.with(input.symbol(), input.value(), input.unit());
    }
    return entry.gives(value, unit);
  }

  static String tooShort(String what, double given, String than, double least) {
    return what
        + ": given "
        + text(given)
        + " m, must be more than the "
        + than
        + " of "
        + text(least)
        + " m.";
  }

  static String tooLarge(
      String what, double given, String unit, double most, String other, double length) {
    return what
        + ": given "
        + text(given)
        + " "
        + unit
        + ", can be at most "
        + text(most)
        + " "
        + unit
        + " with a "
        + other
        + " of "
        + text(length)
        + " m.";
  }

  static String text(double value) {
    return Numbers.significant(value, 7);
  }

  double product(double cover) {
    return step(
        "w",
        "cover factor, r s",
        "A_c / (n * tan(pi/n))",
        "m2",
        cover / (n * StrictMath.tan(Math.PI / n)),
        in("A_c", cover, "m2"));
  }
}
