package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * The allowances round a face.
 *
 * @param base along the base, edge 0
 * @param right along the right hip, edge 1
 * @param top along what lies between the hips at the top; without effect on a face with an apex
 * @param left along the left hip, the last edge
 */
public record EdgePlan(
    EdgeAllowance base, EdgeAllowance right, EdgeAllowance top, EdgeAllowance left) {

  /**
   * Plans a face with the same seam on both hips.
   *
   * @param base along the base
   * @param seam along both hips
   * @param top along the top edge, if there is one
   * @return the plan
   */
  public static EdgePlan of(EdgeAllowance base, EdgeAllowance seam, EdgeAllowance top) {
    return new EdgePlan(base, seam, top, seam);
  }

  /**
   * Spreads the plan over the edges of a face.
   *
   * @param face a face with three corners or more
   * @return one allowance for each edge, in the order of the edges
   */
  public List<EdgeAllowance> forFace(Outline face) {
    return forFaces(face, 1);
  }

  /**
   * Spreads the plan over the edges of faces side by side.
   *
   * @param fan one outline round the faces: their bases, the right hip, the tops, the left hip
   * @param faces how many faces, 1 or more
   * @return one allowance for each edge, in the order of the edges
   */
  public List<EdgeAllowance> forFaces(Outline fan, int faces) {
    List<EdgeAllowance> allowances = new ArrayList<>(fan.size());
    for (int i = 0; i < faces; i++) {
      allowances.add(base);
    }
    allowances.add(right);
    for (int i = faces + 1; i < fan.size() - 1; i++) {
      allowances.add(top);
    }
    allowances.add(left);
    return allowances;
  }
}
