package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * A layout on one strip.
 *
 * @param length how much of the strip is used, margin at both ends included, in metres; greater
 *     than 0
 * @param density area of the pieces divided by width times length, 0 to 1
 * @param lowerBound no layout is shorter, in metres; 0 or more
 * @param gap {@code (length - lowerBound) / length}; 0 means proved best; 0 to 1
 * @param placements one for each copy, strip along x from 0 and across y from 0; at least one
 * @param workUsed placements evaluated; 0 or more
 */
public record StripResult(
    double length,
    double density,
    double lowerBound,
    double gap,
    List<Placement> placements,
    long workUsed) {

  public StripResult {
    Args.positive("length", length, "m");
    Args.within("density", density, 0, 1 + 1e-9, "");
    Args.notNegative("lower bound", lowerBound, "m");
    Args.within("gap", gap, 0, 1, "");
    placements = Args.notEmpty("placements", placements);
  }
}
