package io.github.seamstead.assembly.ring;

/** Which sides of the two pieces lay against each other when the seam was made. */
public enum Facing {
  /** Good side to good side: right, for the cover is turned afterwards. */
  GOOD_TOGETHER("good sides together"),
  /** Plain side to plain side: the seam would stand outside. */
  PLAIN_TOGETHER("plain sides together"),
  /** Good side to plain side: one piece would show its plain side. */
  GOOD_TO_PLAIN("good side to plain side");

  private final String label;

  Facing(String label) {
    this.label = label;
  }

  /**
   * Names the facing as the book prints it.
   *
   * @return for example {@code good sides together}
   */
  public String label() {
    return label;
  }
}
