package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Recommended limit for one person by the revised NIOSH lifting equation: {@code LC HM VM DM AM FM
 * CM}.
 *
 * <p>It holds for smooth two-handed lifts by a standing person on firm ground, at most eight hours;
 * not for one hand, kneeling or sitting, unstable loads, carrying, pushing or pulling, heat and
 * cold.
 *
 * <pre>{@code
 * LiftLimit limit = LiftLimit.of(LiftTask.ofBundle());
 * double mass = limit.mass(); // 8.82
 * }</pre>
 *
 * @param task the lift
 * @param form the published form used
 */
public record LiftLimit(LiftTask task, LiftForm form) {

  static final Source MANUAL =
      Source.fromMemory(
          "Waters, Putz-Anderson and Garg",
          "Applications Manual for the Revised NIOSH Lifting Equation, 94-110",
          "1994, revised 2021",
          "");

  /**
   * Reckons in the metric form.
   *
   * @param task the lift
   * @return the limit
   */
  public static LiftLimit of(LiftTask task) {
    return new LiftLimit(task, LiftForm.METRIC);
  }

  /**
   * Reckons in a form.
   *
   * @param task the lift
   * @param form the published form
   * @return the limit
   */
  public static LiftLimit of(LiftTask task, LiftForm form) {
    return new LiftLimit(task, form);
  }

  /**
   * Gives the multipliers where the lift starts.
   *
   * @return multipliers and limit
   */
  public Multipliers start() {
    return at(task.from(), "start", Steps.none());
  }

  /**
   * Gives the multipliers where the lift ends.
   *
   * @return multipliers and limit, or nothing if the load is not placed with care
   */
  public Optional<Multipliers> end() {
    return task.placed() ? Optional.of(at(task.to(), "end", Steps.none())) : Optional.empty();
  }

  private Multipliers at(LiftPoint point, String end, Steps steps) {
    return Multipliers.at(point, task.from(), task, form, end, steps);
  }

  /**
   * Computes the limit.
   *
   * @return in kilograms, 0 if the task is outside the method
   */
  public double mass() {
    return mass(Steps.none());
  }

  /**
   * Computes the limit with the steps.
   *
   * @param steps where the steps go
   * @return in kilograms, 0 if the task is outside the method
   */
  @Calculation("assembly.handling.lift")
  public double mass(Steps steps) {
    double start = at(task.from(), "start", steps).mass();
    if (!task.placed()) {
      return start;
    }
    double end = at(task.to(), "end", steps).mass();
    steps.section("Both ends");
    return steps
        .step("m_lim", "recommended limit of one person")
        .formula("min(m_start, m_end)")
        .with("m_start", start, "kg")
        .with("m_end", end, "kg")
        .from(MANUAL)
        .gives(Math.min(start, end), "kg");
  }

  /**
   * Tells why the task is outside the method.
   *
   * @return reasons in words, empty if it is inside
   */
  public List<String> outside() {
    List<String> reasons = new ArrayList<>(start().outside());
    end()
        .ifPresent(
            m -> m.outside().stream().filter(r -> !reasons.contains(r)).forEach(reasons::add));
    return List.copyOf(reasons);
  }

  /**
   * Gives the caution that goes with the limit.
   *
   * @return what the equation does not cover
   */
  public Caution caution() {
    return Caution.of(
        Hazard.LIFTING,
        "The limit is for most healthy workers who stand firmly and lift smoothly with both hands;"
            + " folded cloth sags and gives a poor grip.",
        "It does not cover one hand, kneeling, carrying, pulling, uneven ground, heat or wind."
            + " Loads over about 25 kg, or sagging loads of any mass, are a job for a team or a"
            + " hoist.",
        MANUAL);
  }
}
