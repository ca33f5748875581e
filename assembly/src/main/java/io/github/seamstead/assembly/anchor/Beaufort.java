package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A force of the Beaufort scale: a mean speed at 10 m over open ground. Gusts run about half as
 * fast again.
 *
 * @param force 0 to 12
 * @param low least mean speed, in m/s, as printed to a tenth
 * @param high greatest mean speed, in m/s, as printed; infinite for force 12, which has no upper
 *     end
 * @param sign what is seen on land
 */
public record Beaufort(int force, double low, double high, String sign) {

  /** Where the limits stand. */
  public static final Source SOURCE =
      Source.found("", "Beaufort scale in metres per second", "", "limits of forces 3 to 12");

  private static final double[] LOW = {
    0, 0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7
  };
  private static final String[] SIGNS = {
    "smoke rises straight",
    "smoke drifts",
    "wind felt on the face, leaves rustle",
    "leaves and twigs move all the time",
    "dust and paper rise, small branches move",
    "small trees sway",
    "large branches move, umbrellas are hard to use",
    "whole trees move, walking is uneasy",
    "twigs break, gusts put people off balance",
    "people risk being blown over, buildings begin to take damage",
    "trees are uprooted, damage is common",
    "much damage",
    "very extensive damage"
  };

  /**
   * Finds the force of a mean speed. Speeds are rounded to a tenth, as the limits are printed.
   *
   * @param speed mean speed at 10 m, in m/s, 0 to 150
   * @return the force
   * @throws IllegalArgumentException if the speed is out of range
   */
  public static Beaufort of(double speed) {
    Args.within("mean wind speed", speed, 0, 150, "m/s");
    double tenth = Math.round(speed * 10) / 10.0;
    int force = 12;
    while (LOW[force] > tenth) {
      force--;
    }
    return ofForce(force);
  }

  /**
   * Gives a force.
   *
   * @param force 0 to 12
   * @return its limits and sign
   * @throws IllegalArgumentException if there is no such force
   */
  public static Beaufort ofForce(int force) {
    Args.within("Beaufort force", force, 0, 12);
    double high =
        force == 12 ? Double.POSITIVE_INFINITY : Math.round(LOW[force + 1] * 10 - 1) / 10.0;
    return new Beaufort(force, LOW[force], high, SIGNS[force]);
  }

  /**
   * Gives the whole scale.
   *
   * @return forces 0 to 12
   */
  public static List<Beaufort> scale() {
    return IntStream.rangeClosed(0, 12).mapToObj(Beaufort::ofForce).toList();
  }
}
