package io.github.seamstead.geometry.templates;

import io.github.seamstead.geometry.survey.CriticalValues;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The fewest templates that fit all faces.
 *
 * <p>A face is short nowhere, with the stated one-sided confidence, if each measure of its template
 * is at least {@code f + z u}: the measure as built, its standard uncertainty, and the normal
 * quantile z. The smallest template of a group is therefore, measure by measure, the greatest
 * {@code f + z u} of the group, and the group's misfit is the greatest fullness {@code max(f + z u)
 * - min f} of any measure. That is a maximum over pairs of faces; so a group is within a misfit t
 * exactly if each pair in it is, and k templates suffice for t exactly if the faces can be coloured
 * with k colours so that no pair that conflicts at t has the same colour. The least t is one of the
 * O(n²) pair values and is found by halving that list, with an exact colouring at each.
 *
 * <p>The five measures of a face with an opening fix its other diagonal too. Where a template made
 * so would be short there, its left hip and top are lengthened until it is not; what that adds
 * counts in the misfit, while the lower bound is that of the measures alone, so that such a set may
 * be the best found without being proved the best.
 *
 * <p>Colouring is exact by branch and bound and always finishes up to 24 faces; beyond, it is given
 * {@value #COLOURING_BUDGET} branches per question, and a question left open shows as a gap between
 * the worst misfit and its lower bound. A panel is never turned over, since its good side lies
 * outside: left and right hips are not exchanged.
 */
public final class Templates {

  /** Branches that a colouring of more than 24 faces may take before it is left open. */
  public static final int COLOURING_BUDGET = 500_000;

  /** Confidence that no measure of a panel is short, unless another is stated: 95 %, one-sided. */
  public static final double USUAL_CONFIDENCE = 0.95;

  private static final Source PAIRS =
      Source.derived("greatest difference within a group, measure by measure");

  private Templates() {}

  /**
   * Plans templates with the usual confidence, up to one per face.
   *
   * @param frame the frame as built
   * @param tolerance the fullness the builder accepts, in metres, 0 or more
   * @return sets for k = 1, 2, … to the first within the tolerance, or to one per face
   * @throws IllegalArgumentException if the tolerance is negative
   */
  public static TemplatePlan plan(AsBuilt frame, double tolerance) {
    return plan(frame, tolerance, USUAL_CONFIDENCE, frame.faces().size());
  }

  /**
   * As {@link #plan(AsBuilt, double)}, on stated terms.
   *
   * @param frame the frame as built
   * @param tolerance the fullness the builder accepts, in metres, 0 or more
   * @param work branches per question beyond 24 faces, time limit and switch; a search that is
   *     stopped ends with the sets made so far, one at least, and leaves its last bound open
   * @return sets for k = 1, 2, … to the first within the tolerance, or to one per face
   * @throws IllegalArgumentException if the tolerance is negative
   */
  public static TemplatePlan plan(AsBuilt frame, double tolerance, Work work) {
    return plan(frame, tolerance, USUAL_CONFIDENCE, frame.faces().size(), work);
  }

  /**
   * Plans templates.
   *
   * @param frame the frame as built
   * @param tolerance the fullness the builder accepts, in metres, 0 or more
   * @param confidence one-sided, from 0.5 (no allowance for uncertainty) to below 1
   * @param mostTemplates the greatest k to try, 1 or more
   * @return sets for k = 1, 2, … to the first within the tolerance, or to {@code mostTemplates}
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static TemplatePlan plan(
      AsBuilt frame, double tolerance, double confidence, int mostTemplates) {
    Work usual = Work.of(Budget.ofWork(COLOURING_BUDGET), 0);
    return plan(frame, tolerance, confidence, mostTemplates, usual);
  }

  private static TemplatePlan plan(
      AsBuilt frame, double tolerance, double confidence, int mostTemplates, Work work) {
    Args.notNegative("tolerance", tolerance, "m");
    Args.within("confidence", confidence, 0.5, 0.999999, "");
    Args.within("most templates", mostTemplates, 1, Integer.MAX_VALUE);
    TemplateSearch search = new TemplateSearch(frame, quantile(confidence), work);
    double floor = search.floor();
    List<TemplateSet> sets = new ArrayList<>();
    int most = Math.min(mostTemplates, frame.faces().size());
    boolean stopped = false;
    for (int k = 1; k <= most && !stopped; k++) {
      TemplateSet set = search.best(k);
      TemplateSet before = sets.isEmpty() ? set : sets.get(sets.size() - 1);
      // Lengthened templates may make a finer grouping the worse; fewer templates then serve.
      sets.add(
          set.worstMisfit() <= before.worstMisfit() ? set : before.boundedBy(set.lowerBound()));
      if (sets.get(sets.size() - 1).worstMisfit() <= Math.max(tolerance, floor)) {
        break;
      }
      stopped = k < most && search.isStopped();
    }
    return new TemplatePlan(sets, tolerance, confidence, floor, stopped);
  }

  /**
   * Works out the worst misfit of a set: which measure of which face it is, and how its template
   * came to be that long.
   *
   * @param frame the frame as built
   * @param set a set of the plan for that frame
   * @param confidence the plan's confidence
   * @param steps receives the worked steps; the last is the worst misfit
   * @return the worst misfit, in metres
   * @throws IllegalArgumentException if the confidence is out of range
   */
  @Calculation("geometry.templates.misfit")
  public static double worstMisfit(AsBuilt frame, TemplateSet set, double confidence, Steps steps) {
    Args.within("confidence", confidence, 0.5, 0.999999, "");
    FaceFit worst = set.faces().get(0);
    for (FaceFit fit : set.faces()) {
      worst = fit.greatest() > worst.greatest() ? fit : worst;
    }
    FaceMeasure measure = FaceMeasure.BASE;
    for (Map.Entry<FaceMeasure, Uncertain> entry : worst.fullness().entrySet()) {
      measure = entry.getValue().value() == worst.greatest() ? entry.getKey() : measure;
    }
    double z =
        steps
            .step("z", "one-sided normal quantile of the confidence")
            .note("confidence " + Numbers.plain(confidence))
            .gives(quantile(confidence), "");
    steps.section("Template " + worst.template() + ", " + measure.label());
    double template = 0;
    String last = "";
    for (int face : set.templates().get(worst.template() - 1).faces()) {
      Uncertain f = frame.faces().get(face - 1).measure(measure);
      double needed = f.value() + z * f.standardUncertainty();
      double next = Math.max(template, needed);
      Steps.Entry entry =
          steps
              .step("T_" + face, "template so that face " + face + " is not short either")
              .formula(last.isEmpty() ? "f + z * u" : "max(" + last + ", f + z * u)")
              .with("f", f.value(), "m")
              .with("z", z, "")
              .with("u", f.standardUncertainty(), "m")
              .from(PAIRS);
      if (!last.isEmpty()) {
        entry.with(last, template, "m");
      }
      template = entry.gives(next, "m");
      last = "T_" + face;
    }
    double made = set.templates().get(worst.template() - 1).measure(measure);
    if (made > template) {
      template =
          steps
              .step("T_e", "template lengthened, so that the other diagonal is not short")
              .formula(last + " + e")
              .with(last, template, "m")
              .with("e", made - template, "m")
              .gives(made, "m");
      last = "T_e";
    }
    double built = frame.faces().get(worst.face() - 1).measure(measure).value();
    return steps
        .step("m", "fullness of face " + worst.face() + ", the worst misfit")
        .formula(last + " - f_" + worst.face())
        .with(last, template, "m")
        .with("f_" + worst.face(), built, "m")
        .gives(template - built, "m");
  }

  private static double quantile(double confidence) {
    return confidence == 0.5 ? 0 : CriticalValues.normal(2 * (1 - confidence));
  }
}
