package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * What one test of a soil says alone, for a table of all tests side by side.
 *
 * @param label the test with its outcome
 * @param clay share of clay that it allows: 5 % quantile, mean, 95 % quantile
 * @param plastic true if it tells plasticity, felt by hand or measured as limits or shrinkage; all
 *     such tests of a soil err together by the minerals of its clay, so each further one tells less
 */
public record TestReading(String label, Range clay, boolean plastic) {

  /**
   * Reads every test of a soil alone, and those that tell plasticity together.
   *
   * @param finding what the tests say together
   * @return one reading for each test in its order, then one for all that tell plasticity if there
   *     are two or more; none for warning signs and harmful contents
   */
  public static List<TestReading> of(SoilFinding finding) {
    List<TestReading> readings = new ArrayList<>();
    List<SoilEvidence> together = new ArrayList<>();
    for (SoilEvidence test : finding.evidence()) {
      if (test instanceof WarningSign || test instanceof HarmfulContent) {
        continue;
      }
      boolean plastic = SharedPlasticity.shares(test);
      readings.add(new TestReading(test.label(), clay(List.of(test)), plastic));
      if (plastic) {
        together.add(test);
      }
    }
    if (together.size() > 1) {
      readings.add(new TestReading("all tests of plasticity together", clay(together), true));
    }
    return List.copyOf(readings);
  }

  private static Range clay(List<SoilEvidence> tests) {
    return SoilAssessment.texture(tests).clayRange();
  }
}
