package io.github.seamstead.api.doubt;

import io.github.seamstead.shared.sensitivity.Quantiles;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Arrays;
import java.util.stream.DoubleStream;

/** The ends of a handful of values. */
record Spread(double low, double high, boolean open) {

  static final double LOW = 0.05;
  private static final double MIDDLE = 0.5;
  static final double HIGH = 0.95;

  /**
   * A pair counts to its ends and holds what is planned, more values count from 5 % to 95 %. Fewer
   * than were asked for leave it open.
   */
  static Spread of(double[] values, double planned, int asked) {
    boolean open = values.length < asked;
    if (asked <= 2 || values.length == 0) {
      double low = Arrays.stream(values).reduce(planned, Math::min);
      double high = Arrays.stream(values).reduce(planned, Math::max);
      return new Spread(low, high, open);
    }
    double[] sorted = sorted(values);
    return new Spread(Quantiles.of(sorted, LOW), Quantiles.of(sorted, HIGH), open);
  }

  static Range range(double[] values) {
    double[] sorted = sorted(values);
    return new Range(
        Quantiles.of(sorted, LOW), Quantiles.of(sorted, MIDDLE), Quantiles.of(sorted, HIGH));
  }

  static Influence.Halved halved(double[] before, double[] after) {
    Range was = range(before);
    Range is = range(after);
    return new Influence.Halved(was.low(), was.high(), is.low(), is.high());
  }

  private static double[] sorted(double[] values) {
    return DoubleStream.of(values).sorted().toArray();
  }
}
