package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;

/**
 * A part of a sheet or roll from which nothing can be cut any more.
 *
 * @param stockId the stock item; not blank
 * @param copy which of its copies, counted from 1; 1 or more
 * @param outline the part, in the stock's coordinates, in metres
 * @param cutOut true for the hole that a piece left, which others keep the spacing from; false for
 *     a tear or a stain, which they keep the margin from
 */
public record LostCloth(String stockId, int copy, Outline outline, boolean cutOut) {

  public LostCloth {
    Args.notBlank("stock id", stockId);
    Args.within("copy of the stock", copy, 1, Integer.MAX_VALUE);
  }

  /**
   * Tells how deep an outline lies in this part: 0 where they only touch, never above the greatest
   * depth to which one lies in the other. O(n m²) for n and m corners.
   *
   * @param other an outline in the stock's coordinates, in metres
   * @return the depth, in metres
   */
  public double depthOf(Outline other) {
    return Intrusion.depth(outline, other);
  }
}
