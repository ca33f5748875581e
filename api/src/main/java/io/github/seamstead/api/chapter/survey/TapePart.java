package io.github.seamstead.api.chapter.survey;

import java.util.List;
import java.util.Optional;

/**
 * What the tape's own error, warmth, pull and sag do to the taped distances.
 *
 * @param distances every taped distance before and after correction
 * @param truePull the pull at which the tape shows the longest of them true, in newtons; empty if
 *     its stiffness or temperature is not stated, or no pull does it
 */
public record TapePart(List<Corrected> distances, Optional<Double> truePull) {

  /**
   * One taped distance.
   *
   * @param name its nodes
   * @param taped what the tape showed, in metres
   * @param corrected the distance, in metres
   */
  public record Corrected(String name, double taped, double corrected) {}

  public TapePart {
    distances = List.copyOf(distances);
  }

  /**
   * Gives the distance that is corrected the most.
   *
   * @return one of the distances
   */
  public Corrected most() {
    Corrected most = distances.get(0);
    for (Corrected one : distances) {
      most =
          Math.abs(one.corrected() - one.taped()) > Math.abs(most.corrected() - most.taped())
              ? one
              : most;
    }
    return most;
  }
}
