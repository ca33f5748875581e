package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Holding of a peg from the builder's own pull tests, on this ground, in the direction of the rope.
 *
 * <p>Used is the lower of the lowest pull and the 5 % value {@code mean - k s} with {@code k =
 * t(0.95, n - 1) sqrt(1 + 1 / n)}, divided by a factor, halved for wet or thawing ground.
 *
 * @param pulls pull at which each peg began to move, in newtons, 3 to 100 of them; each greater
 *     than 0
 * @param factor tested over allowed pull, 1.5 to 10
 * @param ground the ground on the day that counts
 */
public record PegTest(List<Double> pulls, double factor, Ground ground) {

  /** The least number of tests. */
  public static final int LEAST_TESTS = 3;

  /** Tested over allowed pull if nothing else is asked for: 2, common practice. */
  public static final double USUAL_FACTOR = 2;

  private static final int MOST_TESTS = 100;
  private static final Source CHARACTERISTIC =
      Source.fromMemory(
          "CEN", "EN 1990 Basis of structural design", "2002", "annex D, variance unknown");
  private static final Source SEASON =
      Source.found(
          "Danish building regulations",
          "BR18, guidance on transportable structures",
          "2018",
          "ground in thaw and the month after: about half");

  /** What goes with every pull test, made or still to be made. */
  public static final Caution CAUTION =
      Caution.of(
          Hazard.STRUCTURE,
          "A pull test holds for one soil on one day, one kind of peg, driven as it was and pulled"
              + " in the direction that it was pulled in. No standard gives a value for pegs"
              + " shorter than 80 cm in the ground or thinner than 30 mm.",
          "Ask for buried services before driving pegs. Pull-test them in the worst spot, along the"
              + " rope; halve for saturated or thawing ground.",
          SEASON);

  public PegTest {
    pulls = List.copyOf(pulls);
    Args.within("peg tests", pulls.size(), LEAST_TESTS, MOST_TESTS);
    pulls.forEach(pull -> Args.positive("peg test", pull, "N"));
    Args.within("tested over allowed pull", factor, 1.5, 10, "");
    double five = mean(pulls) - k(pulls.size()) * deviation(pulls);
    Args.agree(
        five > 0,
        "peg tests: given pulls with a mean of "
            + Numbers.significant(mean(pulls), 4)
            + " N and a scatter of "
            + Numbers.significant(deviation(pulls), 4)
            + " N, which leave nothing to rely on",
        "test more pegs, or longer ones");
  }

  /**
   * Reads pull tests.
   *
   * @param pulls pull at which each peg began to move, in newtons, 3 to 100 of them
   * @param factor tested over allowed pull, 1.5 to 10; 2 is usual
   * @param ground the ground on the day that counts
   * @return the test
   * @throws IllegalArgumentException if a number is out of range, or the pulls scatter too much
   */
  public static PegTest of(List<Double> pulls, double factor, Ground ground) {
    return new PegTest(pulls, factor, ground);
  }

  /**
   * Gives the factor k for the 5 % value with unknown variance.
   *
   * @param tests number of tests, 2 to 100
   * @return {@code t(0.95, n - 1) sqrt(1 + 1 / n)}
   * @throws IllegalArgumentException if the number is out of range
   */
  public static double k(int tests) {
    Args.within("tests", tests, 2, MOST_TESTS);
    return new TDistribution(tests - 1).inverseCumulativeProbability(0.95)
        * Math.sqrt(1 + 1.0 / tests);
  }

  /**
   * Gives the lowest pull.
   *
   * @return in newtons
   */
  public double lowest() {
    return pulls.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
  }

  /**
   * Computes the 5 % value of the pull.
   *
   * @return in newtons
   */
  public double characteristic() {
    return mean(pulls) - k(pulls.size()) * deviation(pulls);
  }

  /**
   * Computes what a peg may be asked to hold.
   *
   * @return in newtons
   */
  public double holding() {
    return holding(Steps.none());
  }

  /**
   * Computes what a peg may be asked to hold with the steps.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.anchor.peg")
  public double holding(Steps steps) {
    double mean = steps.step("x", "mean pull of the tests").gives(mean(pulls), "N");
    double deviation =
        steps.step("s", "standard deviation of the tests").gives(deviation(pulls), "N");
    double k =
        steps
            .step("k", "factor for the 5 % value")
            .from(CHARACTERISTIC)
            .note("from " + pulls.size() + " tests")
            .gives(k(pulls.size()), "");
    double lowest = steps.step("F_low", "lowest pull").gives(lowest(), "N");
    double five =
        steps
            .step("F_5", "5 % value of the pull")
            .formula("x - k * s")
            .with("x", mean, "N")
            .with("k", k, "")
            .with("s", deviation, "N")
            .from(CHARACTERISTIC)
            .gives(mean - k * deviation, "N");
    return steps
        .step("F_h", "holding of a peg")
        .formula("min(F_low, F_5) * c_g / f")
        .with("F_low", lowest, "N")
        .with("F_5", five, "N")
        .with("c_g", ground.factor(), "")
        .with("f", factor, "")
        .from(SEASON)
        .note("ground: " + ground.label())
        .gives(Math.min(lowest, five) * ground.factor() / factor, "N");
  }

  /**
   * Gives the caution that goes with a pull test.
   *
   * @return one soil, one day
   */
  public Caution caution() {
    return CAUTION;
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static double deviation(List<Double> values) {
    double mean = mean(values);
    double sum = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(sum / (values.size() - 1));
  }
}
