package io.github.seamstead.geometry.frame;

import io.github.seamstead.geometry.frame.FrameSolution.Candidate;
import io.github.seamstead.geometry.frame.FrameSolution.Comparison;
import io.github.seamstead.geometry.frame.Roots.Root;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Two measures and the pyramids they lead to.
 *
 * @param first the measure of the earlier kind
 * @param second the measure of the later kind
 * @param candidates the pyramids, flattest first
 * @param reason why there is none
 */
record PairAttempt(
    PyramidMeasure first, PyramidMeasure second, List<Candidate> candidates, String reason) {

  /** From here on rounding alone spoils the result. */
  private static final double HOPELESS = 1e9;

  /** A pyramid flatter or steeper than this is none. */
  private static final double LEAST_RATIO = 1e-6;

  static PairAttempt of(
      int sides,
      Map<PyramidMeasure, Double> given,
      PyramidMeasure first,
      PyramidMeasure second,
      Steps steps) {
    steps.section("Given");
    steps.step("n", "number of sides").gives(sides, "");
    double x = steps.step(first.symbol(), first.label()).gives(value(given, first), first.unit());
    double y =
        steps.step(second.symbol(), second.label()).gives(value(given, second), second.unit());
    steps.section("From " + first.label() + " and " + second.label());
    Roots roots = new PairSolver(sides, steps).solve(first, x, second, y);
    List<FrameMeasures> found = new ArrayList<>();
    List<Candidate> candidates = new ArrayList<>();
    String reason = roots.reason();
    for (Root root : roots.roots()) {
      Optional<String> fault = fault(sides, root);
      if (fault.isPresent()) {
        reason = both(first, second) + fault.get();
        continue;
      }
      FrameMeasures measures =
          RegularPyramid.ofBaseSideAndHeight(sides, side(sides, root, steps), root.height())
              .measures();
      double magnification =
          root.touching()
              ? Double.POSITIVE_INFINITY
              : Sensitivity.magnification(first, second, measures);
      if (magnification > HOPELESS && !root.touching()) {
        reason =
            both(first, second)
                + "the values given barely determine a pyramid; give another measure.";
        continue;
      }
      found.add(measures);
      candidates.add(
          new Candidate(
              measures.pyramid(), magnification, compare(given, first, second, measures)));
    }
    if (found.size() == 2 && found.get(0).faceSlope() > found.get(1).faceSlope()) {
      Collections.reverse(candidates);
    }
    return new PairAttempt(first, second, List.copyOf(candidates), reason);
  }

  private static double value(Map<PyramidMeasure, Double> given, PyramidMeasure measure) {
    return Optional.ofNullable(given.get(measure)).orElseThrow();
  }

  private static String both(PyramidMeasure first, PyramidMeasure second) {
    return first.label() + " and " + second.label() + ": ";
  }

  /** Why a root is no pyramid that can be built. */
  private static Optional<String> fault(int sides, Root root) {
    double r = root.inradius();
    if (!(root.height() > LEAST_RATIO * r)) {
      return Optional.of("with the values given the pyramid would be flat.");
    }
    if (!(r > LEAST_RATIO * root.height())) {
      return Optional.of("with the values given the pyramid would have no base.");
    }
    boolean inRange = inRange(2 * r * StrictMath.tan(Math.PI / sides)) && inRange(root.height());
    return inRange
        ? Optional.empty()
        : Optional.of("the pyramid would be smaller than 0.000001 m or larger than 1000000 m.");
  }

  private static boolean inRange(double length) {
    return length >= RegularPolygon.LEAST_LENGTH && length <= RegularPolygon.GREATEST_LENGTH;
  }

  private static double side(int sides, Root root, Steps steps) {
    String number = root.number();
    return steps
        .step("side" + number, "base side of the pyramid found")
        .formula("2 * r" + number + " * tan(pi/n)")
        .with("r" + number, root.inradius(), "m")
        .with("n", sides, "")
        .from(FrameSources.POLYGON)
        .note("Its height is " + Numbers.significant(root.height(), 9) + " m.")
        .gives(2 * root.inradius() * StrictMath.tan(Math.PI / sides), "m");
  }

  private static List<Comparison> compare(
      Map<PyramidMeasure, Double> given,
      PyramidMeasure first,
      PyramidMeasure second,
      FrameMeasures measures) {
    List<Comparison> comparisons = new ArrayList<>();
    given.forEach(
        (measure, value) -> {
          if (measure != first && measure != second) {
            comparisons.add(new Comparison(measure, value, measure.read(measures)));
          }
        });
    return comparisons;
  }

  static List<Comparison> disagreeing(Candidate candidate, double agreement) {
    return candidate.comparisons().stream()
        .filter(c -> !(Math.abs(c.relativeDifference()) <= agreement))
        .toList();
  }

  /** How many further measures the best candidate contradicts. */
  int disagreeing(double agreement) {
    return candidates.stream()
        .mapToInt(c -> disagreeing(c, agreement).size())
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** The greatest of the candidates. */
  double magnification() {
    return candidates.stream()
        .mapToDouble(Candidate::magnification)
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
