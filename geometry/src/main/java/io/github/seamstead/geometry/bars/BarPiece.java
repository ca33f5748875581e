package io.github.seamstead.geometry.bars;

import io.github.seamstead.shared.check.Args;

/**
 * Equal pieces to be cut from bars.
 *
 * @param name for a label; not blank
 * @param length in metres, greater than 0
 * @param count how many, 1 or more; 1 to 100000
 */
public record BarPiece(String name, double length, int count) {

  public BarPiece {
    Args.notBlank("piece name", name);
    Args.positive("length of " + name, length, "m");
    Args.within("count of " + name, count, 1, 100_000);
  }
}
