package io.github.seamstead.assembly.merge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Elapsed time with a number of teams: good trees, list-scheduled, against a bound; for few groups
 * an exact search closes the gap.
 */
final class ElapsedPlanner {

  private static final double FREE = Double.POSITIVE_INFINITY;
  private static final double ROUNDING = 1 + 1e-9;

  private ElapsedPlanner() {}

  static PlanResult plan(Groups groups, PlanOptions options) {
    List<PlanBuilder> drafts = new ArrayList<>();
    for (IntervalPlanner.Rule rule :
        new IntervalPlanner.Rule[] {
          IntervalPlanner.Rule.PARALLEL, IntervalPlanner.Rule.WORK, IntervalPlanner.Rule.MASS
        }) {
      IntervalPlanner.best(groups, options, rule, FREE)
          .ifPresent(best -> drafts.add(new PlanBuilder(groups, options, best.tree())));
    }
    Optional<PlanBuilder> draft =
        drafts.stream().min(Comparator.comparingDouble(PlanBuilder::elapsed));
    return draft
        .map(best -> improved(groups, options, best))
        .orElseGet(() -> JoinPlanner.refusal(groups, options));
  }

  private static PlanResult improved(Groups groups, PlanOptions options, PlanBuilder draft) {
    int k = groups.size;
    int[] first = new int[k];
    int[] count = new int[k];
    Arrays.setAll(first, i -> i);
    Arrays.fill(count, 1);
    double bound = new ElapsedBound(groups, options).of(first, count, new double[k], 0);
    PlanBuilder best = draft;
    boolean proved = best.elapsed() <= bound * ROUNDING;
    String method = "meets the bound of waiting parts and busy teams";
    if (!proved && k <= ElapsedSearch.MOST_GROUPS && k > 1) {
      ElapsedSearch search = new ElapsedSearch(groups, options, best.elapsed());
      proved = search.run();
      best = search.found().orElse(best);
      method =
          proved
              ? "branch and bound over all orders"
              : "branch and bound stopped after " + (search.nodes() - 1) + " nodes";
    } else if (!proved) {
      method = "best of several trees, against a bound of waiting parts and busy teams";
    }
    double value = best.elapsed();
    return JoinPlanner.found(
        best.build(
            "least elapsed time",
            Optional.of(new Optimality(proved, value, proved ? value : bound, method))));
  }
}
