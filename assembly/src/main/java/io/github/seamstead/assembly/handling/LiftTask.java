package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;

/**
 * A lift by one standing person with both hands.
 *
 * @param from where the lift starts
 * @param to where it ends
 * @param liftsPerMinute lifts a minute, averaged over 15 minutes, 0 to 60
 * @param duration how long it goes on
 * @param coupling how well the hands hold
 * @param placed true if the load must be placed with care at the end, so that the end counts too
 */
public record LiftTask(
    LiftPoint from,
    LiftPoint to,
    double liftsPerMinute,
    LiftDuration duration,
    Coupling coupling,
    boolean placed) {

  public LiftTask {
    Args.within("lifts a minute", liftsPerMinute, 0, 60, "1/min");
  }

  /**
   * Makes a task with the same reach and twist at both ends, the load placed with care.
   *
   * @param reach horizontal distance of the hands from the ankles, in metres, 0 to 2
   * @param fromHeight height of the hands at the start, in metres, 0 to 3
   * @param toHeight height of the hands at the end, in metres, 0 to 3
   * @param twist angle out of the body's front, in radians, 0 to a half turn
   * @param liftsPerMinute lifts a minute, 0 to 60
   * @param duration how long it goes on
   * @param coupling how well the hands hold
   * @return the task
   * @throws IllegalArgumentException if a number is out of range
   */
  public static LiftTask of(
      double reach,
      double fromHeight,
      double toHeight,
      double twist,
      double liftsPerMinute,
      LiftDuration duration,
      Coupling coupling) {
    return new LiftTask(
        new LiftPoint(reach, fromHeight, twist),
        new LiftPoint(reach, toHeight, twist),
        liftsPerMinute,
        duration,
        coupling,
        true);
  }

  /**
   * Makes the lift of a bundle of known depth, held against the body, no twist, now and then, poor
   * coupling. The reach is {@code 20 cm + depth / 2}, or {@code 25 cm + depth / 2} where the hands
   * start or end lower than 25 cm, as in the manual of the revised lifting equation (from memory).
   *
   * @param depth depth of the bundle from the body outwards, in metres, greater than 0, at most 2
   * @param fromHeight height of the hands at the start, in metres, 0 to 3
   * @param toHeight height of the hands at the end, in metres, 0 to 3
   * @return the task
   * @throws IllegalArgumentException if a number is out of range
   */
  public static LiftTask ofBundle(double depth, double fromHeight, double toHeight) {
    Args.positive("depth of the bundle", depth, "m");
    Args.within("depth of the bundle", depth, 0, 2, "m");
    return new LiftTask(
        new LiftPoint(reach(depth, fromHeight), fromHeight, 0),
        new LiftPoint(reach(depth, toHeight), toHeight, 0),
        LiftDuration.LEAST_FREQUENCY,
        LiftDuration.UP_TO_ONE_HOUR,
        Coupling.POOR,
        true);
  }

  private static double reach(double depth, double height) {
    return (height < 0.25 ? 0.25 : 0.20) + depth / 2;
  }

  /**
   * Gives the usual lift of a bundle of cloth: from the ground to the knuckles, hands 40 cm in
   * front of the ankles, no twist, now and then, poor coupling. Common practice.
   *
   * @return the task
   */
  public static LiftTask ofBundle() {
    return of(
        0.40, 0, 0.75, 0, LiftDuration.LEAST_FREQUENCY, LiftDuration.UP_TO_ONE_HOUR, Coupling.POOR);
  }
}
