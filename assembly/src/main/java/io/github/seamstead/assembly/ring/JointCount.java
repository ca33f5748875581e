package io.github.seamstead.assembly.ring;

/**
 * How much there is to prepare and to join.
 *
 * <p>A ring of n pieces has n joints and 2n edges to prepare; a line has n - 1 joints and 2(n - 1).
 * An edge count is twice the joint count: time is per joint, so it is spent once.
 *
 * @param pieces how many pieces
 * @param joints how many joints
 * @param edgesToPrepare how many edges belong to a joint
 * @param freeEdges how many side edges stay free: 0 for a ring, 2 for a line
 * @param jointLength all joints together, each counted once, in metres
 */
public record JointCount(
    int pieces, int joints, int edgesToPrepare, int freeEdges, double jointLength) {

  /**
   * Says the count in one sentence.
   *
   * @return such as {@code 8 pieces: 8 joints, 16 edges to prepare, none free}
   */
  public String text() {
    return pieces
        + (pieces == 1 ? " piece: " : " pieces: ")
        + joints
        + (joints == 1 ? " joint, " : " joints, ")
        + edgesToPrepare
        + " edges to prepare, "
        + (freeEdges == 0 ? "none" : Integer.toString(freeEdges))
        + " free";
  }
}
