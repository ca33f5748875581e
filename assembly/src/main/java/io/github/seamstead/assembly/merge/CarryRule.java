package io.github.seamstead.assembly.merge;

/** Which mass counts against the limits at a merge. */
public enum CarryRule {
  /**
   * The heavier group stays where it lies and the lighter one is carried to it. At the closing
   * joint the cover is folded end to end, which moves half of it.
   */
  LIGHTER_IS_CARRIED,
  /** Both groups are lifted, as over a table or a rail; at the closing joint the whole cover. */
  BOTH_ARE_LIFTED
}
