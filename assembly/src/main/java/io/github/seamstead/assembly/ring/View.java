package io.github.seamstead.assembly.ring;

/** From where the map is seen. */
public enum View {
  /**
   * The finished cover from outside, good side towards the reader: pieces run 1, 2, 3 rightwards.
   */
  AS_IT_STANDS,
  /**
   * The cover in work: inside out, plain side up. It is the mirror image: pieces run 3, 2, 1
   * rightwards and each piece's right edge lies on the reader's left.
   */
  AS_IT_LIES
}
