package io.github.seamstead.geometry.stock;

import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.SortedSet;

/**
 * Material to cut from, seen with its good side up. Its weave or print runs along the x axis of its
 * own coordinates.
 */
public sealed interface StockItem permits Sheet, Roll {

  /**
   * Names the item.
   *
   * @return the builder's name for it, unique among the stock
   */
  String id();

  /**
   * Tells how many alike there are.
   *
   * @return 1 or more
   */
  int count();

  /**
   * Gives the whole usable shape.
   *
   * @return the outline, in metres
   */
  Outline outline();

  /**
   * Gives the places that no piece may cover: holes, tears, stains.
   *
   * @return polygons in the item's coordinates, in metres; those that stick out of the item are
   *     allowed
   */
  List<Outline> flaws();

  /**
   * Names the edges with a band, hem or rope sewn in.
   *
   * @return indices of edges of {@link #outline()}
   */
  SortedSet<Integer> reinforcedEdges();

  /**
   * Tells the builder's order of use.
   *
   * @return lower is used first; equal values leave the choice to the layout
   */
  int preference();

  /**
   * Tells whether both sides look alike, so that a piece may be cut turned over.
   *
   * @return true if there is no plain side
   */
  boolean bothSidesGood();

  /**
   * Gives the cost of the part that is used.
   *
   * @param usedLength how far the cuts reach along x, in metres
   * @return the cost, in the caller's currency: of the whole sheet, or of the length of the roll
   */
  double costOf(double usedLength);
}
