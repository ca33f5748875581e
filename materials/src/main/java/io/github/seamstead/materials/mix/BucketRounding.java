package io.github.seamstead.materials.mix;

/** How far the buckets of a recipe are rounded. */
public enum BucketRounding {
  /** Not at all. */
  NONE(0),
  /** To half buckets, such as 1 to 2½. */
  HALF(0.5),
  /** To whole buckets, such as 2 to 5. */
  WHOLE(1);

  private final double step;

  BucketRounding(double step) {
    this.step = step;
  }

  /** The step in buckets; 0 for none. */
  double step() {
    return step;
  }
}
