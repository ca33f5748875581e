package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * What one test of a soil says alone, for a table of all tests side by side.
 *
 * @param label the test with its outcome
 * @param clay share of clay that it allows: 5 % quantile, mean, 95 % quantile
 * @param felt true if a hand feels plasticity in it; all such tests of a soil err together and
 *     count as one
 */
public record TestReading(String label, Range clay, boolean felt) {

  /**
   * Reads every test of a soil alone, and those that feel plasticity together.
   *
   * @param finding what the tests say together
   * @return one reading for each test in its order, then one for all that are felt if there are two
   *     or more; none for warning signs and harmful contents
   */
  public static List<TestReading> of(SoilFinding finding) {
    List<TestReading> readings = new ArrayList<>();
    List<SoilEvidence> together = new ArrayList<>();
    for (SoilEvidence test : finding.evidence()) {
      if (test instanceof WarningSign || test instanceof HarmfulContent) {
        continue;
      }
      boolean felt = SharedPlasticity.feels(test);
      readings.add(new TestReading(test.label(), clay(List.of(test)), felt));
      if (felt) {
        together.add(test);
      }
    }
    if (together.size() > 1) {
      readings.add(new TestReading("all tests by feel together", clay(together), true));
    }
    return List.copyOf(readings);
  }

  private static Range clay(List<SoilEvidence> tests) {
    return SoilAssessment.assess(tests).texture().clayRange();
  }
}
