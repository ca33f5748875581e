package io.github.seamstead.materials.mix;

/** What the parts of a proportion are parts of. */
public enum Basis {
  /** Parts of mass without any water. */
  DRY_MASS("by dry mass"),
  /** Parts of mass as it lies, with its water. */
  DAMP_MASS("by mass as it lies, damp"),
  /** Parts of loose volume as it lies, bulked by its dampness: what a bucket measures. */
  LOOSE_VOLUME("by bucket, loose and as damp as it lies");

  private final String label;

  Basis(String label) {
    this.label = label;
  }

  /**
   * Names the basis.
   *
   * @return for example {@code by dry mass}
   */
  public String label() {
    return label;
  }
}
