package io.github.seamstead.assembly.ring;

/** A side edge of a piece, as seen by somebody who looks at the good side with the hem down. */
public enum Side {
  /** The left edge. */
  LEFT,
  /** The right edge. */
  RIGHT;

  /**
   * Gives the other side.
   *
   * @return right for left, left for right
   */
  public Side opposite() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
