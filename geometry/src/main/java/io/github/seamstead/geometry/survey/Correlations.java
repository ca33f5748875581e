package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.List;

/** Which readings' errors look alike: residuals whose test statistics are strongly correlated. */
final class Correlations {

  /** From here on a test takes one for the other more often than people would guess. */
  private static final double ALIKE = 0.9;

  private Correlations() {}

  /** Lists the other readings that are correlated with the suspect one. O(m). */
  static List<ReadingResult> alike(Adjustment adjustment, ReadingResult suspect) {
    List<ReadingResult> results = new ArrayList<>();
    DesignRow own = new DesignRow(9);
    DesignRow other = new DesignRow(9);
    adjustment.readingRow(suspect.number() - 1, own);
    double u = suspect.reading().standardUncertainty();
    for (ReadingResult result : adjustment.readings()) {
      if (result.number() == suspect.number() || result.statistic().isEmpty()) {
        continue;
      }
      adjustment.readingRow(result.number() - 1, other);
      // Off the diagonal the residuals' cofactor is -a_i Q a_j'.
      double shared =
          own.form(adjustment.cofactors(), other) / (u * result.reading().standardUncertainty());
      double correlation = shared / Math.sqrt(suspect.redundancy() * result.redundancy());
      if (Math.abs(correlation) > ALIKE) {
        results.add(result);
      }
    }
    return results;
  }
}
