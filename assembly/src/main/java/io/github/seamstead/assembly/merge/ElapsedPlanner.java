package io.github.seamstead.assembly.merge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Elapsed time with a number of teams: good trees, list-scheduled, against a bound. */
final class ElapsedPlanner {

  private static final double FREE = Double.POSITIVE_INFINITY;

  private ElapsedPlanner() {}

  static PlanResult plan(Groups groups, PlanOptions options) {
    Optional<IntervalPlanner.Best> parallel =
        IntervalPlanner.best(groups, options, IntervalPlanner.Rule.PARALLEL, FREE);
    Optional<IntervalPlanner.Best> work =
        IntervalPlanner.best(groups, options, IntervalPlanner.Rule.WORK, FREE);
    if (parallel.isEmpty() || work.isEmpty()) {
      return JoinPlanner.refusal(groups, options);
    }
    List<Tree> trees = new ArrayList<>(List.of(parallel.get().tree(), work.get().tree()));
    IntervalPlanner.best(groups, options, IntervalPlanner.Rule.MASS, FREE)
        .ifPresent(best -> trees.add(best.tree()));
    PlanBuilder best =
        trees.stream()
            .map(tree -> new PlanBuilder(groups, options, tree))
            .min(Comparator.comparingDouble(PlanBuilder::elapsed))
            .orElseThrow();
    double bound = Math.max(parallel.get().value(), work.get().value() / options.teams());
    double value = best.elapsed();
    boolean proved = value <= bound * (1 + 1e-12);
    Optimality sure =
        new Optimality(
            proved,
            value,
            proved ? value : bound,
            "bound by all teams always busy and by a team for every merge");
    return JoinPlanner.found(best.build("least elapsed time", Optional.of(sure)));
  }
}
