package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * Rolls of one width, measured as they are.
 *
 * @param id its name, written on the roll
 * @param width usable width, along y, in metres
 * @param length length on the roll, along x, in metres
 * @param count how many there are
 * @param reinforced edges with a reinforced border worth keeping for the hem
 * @param flaws parts that must not be used
 * @param costPerMetre price of one metre off the roll, in the money of the site, if stated
 * @param preference order of use, lowest first
 */
public record StockRoll(
    String id,
    double width,
    double length,
    int count,
    List<SheetEdge> reinforced,
    List<StockFlaw> flaws,
    Optional<Double> costPerMetre,
    int preference) {

  /**
   * Copies the lists.
   *
   * @param id its name, written on the roll
   * @param width usable width, along y, in metres
   * @param length length on the roll, along x, in metres
   * @param count how many there are
   * @param reinforced edges with a reinforced border worth keeping for the hem
   * @param flaws parts that must not be used
   * @param costPerMetre price of one metre off the roll, in the money of the site, if stated
   * @param preference order of use, lowest first
   */
  public StockRoll {
    reinforced = List.copyOf(reinforced);
    flaws = List.copyOf(flaws);
  }
}
