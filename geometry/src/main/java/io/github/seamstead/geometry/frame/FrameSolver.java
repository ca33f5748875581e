package io.github.seamstead.geometry.frame;

import io.github.seamstead.geometry.frame.FrameSolution.Candidate;
import io.github.seamstead.geometry.frame.FrameSolution.Determination;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the regular right pyramid with given measures.
 *
 * <p>Any two independent measures do ({@link PyramidMeasure#isIndependentOf}); each pair is solved
 * in closed form. Some pairs, such as slant height and volume, have two pyramids: both are given.
 * Further measures choose between two, and are held against the result. From three measures on the
 * pair that agrees with most of the others, and of those the one that carries errors least, is
 * solved; so one wrong measure among four is named.
 *
 * <p>Cost: constant for two measures; with k measures O(k²) pairs are weighed.
 *
 * <pre>{@code
 * Map<PyramidMeasure, Double> taped =
 *     Map.of(PyramidMeasure.BASE_SIDE, 1.5, PyramidMeasure.HIP_EDGE, 2.5);
 * FrameSolution solution = FrameSolver.solve(6, taped);
 * double height = solution.single().measures().apexHeight(); // 2.0 by 3, 4, 5
 * }</pre>
 */
public final class FrameSolver {

  /** How far a further measure may lie from the pyramid's, relative: 0.5 %. */
  public static final double DEFAULT_AGREEMENT = 0.005;

  /** From here on a remark says that the measures barely determine the pyramid. */
  private static final double BARELY = 20;

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
    double dimension =
        switch (measure.unit()) {
          case "m2" -> 2;
          case "m3" -> 3;
          default -> 1;
        };
    double greatest =
        switch (measure) {
          case FACE_SLOPE, HIP_SLOPE -> Math.PI / 2;
          case APEX_ANGLE -> 2 * Math.PI / sides;
          default -> StrictMath.pow(RegularPolygon.GREATEST_LENGTH, dimension);
        };
    return Args.between(measure.label(), value, 0, greatest, measure.unit());
  }

  private FrameSolution run(Steps steps) {
    List<PairAttempt> attempts = new ArrayList<>();
    List<PyramidMeasure> order =
        given.keySet().stream().sorted(Comparator.comparing(PyramidMeasure::kind)).toList();
    for (int i = 0; i < order.size(); i++) {
      for (int j = i + 1; j < order.size(); j++) {
        if (order.get(i).isIndependentOf(order.get(j))) {
          attempts.add(PairAttempt.of(sides, given, order.get(i), order.get(j), Steps.none()));
        }
      }
    }
    if (attempts.isEmpty()) {
      return tooFew();
    }
    PairAttempt best =
        attempts.stream()
            .filter(a -> !a.candidates().isEmpty())
            .min(
                Comparator.comparingInt((PairAttempt a) -> a.disagreeing(agreement))
                    .thenComparingDouble(PairAttempt::magnification))
            .orElse(attempts.get(0));
    if (steps.isRecording()) {
      best = PairAttempt.of(sides, given, best.first(), best.second(), steps);
    }
    return judge(best);
  }

  private FrameSolution judge(PairAttempt best) {
    if (best.candidates().isEmpty()) {
      return new FrameSolution(Determination.NONE, List.of(), List.of(best.reason()));
    }
    List<Candidate> agreeing =
        best.candidates().stream()
            .filter(c -> PairAttempt.disagreeing(c, agreement).isEmpty())
            .toList();
    if (agreeing.isEmpty()) {
      return new FrameSolution(Determination.NONE, List.of(), contradictions(best));
    }
    List<String> reasons = new ArrayList<>();
    if (agreeing.size() == 2) {
      reasons.add(
          SolverWords.both(
              best.first(), best.second(), agreeing.get(0).pyramid(), agreeing.get(1).pyramid()));
    }
    for (Candidate candidate : agreeing) {
      if (candidate.magnification() > BARELY) {
        reasons.add(SolverWords.barely(best.first(), best.second(), candidate.magnification()));
      }
    }
    return new FrameSolution(
        agreeing.size() == 2 ? Determination.TWO : Determination.ONE, agreeing, reasons);
  }

  private List<String> contradictions(PairAttempt best) {
    Candidate nearest =
        best.candidates().stream()
            .min(Comparator.comparingInt(c -> PairAttempt.disagreeing(c, agreement).size()))
            .orElseThrow();
    return PairAttempt.disagreeing(nearest, agreement).stream()
        .map(c -> SolverWords.contradiction(c, best.first(), best.second(), agreement))
        .toList();
  }

  private FrameSolution tooFew() {
    List<String> reasons = new ArrayList<>(List.of(SolverWords.tooFew(given.keySet())));
    Determination determination = Determination.TOO_FEW;
    if (given.size() > 1) {
      // All of one kind: with any measure of another kind it shows whether they agree.
      boolean plan = first().kind() == PyramidMeasure.Kind.PLAN;
      PyramidMeasure probe = plan ? PyramidMeasure.HEIGHT : PyramidMeasure.INRADIUS;
      Map<PyramidMeasure, Double> probed = new EnumMap<>(given);
      probed.put(probe, 1.0);
      FrameSolution solution =
          judge(
              plan
                  ? PairAttempt.of(sides, probed, first(), probe, Steps.none())
                  : PairAttempt.of(sides, probed, probe, first(), Steps.none()));
      if (solution.determination() == Determination.NONE) {
        determination = Determination.NONE;
        reasons.addAll(solution.reasons());
      }
    }
    return new FrameSolution(determination, List.of(), reasons);
  }

  private PyramidMeasure first() {
    return given.keySet().iterator().next();
  }
}
