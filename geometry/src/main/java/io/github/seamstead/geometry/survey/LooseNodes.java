package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which nodes move against the rest. Loose motions say only how nodes move against each other; to
 * name the loose ones, the node that fits worst to a common rigid motion is set aside, again and
 * again, until the rest moves as one body.
 */
final class LooseNodes {

  /** Of a unit motion, squared: below it a node stays in the body. */
  private static final double STAYS = 1e-10;

  private LooseNodes() {}

  /** O(n² d) for n nodes and d loose motions. */
  static List<Node> of(List<Node> nodes, NetworkModel model, List<double[]> loose) {
    List<double[]> rigid = Arrays.asList(model.freeMotions(model.start()));
    List<Integer> body = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      body.add(i);
    }
    List<Node> moving = new ArrayList<>();
    while (body.size() > 1) {
      double[] misfit = misfits(body, model, rigid, loose);
      int worst = 0;
      for (int k = 1; k < misfit.length; k++) {
        // Of equals the last goes: marks on the ground before corners of panels.
        worst = misfit[k] >= misfit[worst] * (1 - 1e-9) ? k : worst;
      }
      if (misfit[worst] < STAYS) {
        break;
      }
      moving.add(nodes.get(body.remove(worst)));
    }
    // Two nodes are no body that the others could move against.
    if (body.size() < 3) {
      return nodes;
    }
    moving.sort(null);
    return moving;
  }

  private static double[] misfits(
      List<Integer> body, NetworkModel model, List<double[]> rigid, List<double[]> loose) {
    List<double[]> basis = FreeMotions.orthonormal(restricted(body, model, rigid));
    double[] misfit = new double[body.size()];
    for (double[] motion : restricted(body, model, loose)) {
      for (double[] b : basis) {
        FreeMotions.add(motion, -FreeMotions.dot(motion, b), b);
      }
      for (int i = 0; i < motion.length; i++) {
        misfit[i / 3] += motion[i] * motion[i];
      }
    }
    return misfit;
  }

  private static List<double[]> restricted(
      List<Integer> body, NetworkModel model, List<double[]> motions) {
    List<double[]> parts = new ArrayList<>();
    for (double[] motion : motions) {
      double[] part = new double[3 * body.size()];
      for (int k = 0; k < body.size(); k++) {
        for (int axis = 0; axis < 3; axis++) {
          part[3 * k + axis] = motion[model.unknown(body.get(k), axis)];
        }
      }
      parts.add(part);
    }
    return parts;
  }
}
