package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;

/**
 * Where the hands are at the start or end of a lift.
 *
 * @param reachMetres horizontal distance of the hands from the midpoint between the ankles, in
 *     metres, 0 to 2
 * @param heightMetres height of the hands over the floor, in metres, 0 to 3
 * @param twistRadians angle of the load out of the body's front, in radians, 0 to a half turn
 */
public record LiftPoint(double reachMetres, double heightMetres, double twistRadians) {

  public LiftPoint {
    Args.within("reach of the hands", reachMetres, 0, 2, "m");
    Args.within("height of the hands", heightMetres, 0, 3, "m");
    Args.within("twist", Math.toDegrees(twistRadians), 0, 180, "deg");
  }
}
