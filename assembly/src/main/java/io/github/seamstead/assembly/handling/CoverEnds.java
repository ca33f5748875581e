package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * The openings of a joined cover, each by the length of the loop round its edge. A slit of length l
 * has a loop of 2 l.
 *
 * @param hemMetres loop round the hem, the greatest girth, in metres, greater than 0, at most 10
 *     000
 * @param topMetres loop round the opening at the top, in metres, or nothing if the top is closed
 * @param doorMetres loop round the door opening, in metres, or nothing if there is none
 */
public record CoverEnds(double hemMetres, Optional<Double> topMetres, Optional<Double> doorMetres) {

  /**
   * Checks the loops.
   *
   * @param hemMetres greater than 0, at most 10 000
   * @param topMetres greater than 0 and at most the hem, or nothing
   * @param doorMetres greater than 0, or nothing
   * @throws IllegalArgumentException if a loop is out of range
   */
  public CoverEnds {
    Args.positive("loop round the hem", hemMetres, "m");
    Args.within("loop round the hem", hemMetres, 0, 10_000, "m");
    topMetres.ifPresent(
        top -> {
          Args.positive("loop round the top", top, "m");
          Args.within("loop round the top", top, 0, hemMetres, "m");
        });
    doorMetres.ifPresent(door -> Args.positive("loop round the door", door, "m"));
  }
}
