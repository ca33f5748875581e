package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.shared.uncertainty.Range;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is left to lay of one layer.
 *
 * @param layer its name
 * @param laidShare the share of its area that is laid, 0 to 1
 * @param sectorsLeft the sectors that are not laid whole, by their place in the order of laying,
 *     which is the number that the crew knows them by
 * @param loadsLeft loads yet to lay, each end rounded up; 0 for a layer that is not laid by loads
 * @param laidOn the day on which the last of it was laid; empty while some is left
 */
public record LayerRest(
    String layer,
    double laidShare,
    List<Integer> sectorsLeft,
    Range loadsLeft,
    Optional<LocalDate> laidOn) {

  public LayerRest {
    sectorsLeft = List.copyOf(sectorsLeft);
  }

  /**
   * Tells whether nothing is left to lay.
   *
   * @return true if it is laid whole
   */
  public boolean isDone() {
    return sectorsLeft.isEmpty();
  }
}
