package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;

/**
 * Where the hands are at the start or end of a lift.
 *
 * @param reach horizontal distance of the hands from the midpoint between the ankles, in metres, 0
 *     to 2
 * @param height height of the hands over the floor, in metres, 0 to 3
 * @param twist angle of the load out of the body's front, in radians, 0 to a half turn
 */
public record LiftPoint(double reach, double height, double twist) {

  public LiftPoint {
    Args.within("reach of the hands", reach, 0, 2, "m");
    Args.within("height of the hands", height, 0, 3, "m");
    Args.within("twist", Math.toDegrees(twist), 0, 180, "deg");
  }
}
