package io.github.seamstead.assembly.ring;

import java.util.Optional;

/**
 * A seam as it was made, right or wrong.
 *
 * @param entry the number of its line in the log, from 1
 * @param first one edge
 * @param second the other edge
 * @param facing which sides lay together
 * @param joint the joint, if the two edges belong together
 */
public record Seam(int entry, Edge first, Edge second, Facing facing, Optional<Joint> joint) {

  /**
   * Tells whether the two edges belong together and the good sides lay together.
   *
   * @return true if the seam may stay
   */
  public boolean isRight() {
    return joint.isPresent() && facing == Facing.GOOD_TOGETHER;
  }

  /**
   * Writes the seam.
   *
   * @return such as {@code entry 5: 3R to 5L}
   */
  public String text() {
    return "entry " + entry + ": " + first.label() + " to " + second.label();
  }
}
