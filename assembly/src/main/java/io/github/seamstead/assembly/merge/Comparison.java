package io.github.seamstead.assembly.merge;

import java.util.List;

/**
 * Plans side by side.
 *
 * @param plans pairs first, one by one, least handled mass, least elapsed time; a best plan is
 *     missing where no order keeps the limits, and a rule of thumb may break them: see {@link
 *     PlanCost#withinLimits()}
 */
public record Comparison(List<MergePlan> plans) {

  public Comparison {
    plans = List.copyOf(plans);
  }
}
