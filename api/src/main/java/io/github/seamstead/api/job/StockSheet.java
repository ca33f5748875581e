package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;

/**
 * Sheets of one size, measured as they are.
 *
 * @param id its name, written on the sheet
 * @param length measured length, along x, in metres
 * @param width measured width, along y, in metres
 * @param count how many there are
 * @param reinforced edges with a reinforced border worth keeping for the hem
 * @param flaws parts that must not be used
 * @param cost price of one sheet, in the money of the site, if stated
 * @param preference order of use, lowest first
 */
public record StockSheet(
    String id,
    double length,
    double width,
    int count,
    List<SheetEdge> reinforced,
    List<StockFlaw> flaws,
    Optional<Double> cost,
    int preference) {

  /**
   * Copies the lists.
   *
   * @param id its name, written on the sheet
   * @param length measured length, along x, in metres
   * @param width measured width, along y, in metres
   * @param count how many there are
   * @param reinforced edges with a reinforced border worth keeping for the hem
   * @param flaws parts that must not be used
   * @param cost price of one sheet, in the money of the site, if stated
   * @param preference order of use, lowest first
   */
  public StockSheet {
    reinforced = List.copyOf(reinforced);
    flaws = List.copyOf(flaws);
  }
}
