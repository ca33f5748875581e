package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * The openings of a joined cover, each by the length of the loop round its edge. A slit of length l
 * has a loop of 2 l.
 *
 * @param hemMetres loop round the hem, the greatest girth, in metres, greater than 0, at most 10
 *     000
 * @param topMetres loop round the opening at the top, in metres, or nothing if the top is closed;
 *     greater than 0 and at most the hem
 * @param doorMetres loop round the door opening, in metres, or nothing if there is none; greater
 *     than 0
 */
public record CoverEnds(double hemMetres, Optional<Double> topMetres, Optional<Double> doorMetres) {

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
