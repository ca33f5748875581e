package io.github.seamstead.assembly.ring;

/** Whether the pieces close on themselves. */
public enum Closure {
  /** The last piece is joined to the first: n pieces have n joints. */
  RING,
  /** The two outer edges stay free: n pieces have n - 1 joints. */
  LINE
}
