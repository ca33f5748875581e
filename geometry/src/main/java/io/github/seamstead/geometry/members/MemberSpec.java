package io.github.seamstead.geometry.members;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * What the frame is built of and how its members end.
 *
 * @param hips section of the hip poles
 * @param rings section of base ring, opening ring and purlins
 * @param footSetBack from the base node to where the centre line of a hip is cut, in metres, 0 or
 *     more; a pipe set back is cut square, a timber level
 * @param headSetBack from the apex or opening node to where the centre line of a hip is cut, in
 *     metres, 0 or more; a pipe set back is cut square, a timber plumb
 * @param ringSetBack from the node to where the centre line of a ring member or purlin is cut, at
 *     both ends, in metres, 0 or more; a pipe set back is cut square, a timber to the mitre
 * @param stance how base and opening ring lie; purlins always lie in the faces
 * @param purlinHeights heights of purlin rings above the base, in metres, rising; each greater than
 *     0
 */
public record MemberSpec(
    MemberSection hips,
    MemberSection rings,
    double footSetBack,
    double headSetBack,
    double ringSetBack,
    Stance stance,
    List<Double> purlinHeights) {

  /** How a ring's members lie. */
  public enum Stance {
    /** The width lies level. */
    LEVEL,
    /** The width lies in the faces and so leans with them. */
    IN_FACE
  }

  public MemberSpec {
    Args.notNegative("set-back at the foot", footSetBack, "m");
    Args.notNegative("set-back at the head", headSetBack, "m");
    Args.notNegative("set-back of the rings", ringSetBack, "m");
    purlinHeights.forEach(height -> Args.positive("height of a purlin ring", height, "m"));
    purlinHeights = purlinHeights.stream().sorted().distinct().toList();
  }

  /**
   * Members that end at the nodes, rings level, without purlins.
   *
   * @param hips section of the hip poles
   * @param rings section of the rings
   * @return the specification
   */
  public static MemberSpec of(MemberSection hips, MemberSection rings) {
    return new MemberSpec(hips, rings, 0, 0, 0, Stance.LEVEL, List.of());
  }

  /**
   * Sets the members back from their nodes, as for bolt plates, hubs or flattened ends.
   *
   * @param foot of hips at the base, in metres, 0 or more
   * @param head of hips at the top, in metres, 0 or more
   * @param ring of ring members at both ends, in metres, 0 or more
   * @return the new specification
   * @throws IllegalArgumentException if a set-back is negative
   */
  public MemberSpec withSetBacks(double foot, double head, double ring) {
    return new MemberSpec(hips, rings, foot, head, ring, stance, purlinHeights);
  }

  /**
   * Lays base and opening ring level or in the faces.
   *
   * @param newStance how they lie
   * @return the new specification
   */
  public MemberSpec withStance(Stance newStance) {
    return new MemberSpec(
        hips, rings, footSetBack, headSetBack, ringSetBack, newStance, purlinHeights);
  }

  /**
   * Adds purlin rings.
   *
   * @param heights above the base, in metres, each greater than 0 and below the frame's top
   * @return the new specification
   * @throws IllegalArgumentException if a height is not positive
   */
  public MemberSpec withPurlinsAt(List<Double> heights) {
    return new MemberSpec(hips, rings, footSetBack, headSetBack, ringSetBack, stance, heights);
  }
}
