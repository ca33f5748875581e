package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * The results of a model at the points of a design, and the indices that follow from them.
 *
 * <p>With f the model, m its mean and V its variance, over N points and the two samples that the
 * index compares, so that their chance spread cancels:
 *
 * <pre>
 * S_i = sum (f(B) - m) (f(AB_i) - f(A)) / (N V)
 * T_i = sum (f(A) - f(AB_i))^2 / (2 N V)
 * </pre>
 *
 * <p>Both are exactly 0 for a group that does nothing. Standard errors are by bootstrap over the
 * points, from the seed; points in Latin hypercubes scatter less than that, so they are cautious.
 */
public final class SensitivityRuns {

  /** The estimator of the total index, which has no negative values. */
  public static final Source JANSEN =
      Source.fromMemory(
          "M. J. W. Jansen",
          "Analysis of variance designs for model output",
          "1999",
          "Computer Physics Communications 117");

  /** The estimator of the first-order index, and why to take that of the total index. */
  public static final Source SALTELLI =
      Source.fromMemory(
          "A. Saltelli and others",
          "Variance based sensitivity analysis of model output. Design and estimator for the total"
              + " sensitivity index",
          "2010",
          "Computer Physics Communications 181, table 2");

  private static final int RESAMPLES = 200;
  private static final String PURPOSE = "bootstrap";

  private final double[] a;
  private final double[] b;
  private final double[][] mixed;
  private final long seed;

  /**
   * Takes the results.
   *
   * @param a the model at the points of A, 2 or more, finite
   * @param b the model at the points of B, as many
   * @param mixed the model at the points of A with each group from B: one row for each group
   * @param seed the seed of the bootstrap
   * @throws IllegalArgumentException if the counts differ or a result is not finite
   */
  public SensitivityRuns(double[] a, double[] b, double[][] mixed, long seed) {
    Args.within("points", a.length, 2, 1_000_000);
    Args.require(
        a.length == b.length, "points of B", Integer.toString(b.length), "must be " + a.length);
    this.a = finite(a);
    this.b = finite(b);
    this.mixed = new double[mixed.length][];
    for (int i = 0; i < mixed.length; i++) {
      Args.require(
          mixed[i].length == a.length,
          "points of a group",
          Integer.toString(mixed[i].length),
          "must be " + a.length);
      this.mixed[i] = finite(mixed[i]);
    }
    this.seed = seed;
  }

  private static double[] finite(double[] values) {
    for (double value : values) {
      Args.finite("result of the model", value, "");
    }
    return values.clone();
  }

  /**
   * Gives the mean over both samples.
   *
   * @return in the unit of the result
   */
  public double mean() {
    return (Arrays.stream(a).sum() + Arrays.stream(b).sum()) / (a.length + b.length);
  }

  /**
   * Gives the variance over both samples: {@code V = sum (f - m)^2 / (2 N)}.
   *
   * @return in the square of the unit of the result, 0 or more
   */
  public double variance() {
    return variance(a, b, all());
  }

  private int[] all() {
    int[] all = new int[a.length];
    Arrays.setAll(all, i -> i);
    return all;
  }

  /** The mean over two samples, at some of the points. */
  private static double mean(double[] one, double[] other, int[] points) {
    double sum = 0;
    for (int i : points) {
      sum += one[i] + other[i];
    }
    return sum / (2 * points.length);
  }

  /** The variance over two samples, at some of the points. */
  private static double variance(double[] one, double[] other, int[] points) {
    double mean = mean(one, other, points);
    double sum = 0;
    for (int i : points) {
      sum += (one[i] - mean) * (one[i] - mean) + (other[i] - mean) * (other[i] - mean);
    }
    return sum / (2 * points.length);
  }

  /** The mean square of the difference of two results, at some of the points. */
  private static double apart(double[] one, double[] other, int[] points) {
    double sum = 0;
    for (int i : points) {
      sum += (one[i] - other[i]) * (one[i] - other[i]);
    }
    return sum / points.length;
  }

