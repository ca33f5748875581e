package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import java.util.Comparator;
import java.util.List;

/**
 * How two panels' edges meet in a seam.
 *
 * @param first length of the first panel's edge on the stitch line, in metres
 * @param second length of the second panel's edge, in metres
 * @param firstNotches distances of the first one's notches from the base, rising, in metres
 * @param secondNotches distances of the second one's notches from the base, rising, in metres
 */
public record SeamMatch(
    double first, double second, List<Double> firstNotches, List<Double> secondNotches) {

  public SeamMatch {
    firstNotches = List.copyOf(firstNotches);
    secondNotches = List.copyOf(secondNotches);
  }

  /**
   * Compares the right hip of one panel with the left hip of its neighbour, all parts together.
   *
   * @param left the panel on the left seen from outside, whose right hip is joined
   * @param right its neighbour on the right, whose left hip is joined
   * @return lengths and notches of both
   */
  public static SeamMatch between(Panel left, Panel right) {
    return between(left, left.rightHip(), right, right.leftHip());
  }

  /**
   * Compares any two edges that are to be joined, all parts together.
   *
   * @param one a panel
   * @param oneEdge its face's edge
   * @param other another panel or the same
   * @param otherEdge its face's edge
   * @return lengths and notches of both
   * @throws IllegalArgumentException if a face has no such edge
   */
  public static SeamMatch between(Panel one, int oneEdge, Panel other, int otherEdge) {
    return new SeamMatch(
        length(one, oneEdge),
        length(other, otherEdge),
        notches(one, oneEdge),
        notches(other, otherEdge));
  }

  /**
   * Gives what must be eased in: positive if the first edge is the longer.
   *
   * @return first less second, in metres
   */
  public double ease() {
    return first - second;
  }

  /**
   * Tells whether each notch has its mate at the same distance from the base.
   *
   * @param tolerance greatest difference, in metres, 0 or more
   * @return true if both have as many notches and none differs by more
   */
  public boolean notchesMatch(double tolerance) {
    if (firstNotches.size() != secondNotches.size()) {
      return false;
    }
    for (int i = 0; i < firstNotches.size(); i++) {
      if (Math.abs(firstNotches.get(i) - secondNotches.get(i)) > tolerance) {
        return false;
      }
    }
    return true;
  }

  private static double length(Panel panel, int faceEdge) {
    Args.within("face edge", faceEdge, 0, panel.face().size() - 1);
    return panel.parts().stream()
        .flatMap(p -> p.edges().stream())
        .filter(e -> e.faceEdge() == faceEdge)
        .mapToDouble(PieceEdge::finishedLength)
        .sum();
  }

  private static List<Double> notches(Panel panel, int faceEdge) {
    return panel.parts().stream()
        .flatMap(
            p -> p.notches().stream().filter(n -> p.edges().get(n.edge()).faceEdge() == faceEdge))
        .map(Notch::fromBase)
        .sorted(Comparator.naturalOrder())
        .toList();
  }
}
