package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.List;

/**
 * The turns that a piece may take on the stock.
 *
 * @param any true if every angle is allowed
 * @param angles the allowed angles counter-clockwise from the piece as drawn, in radians from 0 up
 *     to less than 2π, rising; empty if {@code any}
 */
public record Rotations(boolean any, List<Double> angles) {

  /** Angles nearer than this, in radians, are one. */
  private static final double SAME = 1e-12;

  /**
   * Brings the angles into one turn, sorts them and drops repeats.
   *
   * @param any true if every angle is allowed
   * @param angles in radians, at least one unless {@code any}; at most 3600
   * @throws IllegalArgumentException if an angle is not finite or the number is out of range
   */
  public Rotations {
    if (any) {
      angles = List.of();
    } else {
      Args.within("number of rotations", angles.size(), 1, 3600);
      List<Double> turned = new ArrayList<>();
      for (double angle : angles) {
        double full = 2 * Math.PI;
        double a = Args.finite("rotation", angle, "rad") % full;
        a = a < 0 ? a + full : a;
        turned.add(full - a < SAME ? 0.0 : a);
      }
      turned.sort(null);
      List<Double> distinct = new ArrayList<>();
      for (double a : turned) {
        if (distinct.isEmpty() || a - distinct.get(distinct.size() - 1) > SAME) {
          distinct.add(a);
        }
      }
      angles = List.copyOf(distinct);
    }
  }

  /**
   * Allows the piece only as drawn.
   *
   * @return the angle 0 alone
   */
  public static Rotations none() {
    return new Rotations(false, List.of(0.0));
  }

  /**
   * Allows the piece as drawn and turned by half a turn, as a woven fabric does.
   *
   * @return the angles 0 and π
   */
  public static Rotations halfTurn() {
    return new Rotations(false, List.of(0.0, Math.PI));
  }

  /**
   * Allows given angles.
   *
   * @param radians counter-clockwise from the piece as drawn; 0 only if it is given
   * @return the angles
   * @throws IllegalArgumentException if there is none or one is not finite
   */
  public static Rotations of(double... radians) {
    List<Double> list = new ArrayList<>();
    for (double r : radians) {
      list.add(r);
    }
    return new Rotations(false, list);
  }

  /**
   * Allows every angle, as a fabric without weave or print direction does.
   *
   * @return every angle
   */
  public static Rotations anyAngle() {
    return new Rotations(true, List.of());
  }
}
