package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * How repetition shortens the work, where two printed rules share one name.
 *
 * <p>With ratio r and {@code b = ln(r) / ln(2)}, the unit rule says that the n-th piece takes
 * {@code a n^b}; the cumulative-average rule says that the first n pieces take {@code a n^b} on
 * average. At 80 % the second piece takes 80 % of the first by the one and 60 % by the other.
 * {@link #rival()} gives the other rule, to be shown beside the one used.
 *
 * @param rule which rule
 * @param ratio what a doubling leaves, more than 0 and at most 1, such as 0.8
 */
public record LearningCurve(Rule rule, double ratio) {

  /** The two rules. */
  public enum Rule {
    /** The time of each single piece falls (Crawford). */
    UNIT("unit rule"),
    /** The average of all pieces so far falls (Wright 1936). */
    CUMULATIVE_AVERAGE("cumulative-average rule");

    private final String label;

    Rule(String label) {
      this.label = label;
    }

    /**
     * Names the rule as the book prints it.
     *
     * @return for example {@code unit rule}
     */
    public String label() {
      return label;
    }
  }

  /** The most pieces. */
  public static final int MOST_PIECES = 10_000_000;

  private static final Source WRIGHT =
      Source.fromMemory(
          "Wright",
          "Factors affecting the cost of airplanes",
          "1936",
          "J. Aeronautical Sciences 3");
  private static final Source CRAWFORD =
      Source.fromMemory("Crawford", "Learning curve, ship curve, ratios, related data", "1944", "");

  public LearningCurve {
    Args.within("learning ratio", ratio, Double.MIN_NORMAL, 1, "");
  }

  /**
   * Gives the rule that disagrees, at the same ratio.
   *
   * @return the other rule
   */
  public LearningCurve rival() {
    return new LearningCurve(rule == Rule.UNIT ? Rule.CUMULATIVE_AVERAGE : Rule.UNIT, ratio);
  }

  private double exponent() {
    return StrictMath.log(ratio) / StrictMath.log(2);
  }

  /**
   * Computes the time of one piece. Costs O(1).
   *
   * @param firstTime time of the first, in seconds, greater than 0
   * @param n which piece, 1 to {@link #MOST_PIECES}
   * @return in seconds
   * @throws IllegalArgumentException if a number is out of range
   */
  public double piece(double firstTime, int n) {
    Args.positive("time of the first piece", firstTime, "s");
    Args.within("piece", n, 1, MOST_PIECES);
    double b = exponent();
    return rule == Rule.UNIT
        ? firstTime * StrictMath.pow(n, b)
        : firstTime
            * (n * StrictMath.pow(n, b) - (n == 1 ? 0 : (n - 1) * StrictMath.pow(n - 1, b)));
  }

  /**
   * Computes the time of the first n pieces together.
   *
   * @param firstTime time of the first, in seconds, greater than 0
   * @param n how many, 1 to {@link #MOST_PIECES}
   * @return in seconds
   * @throws IllegalArgumentException if a number is out of range
   */
  public double total(double firstTime, int n) {
    return total(firstTime, n, Steps.none());
  }

  /**
   * Computes the time of the first n pieces together, with the steps. Costs O(n) by the unit rule,
   * O(1) by the other.
   *
   * @param firstTime time of the first, in seconds, greater than 0
   * @param n how many, 1 to {@link #MOST_PIECES}
   * @param steps where the steps go; by the unit rule one for each piece
   * @return in seconds
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("assembly.schedule.learning")
  public double total(double firstTime, int n, Steps steps) {
    Args.positive("time of the first piece", firstTime, "s");
    Args.within("pieces", n, 1, MOST_PIECES);
    double b =
        steps
            .step("b", "exponent of the learning curve")
            .formula("ln(r) / ln(2)")
            .with("r", ratio, "")
            .from(rule == Rule.UNIT ? CRAWFORD : WRIGHT)
            .note("rule used: " + rule.label() + "; its rival: " + rival().rule().label())
            .gives(exponent(), "");
    if (rule == Rule.CUMULATIVE_AVERAGE) {
      return steps
          .step("T", "time of all pieces")
          .formula("a * n * n^b")
          .with("a", firstTime, "s")
          .with("n", n, "")
          .with("b", b, "")
          .from(WRIGHT)
          .gives(firstTime * n * StrictMath.pow(n, b), "s");
    }
    double total = 0;
    for (int i = 1; i <= n; i++) {
      double next = total + firstTime * StrictMath.pow(i, b);
      if (steps.isRecording()) {
        steps
            .step("T", "time of the first " + i)
            .formula("T_before + a * i^b")
            .with("T_before", total, "s")
            .with("a", firstTime, "s")
            .with("i", i, "")
            .with("b", b, "")
            .from(CRAWFORD)
            .gives(next, "s");
      }
      total = next;
    }
    return total;
  }
}
