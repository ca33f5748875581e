package io.github.seamstead.geometry.members;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * Equal members of a frame.
 *
 * @param role what they are
 * @param name for a label, such as {@code purlin ring 1}; not blank
 * @param count how many; greater than 0
 * @param section their cross-section
 * @param height of their centre lines above the base (of a hip, of its foot), in metres
 * @param centreLine node to node, in metres; greater than 0
 * @param cutLength what is taken from the bar, in metres: the centre line less the set-backs and,
 *     where the cuts slant, on to the longest points; greater than 0
 * @param cuts the saw settings at their ends, with which the cut length belongs
 */
public record FrameMember(
    Role role,
    String name,
    int count,
    MemberSection section,
    double height,
    double centreLine,
    double cutLength,
    List<EndCut> cuts) {

  /** What a member is. */
  public enum Role {
    /** From a base corner up along a hip. */
    HIP_POLE,
    /** Along a side of the base. */
    BASE_RING,
    /** Along a side of the opening. */
    OPENING_RING,
    /** Level across a face between base and top. */
    PURLIN
  }

  /**
   * A saw setting at an end.
   *
   * @param where which end and against what
   * @param laidOn which face lies on the saw table
   * @param setting mitre and tilt
   */
  public record EndCut(String where, String laidOn, CompoundCut setting) {}

  public FrameMember {
    Args.notBlank("member name", name);
    Args.positive("centre line of " + name, centreLine, "m");
    Args.positive("cut length of " + name, cutLength, "m");
    cuts = List.copyOf(cuts);
  }
}
