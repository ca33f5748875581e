package io.github.seamstead.geometry.templates;

import java.util.List;
import java.util.Optional;

/**
 * Template sets for k = 1, 2, … up to the first that is within the tolerance, or the most asked
 * for.
 *
 * @param sets one per k, k = 1 first
 * @param tolerance the builder's tolerance of fullness, in metres
 * @param confidence one-sided confidence with which each measure of each panel is not short
 * @param floor the worst misfit with a template for every face: the survey's own uncertainty. A
 *     tolerance below it asks for better readings, not for more templates. In metres
 * @param stopped whether the search was asked to stop, or ran out of time, before a set was within
 *     the tolerance: that none is does then not mean that none can be
 */
public record TemplatePlan(
    List<TemplateSet> sets, double tolerance, double confidence, double floor, boolean stopped) {

  public TemplatePlan {
    sets = List.copyOf(sets);
  }

  /**
   * Recommends the fewest templates within the tolerance.
   *
   * @return the set; empty if none of those made is within it
   */
  public Optional<TemplateSet> recommended() {
    return sets.stream().filter(set -> set.worstMisfit() <= tolerance).findFirst();
  }
}
