package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Residuals, redundancy numbers {@code r = 1 - p a Q a'}, standardised residuals and minimal
 * detectable errors. O(1) per reading, as a row has at most nine entries.
 */
final class ReadingTests {

  private ReadingTests() {}

  static List<ReadingResult> of(
      NetworkModel model,
      GaussNewton.Solution solution,
      List<Reading> readings,
      double scale,
      Optional<Double> critical) {
    double shift =
        CriticalValues.noncentrality(CriticalValues.READING_SIGNIFICANCE, CriticalValues.POWER);
    DesignRow row = new DesignRow(model.mostPerObservation());
    List<ReadingResult> results = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      double residual = -model.evaluate(i, solution.unknowns(), row);
      double explained = model.weight(i) * row.form(solution.cofactors(), row);
      double redundancy = Math.min(Math.max(1 - explained, 0), 1);
      Optional<Double> statistic = Optional.empty();
      Optional<Double> detectable = Optional.empty();
      boolean suspect = false;
      if (redundancy > ReadingResult.LEAST_REDUNDANCY) {
        double spread = scale * reading.standardUncertainty();
        // All residuals zero with an estimated scale: nothing deviates.
        double standardised = scale > 0 ? residual / (spread * Math.sqrt(redundancy)) : 0;
        statistic = Optional.of(standardised);
        detectable = Optional.of(shift * spread / Math.sqrt(redundancy));
        suspect = critical.isPresent() && Math.abs(standardised) > critical.get();
      }
      results.add(
          new ReadingResult(
              i + 1,
              reading,
              reading.value() + residual,
              residual,
              redundancy,
              statistic,
              detectable,
              suspect,
              scale));
    }
    return List.copyOf(results);
  }
}
