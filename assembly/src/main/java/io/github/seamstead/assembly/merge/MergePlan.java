package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.PieceRing;
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

  /**
   * Copies the steps.
   *
   * @param name what kind of plan
   * @param ring the pieces
   * @param steps the joints in order
   * @param cost what it costs
   * @param optimality how sure it is
   */
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
}
