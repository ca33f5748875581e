package io.github.seamstead.examples.derivations;

import io.github.seamstead.shared.sensitivity.SensitivityRuns;

/** Which doubt moves a result. */
final class SensitivitySamples {

  private static final SensitivityRuns RUNS =
      new SensitivityRuns(
          new double[] {1.2, 3.4, 2.2, 0.7},
          new double[] {2.1, 0.4, 3.3, 1.9},
          new double[][] {{2.0, 0.9, 3.1, 1.6}},
          1);

  private SensitivitySamples() {}

  static void addTo(Samples to) {
    to.add("shared.sensitivity.first", steps -> RUNS.first(0, steps));
    to.add("shared.sensitivity.total", steps -> RUNS.total(0, steps));
  }
}
