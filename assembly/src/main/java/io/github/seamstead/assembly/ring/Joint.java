package io.github.seamstead.assembly.ring;

/**
 * Two edges that belong together.
 *
 * @param number the joint's number, from 1
 * @param mark the name and check that both edges carry
 * @param first the right edge of the piece before
 * @param second the left edge of the piece after
 * @param length length of the joint, in metres
 */
public record Joint(int number, JointMark mark, Edge first, Edge second, double length) {

  /**
   * Writes the joint for a tick list.
   *
   * @return such as {@code C-32: 3R to 4L}
   */
  public String text() {
    return mark.text() + ": " + first.label() + " to " + second.label();
  }
}
