package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far each reading is off the regular frame that the readings themselves suggest. Frames are
 * bent by centimetres and blunders are of decimetres: where least squares cannot tell whose error
 * it is, a reading that is off far more than all others is the likelier culprit. The usual bend is
 * estimated by the median, {@code 1.4826 median |off|}, which half of the readings may spoil.
 */
final class RegularEvidence {

  /** The factor that makes the median of absolute deviations a standard deviation. */
  private static final double MEDIAN_TO_SIGMA = 1.4826;

  /** A frame is never taken for straighter than this many reading uncertainties. */
  private static final double LEAST_BEND = 3;

  /** Off by more usual bends than this, a reading is grossly off. */
  private static final double GROSS = 6;

  /** And by this factor more than the next. */
  private static final double ALONE = 2;

  private final double[] off;
  private final double bend;

  RegularEvidence(Survey survey) {
    List<Reading> readings = survey.readings();
    List<Node> nodes = survey.nodes();
    StartFrame frame =
        StartFrame.of(
            new SurveyShape(survey.shape().sides(), survey.shape().truncated(), Optional.empty()),
            readings);
    Map<Node, Integer> places = new HashMap<>();
    double[][] coordinates = new double[nodes.size()][];
    for (int i = 0; i < nodes.size(); i++) {
      places.put(nodes.get(i), i);
      coordinates[i] = frame.place(nodes.get(i));
    }
    NetworkModel model =
        new NetworkModel(places, coordinates, new boolean[nodes.size()][3], readings);
    DesignRow row = new DesignRow(model.mostPerObservation());
    double[] start = model.start();
    this.off = new double[readings.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = model.evaluate(i, start, row);
    }
    double[] sizes = Arrays.stream(off).map(Math::abs).sorted().toArray();
    this.bend =
        Math.max(
            MEDIAN_TO_SIGMA * sizes[sizes.length / 2],
            LEAST_BEND * ReadingPlanner.usualUncertainty(readings));
  }

  /**
   * The standard uncertainty with which a regular frame's value stands in for a reading, in metres:
   * the root of the mean square of what is not grossly off, which the median of a frame with few
   * bent corners would understate.
   */
  double standInUncertainty() {
    double squares = 0;
    int count = 0;
    for (int i = 0; i < off.length; i++) {
      if (ratio(i) <= GROSS) {
        squares += off[i] * off[i];
        count++;
      }
    }
    return Math.max(bend, count == 0 ? 0 : Math.sqrt(squares / count));
  }

  /** What a regular frame has there, in metres. */
  double regular(int index, Reading reading) {
    return reading.value() - off[index];
  }

  /** How far a reading is off, in usual bends. */
  double ratio(int index) {
    return Math.abs(off[index]) / bend;
  }

  /** The reading among these that is grossly off, and far more so than any other. */
  Optional<Integer> gross(List<Integer> indices) {
    List<Integer> sorted = new ArrayList<>(indices);
    sorted.sort((a, b) -> Double.compare(ratio(b), ratio(a)));
    double first = ratio(sorted.get(0));
    double next = sorted.size() > 1 ? ratio(sorted.get(1)) : 0;
    return first > GROSS && first > ALONE * next ? Optional.of(sorted.get(0)) : Optional.empty();
  }
}
