package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import java.util.HashMap;
import java.util.Map;

/** Adds up what the crew has in hand, step by step. */
public final class HandledMass {

  private HandledMass() {}

  /**
   * Adds up the mass in hand over all steps of a plan, the closing joint included.
   *
   * @param plan the plan
   * @return handled mass, in kilogram-lifts
   */
  public static double of(MergePlan plan) {
    return of(plan, Steps.none());
  }

  /**
   * Adds up the mass in hand with its steps.
   *
   * @param plan the plan
   * @param steps where the steps go
   * @return handled mass, in kilogram-lifts
   */
  @Calculation("assembly.merge.handledmass")
  public static double of(MergePlan plan, Steps steps) {
    int pieces = plan.ring().size();
    Map<Arc, Double> masses = new HashMap<>();
    double handled = 0;
    for (JoinStep step : plan.steps()) {
      double left = mass(plan, masses, step.left());
      if (step.closing()) {
        handled =
            steps
                .step("H", "handled mass with the closing joint " + step.joint().mark().text())
                .formula("H_before + m_whole")
                .with("H_before", handled, "kg")
                .with("m_whole", left, "kg")
                .note("the closing joint joins the cover to itself: the whole is in hand")
                .gives(handled + left, "kg");
        continue;
      }
      double right = mass(plan, masses, step.right());
      double sum = left + right;
      masses.put(new Arc(step.left().first(), step.left().count() + step.right().count()), sum);
      handled =
          steps
              .step(
                  "H",
                  "handled mass after joint "
                      + step.joint().mark().text()
                      + " of "
                      + step.left().text(pieces)
                      + " and "
                      + step.right().text(pieces))
              .formula("H_before + (m_left + m_right)")
              .with("H_before", handled, "kg")
              .with("m_left", left, "kg")
              .with("m_right", right, "kg")
              .from(MergeSources.HANDLED)
              .gives(handled + sum, "kg");
    }
    return handled;
  }

  private static double mass(MergePlan plan, Map<Arc, Double> masses, Arc arc) {
    Double known = masses.get(arc);
    return known == null ? plan.ring().load(arc).mass() : known;
  }
}
