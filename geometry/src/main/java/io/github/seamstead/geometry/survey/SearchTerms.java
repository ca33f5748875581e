package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.work.Cancellation;

/**
 * How much a search for blunders may spend, counted in the cost of its adjustments, and the switch
 * that ends it. What a crew tapes costs a thousandth of it; only a file of thousands of readings
 * with dozens of wrong ones comes to its end.
 */
final class SearchTerms {

  /** Readings times the square of the unknowns, summed over all adjustments: some seconds. */
  private static final double MOST_COST = 2e10;

  private final Cancellation cancellation;
  private double spent;

  SearchTerms(Cancellation cancellation) {
    this.cancellation = cancellation;
  }

  Cancellation cancellation() {
    return cancellation;
  }

  /** Counts an adjustment that begins. */
  void adjusts(Survey survey) {
    cancellation.goOn("blunders were looked for");
    spent += cost(survey);
  }

  private static double cost(Survey survey) {
    double unknowns = 3.0 * survey.nodes().size();
    return survey.readings().size() * unknowns * unknowns;
  }

  /** Whether so little is left that the search has to come to its end. */
  boolean isSpent() {
    return spent >= MOST_COST;
  }

  /** How many suspects may be tried each time: fewer where each trial is dear. */
  int tried(Survey survey, int usual) {
    double affordable = MOST_COST / cost(survey) / 20;
    return (int) Math.max(1, Math.min(usual, affordable));
  }
}
