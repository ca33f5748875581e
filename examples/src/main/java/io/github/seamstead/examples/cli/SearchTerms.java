package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.PlanOptions;
import picocli.CommandLine.Option;

/** How hard a plan is searched for, and from which seed. */
final class SearchTerms {

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "How hard the layout search tries, 1 to 9; each step doubles its work."
              + " Default: ${DEFAULT-VALUE}.")
  private int effort;

  @Option(
      names = "--seed",
      paramLabel = "K",
      defaultValue = "1",
      description = "Seed of searches and simulations. Default: ${DEFAULT-VALUE}.")
  private long seed;

  /** The usual terms with this effort and seed. */
  PlanOptions options() {
    return PlanOptions.defaults().withEffort(effort).withSeed(seed);
  }
}
