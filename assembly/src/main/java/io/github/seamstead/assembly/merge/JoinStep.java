package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.Joint;

/**
 * One joint in the order of the plan.
 *
 * @param number the step's number, from 1
 * @param joint the joint to make
 * @param left the group on the left, seen from outside
 * @param right the group on the right; the same as {@code left} at the closing joint
 * @param closing whether this joint joins the cover to itself
 * @param wave how many steps must come before it, one after another; 1 for joints of pieces
 * @param massInHand mass of all that hangs together during the step, in kilograms
 * @param carriedMass mass that is carried by the rule of the limits, in kilograms
 * @param time how long it takes, in seconds
 * @param team which team makes it, from 1
 * @param startTime when it starts, in seconds after the first
 */
public record JoinStep(
    int number,
    Joint joint,
    Arc left,
    Arc right,
    boolean closing,
    int wave,
    double massInHand,
    double carriedMass,
    double time,
    int team,
    double startTime) {

  /**
   * Gives the end of the step.
   *
   * @return in seconds after the start of the first
   */
  public double endTime() {
    return startTime + time;
  }
}
