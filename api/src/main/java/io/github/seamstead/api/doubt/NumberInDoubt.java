package io.github.seamstead.api.doubt;

import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * A number that people decide by, and what moves it.
 *
 * @param measure the number
 * @param planned its value with all inputs as planned
 * @param range 5 %, middle and 95 % of its values over all doubts
 * @param points how many points the indices come from
 * @param influences each doubt's, the greatest total index first
 */
public record NumberInDoubt(
    Measure measure, double planned, Range range, int points, List<Influence> influences) {

  public NumberInDoubt {
    influences = List.copyOf(influences);
  }
}
