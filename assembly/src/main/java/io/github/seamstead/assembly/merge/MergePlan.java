package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An order of joining.
 *
 * @param name what kind of plan it is, such as {@code pairs first}
 * @param ring the pieces
 * @param steps the joints in order, the closing joint last
 * @param cost what it costs
 * @param optimality how sure it is that nothing is better; empty for a plan by a rule of thumb
 */
public record MergePlan(
    String name,
    PieceRing ring,
    List<JoinStep> steps,
    PlanCost cost,
    Optional<Optimality> optimality) {

  /** Reference mass for one adult, in kilograms, above which a carry is cautioned. */
  public static final double USUAL_LIFT_KG = 25;

  public MergePlan {
    steps = List.copyOf(steps);
  }

  /**
   * Finds the joint that closes the ring.
   *
   * @return the last step of a ring; empty for a line
   */
  public Optional<JoinStep> closingStep() {
    return steps.stream().filter(JoinStep::closing).findFirst();
  }

  /**
   * Lists the cautions that go with the plan.
   *
   * @return wind on loose cloth always; lifting where a carry exceeds {@link #USUAL_LIFT_KG}
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (cost.heaviestCarried() > USUAL_LIFT_KG) {
      cautions.add(
          Caution.of(
              Hazard.LIFTING,
              "The heaviest carry of this order is "
                  + Numbers.significant(cost.heaviestCarried(), 3)
                  + " kg of sagging cloth.",
              "Loads over about 25 kg, or sagging loads of any mass, are a job for a team or a"
                  + " hoist.",
              MergeSources.REFERENCE_MASS));
    }
    cautions.add(
        new Caution(
            Hazard.WIND,
            "Joined cloth is a sail long before it is a cover.",
            "Never lift cloth in gusts: wind, not weight, sets the size of the crew. Weigh the"
                + " groups down whenever the work stops.",
            Optional.empty()));
    return cautions;
  }
}
