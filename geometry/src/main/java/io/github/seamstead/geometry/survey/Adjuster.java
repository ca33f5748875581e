package io.github.seamstead.geometry.survey;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sets the network up at its start frame and solves it. */
final class Adjuster {

  private Adjuster() {}

  static SurveyOutcome adjust(Survey survey) {
    List<Node> nodes = survey.nodes();
    StartFrame frame = StartFrame.of(survey.shape(), survey.readings());
    Map<Node, Integer> places = new HashMap<>();
    double[][] coordinates = new double[nodes.size()][];
    for (int i = 0; i < nodes.size(); i++) {
      places.put(nodes.get(i), i);
      coordinates[i] = frame.place(nodes.get(i));
    }
    NetworkModel model =
        new NetworkModel(places, coordinates, new boolean[nodes.size()][3], survey.readings());
    List<double[]> loose = LooseMotions.of(model);
    if (!loose.isEmpty()) {
      return DeficiencyFinder.describe(survey, nodes, model, loose);
    }
    GaussNewton.Solution solution =
        GaussNewton.solve(model)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "readings: no frame near to a regular one fits them; a reading or a node"
                            + " name is far off, or nodes are barely determined"));
    return new Adjustment(survey, nodes, places, model, solution);
  }
}
