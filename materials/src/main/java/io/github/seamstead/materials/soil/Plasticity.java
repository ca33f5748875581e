package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.Optional;

/**
 * How plastic and how active the soil is.
 *
 * @param index plasticity index, 5 %, 50 % and 95 %, a ratio of water to dry mass
 * @param measured whether limits were measured; else the index is drawn from the clay share and the
 *     usual spread of activity
 * @param label {@code not plastic}, {@code low}, {@code medium}, {@code high} or {@code very high}:
 *     limits at 1, 10, 20 and 40 % (NHBC 4.2, from memory at its ends)
 * @param chart place in the plasticity chart, if limits were measured
 * @param activity plasticity index over clay share of the part below 0.002 mm; empty if limits were
 *     not measured
 */
public record Plasticity(
    Range index,
    boolean measured,
    String label,
    Optional<PlasticityChart> chart,
    Optional<Activity> activity) {

  /**
   * Activity with its doubt.
   *
   * @param value at the mean clay share
   * @param inactive probability of less than 0.75
   * @param normal probability of 0.75 to 1.25
   * @param active probability of more than 1.25
   */
  public record Activity(double value, double inactive, double normal, double active) {

    /**
     * Names the most probable class.
     *
     * @return {@code inactive}, {@code normal} or {@code active}
     */
    public String label() {
      if (active >= normal && active >= inactive) {
        return "active";
      }
      return normal >= inactive ? "normal" : "inactive";
    }
  }

  private static final double LIMIT_LOG_DEVIATION = 0.45;
  private static final double QUANTILE_95 = 1.6448536269514722;
  private static final double INDEX_DEVIATION = 0.02;

  /** Of soils; only pure swelling clays, which no builder digs, reach higher (common practice). */
  private static final double GREATEST_INDEX = 0.99;

  private static final double LEAST_INDEX = 1e-4;
  private static final int HALVINGS = 24;

  /** A logistic of this scale times the deviation follows the normal within 0.01. */
  private static final double SCALE = LIMIT_LOG_DEVIATION / 1.702;

  static Plasticity of(TexturePosterior texture, Optional<ConsistencyLimits> limits) {
    if (limits.isEmpty()) {
      Range index = drawn(texture);
      return new Plasticity(
          index, false, label(index.likely()), Optional.empty(), Optional.empty());
    }
    PlasticityChart chart = limits.get().chart();
    double index = chart.plasticityIndex();
    double reach = QUANTILE_95 * INDEX_DEVIATION;
    return new Plasticity(
        new Range(Math.max(0, index - reach), index, index + reach),
        true,
        label(index),
        Optional.of(chart),
        index > 0 && texture.clay().value() > 0.01
            ? Optional.of(activity(texture, index))
            : Optional.empty());
  }

  /**
   * Quantiles of the index over texture and activity, below {@link #GREATEST_INDEX}. The chance
   * that the index lies below {@code e^x} is the mean of {@code 1 / (1 + e^(L/s) e^(-x/s))} over
   * the texture, with {@code L} the logarithm of the index expected of it: {@code e^(L/s)} is
   * reckoned once for each texture, not at each halving.
   */
  private static Range drawn(TexturePosterior texture) {
    double[] odds =
        texture.values(
            (c, si, sa) ->
                StrictMath.exp(StrictMath.log(ConsistencyLimits.expectedIndex(c, si)) / SCALE));
    return new Range(
        quantile(texture, odds, 0.05), quantile(texture, odds, 0.5), quantile(texture, odds, 0.95));
  }

  private static double quantile(TexturePosterior texture, double[] odds, double level) {
    double low = StrictMath.log(LEAST_INDEX);
    double high = StrictMath.log(GREATEST_INDEX);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      double unit = StrictMath.exp(-middle / SCALE);
      double below = 0;
      for (int cell = 0; cell < odds.length; cell++) {
        below += texture.weight(cell) / (1 + odds[cell] * unit);
      }
      if (below < level) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return StrictMath.exp((low + high) / 2);
  }

  private static Activity activity(TexturePosterior texture, double index) {
    double inactive = texture.expectation((c, si, sa) -> index < 0.75 * c ? 1 : 0);
    double active = texture.expectation((c, si, sa) -> index > 1.25 * c ? 1 : 0);
    return new Activity(
        index / texture.clay().value(), inactive, Math.max(0, 1 - inactive - active), active);
  }

  private static String label(double index) {
    if (index < 0.01) {
      return "not plastic";
    }
    if (index < 0.10) {
      return "low";
    }
    if (index < 0.20) {
      return "medium";
    }
    return index < 0.40 ? "high" : "very high";
  }
}
