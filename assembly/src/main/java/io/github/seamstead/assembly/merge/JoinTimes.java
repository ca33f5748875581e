package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;

/**
 * How long a joint takes: {@code t = set-up + rate * length + handling * mass in hand}.
 *
 * @param setUpTime per joint, whatever its length, in seconds, 0 or more
 * @param timePerLength per metre of joint, in s/m, 0 or more
 * @param timePerMass per kilogram in hand, in s/kg, 0 or more
 */
public record JoinTimes(double setUpTime, double timePerLength, double timePerMass) {

  /** Eight to ten minutes to staple one seam of a small shelter. */
  public static final Source SEAM_PRACTICE =
      Source.commonPractice("8 to 10 minutes to staple one seam of a small shelter");

  public JoinTimes {
    Args.notNegative("set-up", setUpTime, "s");
    Args.notNegative("time per metre", timePerLength, "s/m");
    Args.notNegative("time per kilogram", timePerMass, "s/kg");
    Args.require(
        setUpTime + timePerLength + timePerMass > 0,
        "join times: given 0 for all, one must be greater than 0");
  }

  /**
   * Takes nine minutes for each joint, the middle of {@link #SEAM_PRACTICE}.
   *
   * @return 540 s per joint
   */
  public static JoinTimes commonPractice() {
    return new JoinTimes(540, 0, 0);
  }

  /**
   * Computes the time of one joint.
   *
   * @param length length of the joint, in metres
   * @param massInHand mass in hand, in kilograms
   * @return in seconds
   */
  public double time(double length, double massInHand) {
    return setUpTime + timePerLength * length + timePerMass * massInHand;
  }
}
