package io.github.seamstead.geometry.bars;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * Bars of one length.
 *
 * @param name for a label; not blank
 * @param length in metres, greater than 0 and at most 1000
 * @param available how many there are; empty if as many as needed can be had; 1 or more
 */
public record BarStock(String name, double length, Optional<Integer> available) {

  public BarStock {
    Args.notBlank("bar name", name);
    Args.positive("length of " + name, length, "m");
    Args.within("length of " + name, length, 0, 1000, "m");
    if (available.isPresent()) {
      Args.within("number of " + name, available.get(), 1, 100_000);
    }
  }

  /**
   * Bars that can be bought as needed.
   *
   * @param name for a label
   * @param length in metres, greater than 0
   * @return the bars
   * @throws IllegalArgumentException if the length is outside its range
   */
  public static BarStock unlimited(String name, double length) {
    return new BarStock(name, length, Optional.empty());
  }

  /**
   * Bars on hand.
   *
   * @param name for a label
   * @param length in metres, greater than 0
   * @param available how many, 1 or more
   * @return the bars
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static BarStock onHand(String name, double length, int available) {
    return new BarStock(name, length, Optional.of(available));
  }
}
