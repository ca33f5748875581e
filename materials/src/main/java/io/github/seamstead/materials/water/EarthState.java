package io.github.seamstead.materials.water;

/** How earth lies. */
public enum EarthState {
  /** Undisturbed in the ground. */
  BANK,
  /** Dug, in the heap, the bucket or the trailer. */
  LOOSE,
  /** Rammed or rolled in place. */
  COMPACTED
}
