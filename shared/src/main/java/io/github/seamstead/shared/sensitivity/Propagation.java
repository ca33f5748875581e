package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Formula;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * How doubts of the inputs of one formula add up to the doubt of its result, as a sum of shares.
 *
 * <p>With {@code u_k} the standard uncertainty of an input and all inputs independent of one
 * another, {@code Z_k = (f(x_k + u_k) - f(x_k - u_k)) / 2} is what the input does to the result,
 * {@code u = sqrt(Z_1^2 + Z_2^2 + ..)} the standard uncertainty of the result and {@code Z_k^2 /
 * u^2} the share of the input. That is right where the formula is nearly straight over the doubt;
 * where it is not, samples of all inputs together tell: both are given.
 *
 * <p>Cost: one thousand evaluations of the formula.
 */
public final class Propagation {

  /** The law of propagation, with its contributions taken from two values of the formula. */
  public static final Source LAW =
      Source.fromMemory(
          "JCGM",
          "Guide to the expression of uncertainty in measurement, JCGM 100",
          "2008",
          "5.1.2, and 5.1.3 note 2");

  /** Propagation of whole distributions by samples. */
  public static final Source SAMPLES =
      Source.fromMemory(
          "JCGM", "Propagation of distributions using a Monte Carlo method, JCGM 101", "2008", "");

  private static final int DRAWS = 1000;
  private static final long SEED = 1;
  private static final String PURPOSE = "propagation";

  /** A range is taken to hold nine of ten values: 1.645 standard deviations to each side. */
  private static final double WIDTH = 3.29;

  private static final double END = 0.05;

  private final String symbol;
  private final String name;
  private final Formula formula;
  private final String unit;
  private final List<Term> terms = new ArrayList<>();

  /** An input; of an exact one low, value and high are equal. */
  private record Term(
      String symbol, String name, double low, double value, double high, double u, String unit) {

    boolean doubted() {
      return u > 0;
    }

    boolean isRange() {
      return high > low;
    }

    /**
     * The value at a normal score; a range ends at its ends, and nothing above zero falls below.
     */
    double at(double score) {
      if (!isRange()) {
        double moved = value + score * u;
        return value >= 0 ? Math.max(0, moved) : moved;
      }
      double toEnd = Math.min(1, Math.abs(score) / NormalScore.AT_95);
      return value + toEnd * ((score < 0 ? low : high) - value);
    }
  }

  /**
   * The doubt of a result.
   *
   * @param value the formula at the values of the inputs, in the result's unit
   * @param standardUncertainty of the result by the law of propagation, in the same unit
   * @param shares of each input in its square, by the input's symbol, in the order given; they add
   *     to 1, or are all 0 if no input moves the result to first order
   * @param sampled the value with the 5 % and the 95 % quantile of the samples
   */
  public record Doubt(
      double value, double standardUncertainty, Map<String, Double> shares, Range sampled) {

    public Doubt {
      shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
    }
  }

  private Propagation(String symbol, String name, Formula formula, String unit) {
    this.symbol = symbol;
    this.name = name;
    this.formula = formula;
    this.unit = unit;
  }

  /**
   * Starts with the formula.
   *
   * @param symbol the result's symbol
   * @param name the result's name in the trade's words
   * @param formula the right-hand side, in the notation of {@link Formula}
   * @param unit the result's unit, empty for a pure number
   * @return the propagation, still without inputs
   * @throws IllegalArgumentException if the formula does not follow the notation
   */
  public static Propagation of(String symbol, String name, String formula, String unit) {
    return new Propagation(symbol, name, Formula.parse(formula), unit);
  }

  /**
   * Adds an input without doubt.
   *
   * @param input its symbol in the formula
   * @param value finite, in its unit
   * @param inputUnit the unit, empty for a pure number
   * @return this propagation
   */
  public Propagation exact(String input, double value, String inputUnit) {
    Args.finite(input, value, inputUnit);
    terms.add(new Term(input, input, value, value, value, 0, inputUnit));
    return this;
  }

  /**
   * Adds a doubted input.
   *
   * @param input its symbol in the formula
   * @param words its name
   * @param value with its standard uncertainty, in its unit
   * @param inputUnit the unit, empty for a pure number
   * @return this propagation
   */
  public Propagation doubted(String input, String words, Uncertain value, String inputUnit) {
    double v = value.value();
    terms.add(new Term(input, words, v, v, v, value.standardUncertainty(), inputUnit));
    return this;
  }

  /**
   * Adds an input that is known as a range, taken to hold nine of ten values; what lies beyond
   * counts as the end.
   *
   * @param input its symbol in the formula
   * @param words its name
   * @param value the range, in its unit
   * @param inputUnit the unit, empty for a pure number
   * @return this propagation
   */
  public Propagation doubted(String input, String words, Range value, String inputUnit) {
    double u = (value.high() - value.low()) / WIDTH;
    terms.add(new Term(input, words, value.low(), value.likely(), value.high(), u, inputUnit));
    return this;
  }

