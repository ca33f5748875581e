package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.work.Cancellation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sets the network up at its start frame and solves it. */
final class Adjuster {

  private Adjuster() {}

  static SurveyOutcome adjust(Survey survey, Cancellation cancellation) {
    return attempt(survey, cancellation).orElseThrow(() -> ArgumentFault.finding(message(survey)));
  }

  /** Adjusts; empty if the steps do not settle. */
  static Optional<SurveyOutcome> attempt(Survey survey, Cancellation cancellation) {
    List<Node> nodes = survey.nodes();
    Map<Node, Integer> places = new HashMap<>();
    NetworkModel model = model(survey, nodes, places);
    List<double[]> loose = LooseMotions.of(model, cancellation);
    if (!loose.isEmpty()) {
      return Optional.of(DeficiencyFinder.describe(survey, nodes, model, loose));
    }
    return GaussNewton.solve(model, cancellation)
        .map(solution -> new Adjustment(survey, nodes, places, model, solution));
  }

  private static NetworkModel model(Survey survey, List<Node> nodes, Map<Node, Integer> places) {
    StartFrame frame = StartFrame.of(survey.shape(), survey.readings());
    double[][] coordinates = new double[nodes.size()][];
    for (int i = 0; i < nodes.size(); i++) {
      places.put(nodes.get(i), i);
      coordinates[i] = frame.place(nodes.get(i));
    }
    return new NetworkModel(places, coordinates, new boolean[nodes.size()][3], survey.readings());
  }

  /** Names the reading that is furthest off the regular frame, for want of anything better. */
  private static String message(Survey survey) {
    NetworkModel model = model(survey, survey.nodes(), new HashMap<>());
    DesignRow row = new DesignRow(model.mostPerObservation());
    double[] start = model.start();
    int worst = 0;
    double most = 0;
    for (int i = 0; i < model.observations(); i++) {
      double misclosure = Math.abs(model.evaluate(i, start, row));
      if (misclosure > most) {
        most = misclosure;
        worst = i;
      }
    }
    Reading reading = survey.readings().get(worst);
    double regular = reading.value() - model.evaluate(worst, start, row);
    return "readings: no frame near to a regular one fits them all; furthest off is reading "
        + (worst + 1)
        + " ("
        + reading.name()
        + "): given "
        + Numbers.fixed(reading.value(), 3)
        + " m, a regular frame has about "
        + Numbers.fixed(regular, 3)
        + " m";
  }
}
