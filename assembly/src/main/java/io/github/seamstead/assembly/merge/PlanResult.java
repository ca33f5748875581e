package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.check.ArgumentFault;
import java.util.Optional;

/**
 * A plan, or why there is none.
 *
 * @param plan the best permitted plan; empty if no order keeps the limits
 * @param reason empty if there is a plan, else which limit no order keeps and the least that would
 *     do
 */
public record PlanResult(Optional<MergePlan> plan, String reason) {

  /**
   * Gives the plan where the caller knows that there is one.
   *
   * @return the plan
   * @throws IllegalArgumentException if no order keeps the limits
   */
  public MergePlan orThrow() {
    return plan.orElseThrow(() -> ArgumentFault.finding(reason));
  }
}
