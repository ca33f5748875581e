package io.github.seamstead.materials.soil;

import java.util.List;

/**
 * The smallest part of the triangle that holds a stated probability (highest posterior density).
 *
 * @param level the probability asked for, such as 0.95; 0 to 1
 * @param probability the probability that the region holds on the grid, at least the level; 0 to 1
 * @param areaRatio the region's share of the triangle's area, 0 to 1
 * @param outlines lines of equal density round the region, for a drawing: outer ones and holes,
 *     each a list of corners whose last joins the first; smoothed by up to half a grid step
 */
public record CredibleRegion(
    double level, double probability, double areaRatio, List<List<Texture>> outlines) {

  public CredibleRegion {
    outlines = outlines.stream().map(List::copyOf).toList();
  }
}