  /**
   * Adds the doubts up.
   *
   * @param steps receives the value, what each input does, the sum, the shares and the samples; the
   *     last step is the 95 % quantile of the samples
   * @return the doubt of the result
   * @throws IllegalArgumentException if a symbol of the formula has no input
   */
  public Doubt write(Steps steps) {
    Map<String, Double> numbers = new HashMap<>();
    terms.forEach(term -> numbers.put(term.symbol, term.value));
    Steps.Entry first = steps.step(symbol, name).formula(formula.text());
    terms.forEach(term -> first.with(term.symbol, term.value, term.unit));
    double value = first.gives(formula.evaluate(numbers), unit);
    List<Term> doubted = terms.stream().filter(Term::doubted).toList();
    double[] parts = new double[doubted.size()];
    for (int k = 0; k < parts.length; k++) {
      parts[k] = part(k + 1, doubted.get(k), numbers, steps);
    }
    double all = sum(parts, steps);
    return new Doubt(value, all, shares(doubted, parts, all, steps), sampled(value, steps));
  }

  /** What one input does to the result. */
  private double part(int k, Term term, Map<String, Double> numbers, Steps steps) {
    steps.section("What the doubt of each number does");
    Steps.Entry own =
        steps.step("u_" + k, "standard uncertainty of " + term.symbol + ", " + term.name);
    if (term.isRange()) {
      own.formula("(x_high - x_low) / 3.29")
          .with("x_high", term.high, term.unit)
          .with("x_low", term.low, term.unit)
          .note("a range that holds nine of ten values is 2 × 1.645 = 3.29 of them wide");
    }
    own.gives(term.u, term.unit);
    Map<String, Double> moved = new HashMap<>(numbers);
    moved.put(term.symbol, term.value + term.u);
    double above = formula.evaluate(moved);
    moved.put(term.symbol, term.value - term.u);
    double below = formula.evaluate(moved);
    return steps
        .step("Z_" + k, "what " + term.name + " does to the result")
        .formula("(y_p - y_m) / 2")
        .with("y_p", above, unit)
        .with("y_m", below, unit)
        .note(
            "y_p, y_m: the formula with "
                + term.symbol
                + " one standard uncertainty higher and lower")
        .from(LAW)
        .gives((above - below) / 2, unit);
  }

  private double sum(double[] parts, Steps steps) {
    if (parts.length == 0) {
      return 0;
    }
    steps.section("Law of propagation: the squares add up");
    double squares = 0;
    StringBuilder text = new StringBuilder();
    Steps.Entry entry = steps.step("u", "standard uncertainty of the result");
    for (int k = 0; k < parts.length; k++) {
      squares += parts[k] * parts[k];
      text.append(k == 0 ? "Z_" : " + Z_").append(k + 1).append("^2");
      entry.with("Z_" + (k + 1), parts[k], unit);
    }
    return entry
        .formula("sqrt(" + text + ")")
        .from(LAW)
        .note("the doubts are taken to be independent of one another")
        .gives(Math.sqrt(squares), unit);
  }

  private Map<String, Double> shares(List<Term> doubted, double[] parts, double all, Steps steps) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (int k = 0; k < parts.length; k++) {
      double share = 0;
      if (all > 0) {
        share =
            steps
                    .step("S_" + (k + 1), "share of " + doubted.get(k).name)
                    .formula("100 * Z_" + (k + 1) + "^2 / u^2")
                    .with("Z_" + (k + 1), parts[k], unit)
                    .with("u", all, unit)
                    .gives(100 * (parts[k] * parts[k]) / (all * all), "%")
                / 100;
      }
      shares.put(doubted.get(k).symbol, share);
    }
    return shares;
  }

  /** Latin hypercube: each input takes each of its thousand slices once. */
  private Range sampled(double value, Steps steps) {
    double[] results = results();
    Arrays.sort(results);
    double low = Quantiles.of(results, END);
    double high = Quantiles.of(results, 1 - END);
    steps.section("Samples of all numbers together");
    steps
        .step("y_5", "5 % quantile of the samples")
        .note(
            DRAWS
                + " sets of numbers, each drawn from its own range; where the formula is nearly"
                + " straight it lies 1.645 u below the value")
        .from(SAMPLES)
        .gives(low, unit);
    steps.step("y_95", "95 % quantile of the samples").from(SAMPLES).gives(high, unit);
    return new Range(Math.min(low, value), value, Math.max(high, value));
  }

  private double[] results() {
    double[] slices = IntStream.range(0, DRAWS).mapToDouble(Propagation::middleOf).toArray();
    double[][] drawn = new double[terms.size()][0];
    for (int k = 0; k < drawn.length; k++) {
      Term term = terms.get(k);
      drawn[k] = new double[DRAWS];
      Arrays.fill(drawn[k], term.value);
      if (term.doubted()) {
        RandomGenerator random = Seeds.stream(SEED, PURPOSE, k);
        for (int i = 0; i < DRAWS; i++) {
          drawn[k][i] = term.at(slices[i]);
        }
        shuffle(drawn[k], random);
      }
    }
    double[] results = new double[DRAWS];
    Map<String, Double> numbers = new HashMap<>();
    for (int i = 0; i < DRAWS; i++) {
      for (int k = 0; k < drawn.length; k++) {
        numbers.put(terms.get(k).symbol, drawn[k][i]);
      }
      results[i] = formula.evaluate(numbers);
    }
    return results;
  }

  /** Normal score in the middle of a slice. */
  private static double middleOf(int slice) {
    return NormalScore.of((slice + 0.5) / DRAWS);
  }

  private static void shuffle(double[] values, RandomGenerator random) {
    for (int i = values.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      double kept = values[i];
      values[i] = values[j];
      values[j] = kept;
    }
  }
}
