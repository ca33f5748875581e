package io.github.seamstead.geometry.stock;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A sheet of any simple polygonal shape, used whole or not at all: its cost counts in full as soon
 * as one piece is cut from it.
 *
 * @param id the builder's name for it; not blank
 * @param outline the usable shape, good side up, in metres
 * @param count how many alike, 1 to 100 000
 * @param flaws polygons that no piece may cover, in metres
 * @param reinforcedEdges indices of edges of {@code outline} with a band or hem; each from 0 to the
 *     number of edges less 1
 * @param preference lower is used first
 * @param cost of one sheet, in the caller's currency, 0 or more
 * @param bothSidesGood true if there is no plain side
 */
public record Sheet(
    String id,
    Outline outline,
    int count,
    List<Outline> flaws,
    SortedSet<Integer> reinforcedEdges,
    int preference,
    double cost,
    boolean bothSidesGood)
    implements StockItem {

  public Sheet {
    Args.notBlank("stock id", id);
    Args.within("stock " + id + ": count", count, 1, StockChecks.MOST_ALIKE);
    Args.notNegative("stock " + id + ": cost", cost, "");
    flaws = List.copyOf(flaws);
    reinforcedEdges = StockChecks.edges(id, reinforcedEdges, outline.size());
  }

  /**
   * One flawless sheet of no cost and first preference, without a reinforced edge, with one good
   * side.
   *
   * @param id the builder's name for it, not blank
   * @param outline the usable shape, good side up, in metres
   * @return the sheet
   * @throws IllegalArgumentException if the id is blank
   */
  public static Sheet of(String id, Outline outline) {
    return new Sheet(id, outline, 1, List.of(), new TreeSet<>(), 0, 0, false);
  }

  /**
   * A rectangular sheet as {@link #of}; edge 0 runs along y = 0, edge 2 along y = height.
   *
   * @param id the builder's name for it, not blank
   * @param length along x, the run of the weave, in metres, greater than 0
   * @param height along y, in metres, greater than 0
   * @return the sheet
   * @throws IllegalArgumentException if the id is blank or a side is not positive
   */
  public static Sheet rectangle(String id, double length, double height) {
    return of(id, Outline.rectangle(length, height));
  }

  /**
   * The same sheet, several times.
   *
   * @param number how many alike, 1 to 100 000
   * @return the new value
   * @throws IllegalArgumentException if the number is out of range
   */
  public Sheet withCount(int number) {
    return new Sheet(id, outline, number, flaws, reinforcedEdges, preference, cost, bothSidesGood);
  }

  /**
   * The same sheet with flaws.
   *
   * @param polygons what no piece may cover, in metres
   * @return the new value
   */
  public Sheet withFlaws(Outline... polygons) {
    return new Sheet(
        id, outline, count, List.of(polygons), reinforcedEdges, preference, cost, bothSidesGood);
  }

  /**
   * The same sheet with reinforced edges.
   *
   * @param edges indices of edges of the outline
   * @return the new value
   * @throws IllegalArgumentException if an index is out of range
   */
  public Sheet withReinforcedEdges(Integer... edges) {
    return new Sheet(
        id,
        outline,
        count,
        flaws,
        new TreeSet<>(Arrays.asList(edges)),
        preference,
        cost,
        bothSidesGood);
  }

  /**
   * The same sheet at another place in the builder's order.
   *
   * @param order lower is used first
   * @return the new value
   */
  public Sheet withPreference(int order) {
    return new Sheet(id, outline, count, flaws, reinforcedEdges, order, cost, bothSidesGood);
  }

  /**
   * The same sheet at a cost.
   *
   * @param price of one sheet, in the caller's currency, 0 or more
   * @return the new value
   * @throws IllegalArgumentException if the price is negative or not finite
   */
  public Sheet withCost(double price) {
    return new Sheet(id, outline, count, flaws, reinforcedEdges, preference, price, bothSidesGood);
  }

  /**
   * The same sheet with no plain side.
   *
   * @return the new value
   */
  public Sheet withBothSidesGood() {
    return new Sheet(id, outline, count, flaws, reinforcedEdges, preference, cost, true);
  }

  @Override
  public double costOf(double usedLength) {
    return usedLength > 0 ? cost : 0;
  }
}
