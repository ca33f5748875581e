package io.github.seamstead.api.job;

import io.github.seamstead.assembly.anchor.Ground;
import java.util.List;

/**
 * Pegs tested by pulling them on this ground, along the rope.
 *
 * @param pulls pull at which each peg began to move, in newtons
 * @param ground the ground on the day that counts, beside the day of the test
 * @param factor tested over allowed pull
 */
public record PegPulls(List<Double> pulls, Ground ground, double factor) {

  /**
   * Copies the pulls.
   *
   * @param pulls in newtons
   * @param ground the ground on the day that counts
   * @param factor tested over allowed pull
   */
  public PegPulls {
    pulls = List.copyOf(pulls);
  }
}
