package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.Deficiency.Quantity;
import io.github.seamstead.geometry.survey.Deficiency.Suggestion;
import io.github.seamstead.geometry.survey.SurveyShape.PanelEdge;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Chooses readings that stop loose motions: each time the pair whose row a is longest on the loose
 * motions that are left, {@code |a Z|} (greedy, as in QR with column pivoting). A distance is
 * preferred; a height is offered only where all distances stay the same to first order.
 */
final class DeficiencyFinder {

  private static final double LEAST_SHARPNESS = 1e-3;

  private DeficiencyFinder() {}

  static Deficiency describe(
      Survey survey, List<Node> nodes, NetworkModel model, List<double[]> loose) {
    List<Node> moving = LooseNodes.of(nodes, model, loose);
    return new Deficiency(survey, loose.size(), moving, suggest(nodes, model, loose));
  }

  private static List<Suggestion> suggest(
      List<Node> nodes, NetworkModel model, List<double[]> loose) {
    List<double[]> left = new ArrayList<>(loose);
    List<Suggestion> suggestions = new ArrayList<>();
    List<PanelEdge> pairs = ReadingPlanner.pairs(nodes);
    while (!left.isEmpty() && suggestions.size() < Deficiency.MOST_SUGGESTIONS) {
      Choice best = best(nodes, model, left, pairs, Quantity.DISTANCE);
      if (best.sharpness < LEAST_SHARPNESS) {
        best = best(nodes, model, left, pairs, Quantity.HEIGHT_DIFFERENCE);
      }
      if (best.sharpness < LEAST_SHARPNESS) {
        break;
      }
      suggestions.add(
          new Suggestion(best.quantity, best.pair.from(), best.pair.to(), best.sharpness));
      left = without(left, best.along);
    }
    return suggestions;
  }

  private static final class Choice {

    private final Quantity quantity;
    private final PanelEdge pair;
    private final double sharpness;
    private final double[] along;

    Choice(Quantity quantity, PanelEdge pair, double sharpness, double[] along) {
      this.quantity = quantity;
      this.pair = pair;
      this.sharpness = sharpness;
      this.along = along;
    }
  }

  private static Choice best(
      List<Node> nodes,
      NetworkModel model,
      List<double[]> left,
      List<PanelEdge> pairs,
      Quantity quantity) {
    double[] x = model.start();
    DesignRow row = new DesignRow(6);
    Choice best = new Choice(quantity, pairs.get(0), 0, new double[left.size()]);
    for (PanelEdge pair : pairs) {
      int from = Collections.binarySearch(nodes, pair.from());
      int to = Collections.binarySearch(nodes, pair.to());
      row.clear();
      if (quantity == Quantity.DISTANCE) {
        model.distance(from, to, 3, x, row);
      } else {
        row.add(model.unknown(from, 2), -1);
        row.add(model.unknown(to, 2), 1);
      }
      double[] along = new double[left.size()];
      for (int k = 0; k < along.length; k++) {
        along[k] = row.dot(left.get(k));
      }
      double sharpness = Math.sqrt(FreeMotions.dot(along, along));
      // Strictly better by more than rounding, so that ties go to the first pair by name.
      if (sharpness > best.sharpness * (1 + 1e-9)) {
        best = new Choice(quantity, pair, sharpness, along);
      }
    }
    return best;
  }

  /**
   * The loose motions that the chosen row does not see: the basis turned by a Householder
   * reflection that takes {@code along} to the first axis, less that first motion.
   */
  private static List<double[]> without(List<double[]> motions, double[] along) {
    int size = along.length;
    double[] w = along.clone();
    double length = Math.sqrt(FreeMotions.dot(along, along));
    w[0] += w[0] < 0 ? -length : length;
    double square = FreeMotions.dot(w, w);
    double[] mixed = new double[motions.get(0).length];
    for (int k = 0; k < size; k++) {
      FreeMotions.add(mixed, w[k], motions.get(k));
    }
    List<double[]> rest = new ArrayList<>();
    for (int k = 1; k < size; k++) {
      double[] motion = motions.get(k).clone();
      FreeMotions.add(motion, -2 * w[k] / square, mixed);
      rest.add(motion);
    }
    return rest;
  }
}
