package io.github.seamstead.geometry.frame;

import io.github.seamstead.geometry.frame.FrameSolution.Candidate;
import io.github.seamstead.geometry.frame.FrameSolution.Comparison;
import io.github.seamstead.geometry.frame.FrameSolution.Determination;
import io.github.seamstead.geometry.frame.Roots.Root;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the regular right pyramid with given measures.
 *
 * <p>Any two independent measures do ({@link PyramidMeasure#isIndependentOf}); each pair is solved
 * in closed form. Some pairs, such as slant height and volume, have two pyramids: both are given.
 * Further measures choose between two, and are held against the result. From three measures on the
 * pair that carries errors least is solved.
 *
 * <p>Cost: constant for two measures; with k measures O(k²) pairs are weighed.
 */
public final class FrameSolver {

  /** How far a further measure may lie from the pyramid's, relative: 0.5 %. */
  public static final double DEFAULT_AGREEMENT = 0.005;

  /** From here on a remark says that the measures barely determine the pyramid. */
  private static final double BARELY = 20;

  /** From here on rounding alone spoils the result. */
  private static final double HOPELESS = 1e9;

  private final int sides;
  private final Map<PyramidMeasure, Double> given;
  private final double agreement;

  private FrameSolver(int sides, Map<PyramidMeasure, Double> given, double agreement) {
    this.sides = RegularPolygon.requireSides(sides);
    this.given = new EnumMap<>(PyramidMeasure.class);
    given.forEach((measure, value) -> this.given.put(measure, requireValue(measure, value)));
    this.agreement = Args.between("agreement", agreement, 0, 1, "");
  }

  /**
   * Finds the pyramids with given measures, further measures agreeing to {@link
   * #DEFAULT_AGREEMENT}.
   *
   * @param sides the number of sides, 3 to 64
   * @param given the measures in their SI units, each greater than 0; slopes less than π/2, the
   *     apex angle less than 2π/sides
   * @return one pyramid, two, or none, and why
   * @throws IllegalArgumentException if a single value is outside its range
   */
  public static FrameSolution solve(int sides, Map<PyramidMeasure, Double> given) {
    return solve(sides, given, DEFAULT_AGREEMENT, Steps.none());
  }

  /**
   * Finds the pyramids with given measures, with the worked steps of the pair that was solved; the
   * last step is the base side of the last candidate.
   *
   * @param sides the number of sides, 3 to 64
   * @param given the measures in their SI units, each greater than 0; slopes less than π/2, the
   *     apex angle less than 2π/sides
   * @param agreement the greatest relative difference of a further measure from that of the
   *     pyramid, more than 0 and less than 1
   * @param steps where the steps are written
   * @return one pyramid, two, or none, and why
   * @throws IllegalArgumentException if a single value is outside its range
   */
  @Calculation("geometry.frame.solve")
  public static FrameSolution solve(
      int sides, Map<PyramidMeasure, Double> given, double agreement, Steps steps) {
    return new FrameSolver(sides, given, agreement).run(steps);
  }

  private double requireValue(PyramidMeasure measure, double value) {
    Args.positive(measure.label(), value, measure.unit());
    switch (measure) {
      case FACE_SLOPE, HIP_SLOPE ->
          Args.between(measure.label(), value, 0, Math.PI / 2, measure.unit());
      case APEX_ANGLE -> Args.between(measure.label(), value, 0, 2 * Math.PI / sides, "rad");
      default ->
          Args.within(
              measure.label(),
              value,
              RegularPolygon.LEAST_LENGTH
                  * RegularPolygon.LEAST_LENGTH
                  * RegularPolygon.LEAST_LENGTH,
              RegularPolygon.GREATEST_LENGTH
                  * RegularPolygon.GREATEST_LENGTH
                  * RegularPolygon.GREATEST_LENGTH,
              measure.unit());
    }
    return value;
  }

  /** Two measures and what they lead to. */
  private record Attempt(
      PyramidMeasure first, PyramidMeasure second, List<Candidate> candidates, String reason) {

    double magnification() {
      return candidates.stream()
          .mapToDouble(Candidate::magnification)
          .max()
          .orElse(Double.POSITIVE_INFINITY);
    }
  }

  private FrameSolution run(Steps steps) {
    List<Attempt> attempts = new ArrayList<>();
    List<PyramidMeasure> order =
        given.keySet().stream().sorted(Comparator.comparing(PyramidMeasure::kind)).toList();
    for (int i = 0; i < order.size(); i++) {
      for (int j = i + 1; j < order.size(); j++) {
        if (order.get(i).isIndependentOf(order.get(j))) {
          attempts.add(attempt(order.get(i), order.get(j), Steps.none()));
        }
      }
    }
    if (attempts.isEmpty()) {
      return tooFew();
    }
    Attempt best =
        attempts.stream()
            .filter(a -> !a.candidates().isEmpty())
            .min(Comparator.comparingDouble(Attempt::magnification))
            .orElse(attempts.get(0));
    if (steps.isRecording()) {
      best = attempt(best.first(), best.second(), steps);
    }
    return judge(best);
  }

  private Attempt attempt(PyramidMeasure first, PyramidMeasure second, Steps steps) {
    steps.section("Given");
    steps.step("n", "number of sides").gives(sides, "");
    double x = steps.step(first.symbol(), first.label()).gives(value(first), first.unit());
    double y = steps.step(second.symbol(), second.label()).gives(value(second), second.unit());
    steps.section("From " + first.label() + " and " + second.label());
    Roots roots = new PairSolver(sides, steps).solve(first, x, second, y);
    List<Candidate> candidates = new ArrayList<>();
    String reason = roots.reason();
    for (Root root : roots.roots()) {
      Optional<String> fault = fault(first, second, root);
      if (fault.isPresent()) {
        reason = fault.get();
        continue;
      }
      double side = side(root, steps);
      candidates.add(candidate(first, second, side, root));
    }
    candidates.sort(Comparator.comparingDouble(c -> c.pyramid().measures().faceSlope()));
    return new Attempt(first, second, candidates, reason);
  }

  private double side(Root root, Steps steps) {
    String number = root.number();
    return steps
        .step("side" + number, "base side of the pyramid found")
        .formula("2 * r" + number + " * tan(pi/n)")
        .with("r" + number, root.inradius(), "m")
        .with("n", sides, "")
        .from(FrameSources.POLYGON)
        .note("Its height is " + Numbers.significant(root.height(), 9) + " m.")
        .gives(2 * root.inradius() * Math.tan(Math.PI / sides), "m");
  }

  private Candidate candidate(PyramidMeasure first, PyramidMeasure second, double side, Root root) {
    RegularPyramid pyramid = RegularPyramid.ofBaseSideAndHeight(sides, side, root.height());
    List<Comparison> comparisons = new ArrayList<>();
    given.forEach(
        (measure, value) -> {
          if (measure != first && measure != second) {
            comparisons.add(new Comparison(measure, value, measure.of(pyramid)));
          }
        });
    return new Candidate(
        pyramid,
        root.touching()
            ? Double.POSITIVE_INFINITY
            : Sensitivity.magnification(first, second, pyramid),
        comparisons);
  }

  /** Why a root is no pyramid that can be built or trusted. */
  private Optional<String> fault(PyramidMeasure first, PyramidMeasure second, Root root) {
    String both = first.label() + " and " + second.label();
    double r = root.inradius();
    double side = 2 * r * Math.tan(Math.PI / sides);
    if (!(root.height() > 1e-6 * r)) {
      return Optional.of(both + ": with the values given the pyramid would be flat.");
    }
    if (!(r > 1e-6 * root.height())) {
      return Optional.of(both + ": with the values given the pyramid would have no base.");
    }
    if (!(inRange(side) && inRange(root.height()))) {
      return Optional.of(
          both + ": the pyramid would be smaller than 0.000001 m or larger than 1000000 m.");
    }
    double magnification =
        Sensitivity.magnification(
            first, second, RegularPyramid.ofBaseSideAndHeight(sides, side, root.height()));
    return !root.touching() && magnification > HOPELESS
        ? Optional.of(both + ": the values given barely determine a pyramid; give another measure.")
        : Optional.empty();
  }

  private static boolean inRange(double length) {
    return length >= RegularPolygon.LEAST_LENGTH && length <= RegularPolygon.GREATEST_LENGTH;
  }

  private FrameSolution judge(Attempt best) {
    if (best.candidates().isEmpty()) {
      return new FrameSolution(Determination.NONE, List.of(), List.of(best.reason()));
    }
    List<Candidate> agreeing =
        best.candidates().stream().filter(c -> worst(c) <= agreement).toList();
    if (agreeing.isEmpty()) {
      return new FrameSolution(Determination.NONE, List.of(), contradictions(best));
    }
    List<String> reasons = new ArrayList<>();
    for (Candidate candidate : agreeing) {
      if (candidate.magnification() > BARELY) {
        reasons.add(barely(best, candidate));
      }
    }
    if (agreeing.size() == 2) {
      reasons.add(0, both(best, agreeing));
      return new FrameSolution(Determination.TWO, agreeing, reasons);
    }
    return new FrameSolution(Determination.ONE, agreeing, reasons);
  }

  private static double worst(Candidate candidate) {
    return candidate.comparisons().stream()
        .mapToDouble(c -> Math.abs(c.relativeDifference()))
        .max()
        .orElse(0);
  }

  private List<String> contradictions(Attempt best) {
    Candidate nearest =
        best.candidates().stream()
            .min(Comparator.comparingDouble(FrameSolver::worst))
            .orElseThrow();
    List<String> reasons = new ArrayList<>();
    for (Comparison c : nearest.comparisons()) {
      if (Math.abs(c.relativeDifference()) > agreement) {
        reasons.add(SolverWords.contradiction(c, best.first(), best.second(), agreement));
      }
    }
    return reasons;
  }

  private static String both(Attempt best, List<Candidate> two) {
    return SolverWords.both(
        best.first(), best.second(), two.get(0).pyramid(), two.get(1).pyramid());
  }

  private static String barely(Attempt best, Candidate candidate) {
    return SolverWords.barely(best.first(), best.second(), candidate.magnification());
  }

  private FrameSolution tooFew() {
    PyramidMeasure first = given.keySet().stream().findFirst().orElse(PyramidMeasure.HEIGHT);
    List<String> reasons = new ArrayList<>();
    reasons.add(SolverWords.tooFew(given.keySet()));
    if (given.size() < 2) {
      return new FrameSolution(Determination.TOO_FEW, List.of(), reasons);
    }
    // All of one kind: a probe with any second measure shows whether they agree among themselves.
    PyramidMeasure probe =
        first.kind() == PyramidMeasure.Kind.PLAN ? PyramidMeasure.HEIGHT : PyramidMeasure.INRADIUS;
    PyramidMeasure[] order =
        first.kind() == PyramidMeasure.Kind.PLAN
            ? new PyramidMeasure[] {first, probe}
            : new PyramidMeasure[] {probe, first};
    Map<PyramidMeasure, Double> probed = new EnumMap<>(given);
    probed.put(probe, 1.0);
    FrameSolver solver = new FrameSolver(sides, probed, agreement);
    FrameSolution solution = solver.judge(solver.attempt(order[0], order[1], Steps.none()));
    if (solution.determination() == Determination.NONE) {
      reasons.addAll(solution.reasons());
      return new FrameSolution(Determination.NONE, List.of(), reasons);
    }
    return new FrameSolution(Determination.TOO_FEW, List.of(), reasons);
  }

  private double value(PyramidMeasure measure) {
    return Optional.ofNullable(given.get(measure)).orElseThrow();
  }
}