  /** The mean of {@code (f(B) - m) (f(AB) - f(A))}, at some of the points. */
  private double together(double[] mix, int[] points) {
    double mean = mean(b, mix, points);
    double sum = 0;
    for (int i : points) {
      sum += (b[i] - mean) * (mix[i] - a[i]);
    }
    return sum / points.length;
  }

  /**
   * Tells whether the result moves at all.
   *
   * @return true if its variance is above the rounding of its mean
   */
  public boolean moves() {
    return Math.sqrt(variance()) > 1e-9 * Math.max(1e-12, Math.abs(mean()));
  }

  /**
   * Gives the first-order index of a group.
   *
   * @param group the group, from 0
   * @param steps receives the mean product, the variance and, last, the index
   * @return the index; 0 if the result does not move
   */
  @Calculation("shared.sensitivity.first")
  public double first(int group, Steps steps) {
    double variance = variance(b, mixed[group], all());
    if (!moves() || variance <= 0) {
      return 0;
    }
    double together = together(mixed[group], all());
    return steps
        .step("S", "first-order index")
        .formula("c / V")
        .with("c", product(together, steps), "")
        .with("V", shown(variance, steps), "")
        .from(SALTELLI)
        .gives(together / variance, "");
  }

  /**
   * Gives the total index of a group.
   *
   * @param group the group, from 0
   * @param steps receives the variance, the mean square and, last, the index
   * @return the index, 0 or more; 0 if the result does not move
   */
  @Calculation("shared.sensitivity.total")
  public double total(int group, Steps steps) {
    double variance = variance(a, mixed[group], all());
    if (!moves() || variance <= 0) {
      return 0;
    }
    double apart = apart(a, mixed[group], all());
    return steps
        .step("T", "total index")
        .formula("d_A / (2 * V)")
        .with("d_A", square(apart, steps), "")
        .with("V", shown(variance, steps), "")
        .from(JANSEN)
        .gives(apart / (2 * variance), "");
  }

  private static double shown(double variance, Steps steps) {
    return steps
        .step("V", "variance of the result over the two samples compared")
        .note("mean square of the result less its mean, in the square of its unit")
        .gives(variance, "");
  }

  private static double square(double apart, Steps steps) {
    return steps
        .step("d_A", "mean square of the difference of two runs")
        .note("where only the group differs")
        .gives(apart, "");
  }

  private static double product(double together, Steps steps) {
    return steps
        .step("c", "mean product of a run less the mean, and what the group moves another by")
        .note("where only the group is the same")
        .gives(together, "");
  }

  /**
   * Gives the indices of all groups with their standard errors.
   *
   * @return one for each group; all 0 if the result does not move
   */
  public List<SensitivityIndex> indices() {
    int[][] resamples = resamples();
    List<SensitivityIndex> indices = new ArrayList<>();
    for (int group = 0; group < mixed.length; group++) {
      double[] firsts = new double[RESAMPLES];
      double[] totals = new double[RESAMPLES];
      for (int r = 0; r < RESAMPLES && moves(); r++) {
        double second = variance(b, mixed[group], resamples[r]);
        double third = variance(a, mixed[group], resamples[r]);
        if (second > 0 && third > 0) {
          firsts[r] = together(mixed[group], resamples[r]) / second;
          totals[r] = apart(a, mixed[group], resamples[r]) / (2 * third);
        }
      }
      indices.add(
          new SensitivityIndex(
              new Uncertain(first(group, Steps.none()), deviation(firsts)),
              new Uncertain(total(group, Steps.none()), deviation(totals))));
    }
    return List.copyOf(indices);
  }

  private int[][] resamples() {
    RandomGenerator random = Seeds.stream(seed, PURPOSE, 0);
    int[][] resamples = new int[RESAMPLES][a.length];
    for (int[] resample : resamples) {
      Arrays.setAll(resample, i -> random.nextInt(a.length));
    }
    return resamples;
  }

  private static double deviation(double[] values) {
    double mean = Arrays.stream(values).average().orElse(0);
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum / (values.length - 1));
  }
}
