package io.github.seamstead.geometry.stock;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A roll: a rectangle whose length runs along x from 0 and whose width lies along y from 0, cut off
 * where the last piece ends. Edge 0 is the selvedge at y = 0, edge 2 the selvedge at y = width,
 * edge 1 the far end and edge 3 the near end.
 *
 * <pre>{@code
 * Roll roll = Roll.of("canvas", 1.6, 30);
 * roll.width(); // 1.6
 * }</pre>
 *
 * @param id the builder's name for it; not blank
 * @param width across, in metres; greater than 0
 * @param length available, in metres; greater than 0
 * @param count how many alike, 1 to 100 000
 * @param flaws polygons that no piece may cover, in metres
 * @param reinforcedEdges indices of edges with a band or hem, 0 to 3
 * @param preference lower is used first
 * @param costPerMetre of the length used, in the caller's currency per metre, 0 or more
 * @param bothSidesGood true if there is no plain side
 */
public record Roll(
    String id,
    double width,
    double length,
    int count,
    List<Outline> flaws,
    SortedSet<Integer> reinforcedEdges,
    int preference,
    double costPerMetre,
    boolean bothSidesGood)
    implements StockItem {

  public Roll {
    Args.notBlank("stock id", id);
    Args.positive("stock " + id + ": width", width, "m");
    Args.positive("stock " + id + ": length", length, "m");
    Args.within("stock " + id + ": count", count, 1, StockChecks.MOST_ALIKE);
    Args.notNegative("stock " + id + ": cost per metre", costPerMetre, "");
    flaws = List.copyOf(flaws);
    reinforcedEdges = StockChecks.edges(id, reinforcedEdges, 4);
  }

  /**
   * One flawless roll of no cost and first preference, without a reinforced edge, with one good
   * side.
   *
   * @param id the builder's name for it, not blank
   * @param width across, in metres, greater than 0
   * @param length available, in metres, greater than 0
   * @return the roll
   * @throws IllegalArgumentException if the id is blank or a size is not positive
   */
  public static Roll of(String id, double width, double length) {
    return new Roll(id, width, length, 1, List.of(), new TreeSet<>(), 0, 0, false);
  }

  /**
   * The same roll, several times.
   *
   * @param number how many alike, 1 to 100 000
   * @return the new value
   * @throws IllegalArgumentException if the number is out of range
   */
  public Roll withCount(int number) {
    return new Roll(
        id, width, length, number, flaws, reinforcedEdges, preference, costPerMetre, bothSidesGood);
  }

  /**
   * The same roll with flaws.
   *
   * @param polygons what no piece may cover, in metres
   * @return the new value
   */
  public Roll withFlaws(Outline... polygons) {
    return new Roll(
        id,
        width,
        length,
        count,
        List.of(polygons),
        reinforcedEdges,
        preference,
        costPerMetre,
        bothSidesGood);
  }

  /**
   * The same roll with reinforced edges, as a woven or sewn band along a selvedge.
   *
   * @param edges 0 for y = 0, 2 for y = width, 1 and 3 for the ends
   * @return the new value
   * @throws IllegalArgumentException if an index is out of range
   */
  public Roll withReinforcedEdges(Integer... edges) {
    return new Roll(
        id,
        width,
        length,
        count,
        flaws,
        new TreeSet<>(Arrays.asList(edges)),
        preference,
        costPerMetre,
        bothSidesGood);
  }

  /**
   * The same roll at another place in the builder's order.
   *
   * @param order lower is used first
   * @return the new value
   */
  public Roll withPreference(int order) {
    return new Roll(
        id, width, length, count, flaws, reinforcedEdges, order, costPerMetre, bothSidesGood);
  }

  /**
   * The same roll at a cost.
   *
   * @param price per metre of length, in the caller's currency, 0 or more
   * @return the new value
   * @throws IllegalArgumentException if the price is negative or not finite
   */
  public Roll withCostPerMetre(double price) {
    return new Roll(
        id, width, length, count, flaws, reinforcedEdges, preference, price, bothSidesGood);
  }

  /**
   * The same roll with no plain side.
   *
   * @return the new value
   */
  public Roll withBothSidesGood() {
    return new Roll(
        id, width, length, count, flaws, reinforcedEdges, preference, costPerMetre, true);
  }

  @Override
  public Outline outline() {
    return Outline.rectangle(length, width);
  }

  @Override
  public double costOf(double usedLength) {
    return Math.max(0, usedLength) * costPerMetre;
  }
}
