package io.github.seamstead.api.chapter.layout;

import java.util.Comparator;
import java.util.List;

/**
 * Where cloth could be saved instead of buying more, each from a plan that was run.
 *
 * @param tried the changes that were planned: those that are enough alone first, then those that
 *     leave the least cloth without a place
 * @param notTried what was not planned, and why
 */
public record Savings(List<ClothSaving> tried, List<NotTried> notTried) {

  /** What is enough alone first, then what leaves the least without a place, then saves most. */
  static final Comparator<ClothSaving> MOST_SAVED_FIRST =
      Comparator.comparing((ClothSaving s) -> !s.isEnough())
          .thenComparing(s -> !s.unmet().isEmpty())
          .thenComparing(ClothSaving::areaWithoutPlace)
          .thenComparing(s -> -s.clothSaved());

  /**
   * A change that was not planned.
   *
   * @param lever what would have been changed
   * @param why why it was not
   */
  public record NotTried(ClothLever lever, String why) {}

  public Savings {
    tried = List.copyOf(tried);
    notTried = List.copyOf(notTried);
  }

  /**
   * Gives the changes each of which is enough alone.
   *
   * @return those with which every piece has a place
   */
  public List<ClothSaving> enough() {
    return tried.stream().filter(ClothSaving::isEnough).toList();
  }
}
