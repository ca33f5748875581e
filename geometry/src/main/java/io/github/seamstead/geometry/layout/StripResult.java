package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * A layout on one strip.
 *
 * @param length how much of the strip is used, margin at both ends included, in metres
 * @param density area of the pieces divided by width times length, 0 to 1
 * @param lowerBound no layout is shorter, in metres
 * @param gap {@code (length - lowerBound) / length}; 0 means proved best
 * @param placements one for each copy, strip along x from 0 and across y from 0
 * @param workUsed placements evaluated
 */
public record StripResult(
    double length,
    double density,
    double lowerBound,
    double gap,
    List<Placement> placements,
    long workUsed) {

  /**
   * Copies the list.
   *
   * @param length in metres, greater than 0
   * @param density 0 to 1
   * @param lowerBound in metres, 0 or more
   * @param gap 0 to 1
   * @param placements at least one
   * @param workUsed 0 or more
   * @throws IllegalArgumentException if a number is out of range
   */
  public StripResult {
    Args.positive("length", length, "m");
    Args.within("density", density, 0, 1 + 1e-9, "");
    Args.notNegative("lower bound", lowerBound, "m");
    Args.within("gap", gap, 0, 1, "");
    placements = Args.notEmpty("placements", placements);
  }
}
