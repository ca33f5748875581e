package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * The openings of a joined cover, each by the length of the loop round its edge. A slit of length l
 * has a loop of 2 l.
 *
 * @param hemLength loop round the hem, the greatest girth, in metres, greater than 0, at most 10
 *     000
 * @param top loop round the opening at the top, in metres, or nothing if the top is closed; greater
 *     than 0 and at most the hem
 * @param doorLength loop round the door opening, in metres, or nothing if there is none; greater
 *     than 0
 */
public record CoverEnds(double hemLength, Optional<Double> top, Optional<Double> doorLength) {

  public CoverEnds {
    Args.positive("loop round the hem", hemLength, "m");
    Args.within("loop round the hem", hemLength, 0, 10_000, "m");
    top.ifPresent(
        loop -> {
          Args.positive("loop round the top", loop, "m");
          Args.within("loop round the top", loop, 0, hemLength, "m");
        });
    doorLength.ifPresent(door -> Args.positive("loop round the door", door, "m"));
  }
}
