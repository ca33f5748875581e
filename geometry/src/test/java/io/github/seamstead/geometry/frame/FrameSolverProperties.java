package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.frame.FrameSolution.Candidate;
import io.github.seamstead.geometry.frame.FrameSolution.Determination;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class FrameSolverProperties {

  @Provide
  Arbitrary<RegularPyramid> pyramids() {
    return Pyramids.any().map(RegularPyramid::whole);
  }

  /** Every one of the 81 independent pairs of measures, at every random pyramid. */
  @Property(tries = 80, seed = "2026110011")
  void everyPairOfMeasuresReturnsItsPyramid(@ForAll("pyramids") RegularPyramid pyramid) {
    Map<PyramidMeasure, Double> all = measuresOf(pyramid);
    int pairs = 0;
    for (PyramidMeasure first : PyramidMeasure.values()) {
      for (PyramidMeasure second : PyramidMeasure.values()) {
        if (first.compareTo(second) < 0 && first.isIndependentOf(second)) {
          pairs++;
          assertReturns(pyramid, Map.of(first, all.get(first), second, all.get(second)));
        }
      }
    }
    assertThat(pairs).isEqualTo(15 * 14 / 2 - 7 * 6 / 2 - 3 * 2 / 2);
  }

  private static void assertReturns(RegularPyramid pyramid, Map<PyramidMeasure, Double> given) {
    FrameSolution solution = FrameSolver.solve(pyramid.sides(), given);
    assertThat(solution.candidates()).as("%s: %s", given, solution.reasons()).isNotEmpty();
    Candidate nearest =
        solution.candidates().stream()
            .min(Comparator.comparingDouble(c -> apart(c.pyramid(), pyramid)))
            .orElseThrow();
    // Rounding of the measures grows by the magnification; near a touching point as its root.
    double grown = Math.min(1e-15 * nearest.magnification(), 1e-7);
    assertThat(apart(nearest.pyramid(), pyramid)).as("%s", given).isLessThan(20 * grown + 1e-13);
    for (Candidate candidate : solution.candidates()) {
      given.forEach(
          (measure, value) ->
              assertThat(measure.of(candidate.pyramid()))
                  .as("%s of %s", measure, candidate)
                  .isCloseTo(value, within(1e-11 * value)));
    }
  }

  private static double apart(RegularPyramid one, RegularPyramid other) {
    return Math.max(
        Math.abs(one.baseSide() / other.baseSide() - 1),
        Math.abs(one.apexHeight() / other.apexHeight() - 1));
  }

  private static Map<PyramidMeasure, Double> measuresOf(RegularPyramid pyramid) {
    Map<PyramidMeasure, Double> all = new EnumMap<>(PyramidMeasure.class);
    for (PyramidMeasure measure : PyramidMeasure.values()) {
      all.put(measure, measure.of(pyramid));
    }
    return all;
  }

  @Property(tries = 15, seed = "2026110012")
  void everyPairCanBeFollowedStepByStep(@ForAll("pyramids") RegularPyramid pyramid) {
    Map<PyramidMeasure, Double> all = measuresOf(pyramid);
    for (PyramidMeasure first : PyramidMeasure.values()) {
      for (PyramidMeasure second : PyramidMeasure.values()) {
        if (first.compareTo(second) < 0 && first.isIndependentOf(second)) {
          StepRecorder recorder = new StepRecorder();
          Map<PyramidMeasure, Double> given =
              Map.of(first, all.get(first), second, all.get(second));
          FrameSolution solution =
              FrameSolver.solve(pyramid.sides(), given, FrameSolver.DEFAULT_AGREEMENT, recorder);
          assertThat(solution).isEqualTo(FrameSolver.solve(pyramid.sides(), given));
          Candidate last = solution.candidates().get(solution.candidates().size() - 1);
          DerivationChecks.assertFollowsTo(
              recorder.derivation("geometry.frame.solve", "The pyramid"),
              last.pyramid().baseSide());
        }
      }
    }
  }

  @Property(tries = 100, seed = "2026110013")
  void allMeasuresTogetherAgree(@ForAll("pyramids") RegularPyramid pyramid) {
    FrameSolution solution = FrameSolver.solve(pyramid.sides(), measuresOf(pyramid));
    assertThat(solution.determination()).isEqualTo(Determination.ONE);
    assertThat(apart(solution.single(), pyramid)).isLessThan(1e-12);
    assertThat(solution.candidates().get(0).comparisons()).hasSize(13);
  }
}
