package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.Deficiency.Quantity;
import io.github.seamstead.geometry.survey.SurveyShape.PanelEdge;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds what nothing controls and the readings that would. Each step takes the unread distance
 * after which most readings are controlled (of equals, the one that adds most to the weak
 * redundancy numbers): with the rank-one update of the covariance a reading's redundancy grows by
 * {@code p (a Q c')^2 / (u^2 + c Q c')}. Where distances help no more, as for the hips of a frame
 * whose base lies in a plane, the base corners are levelled together, since the first levels only
 * fix the tilt; what is left after that is read again. O(c w) per step for c pairs of nodes and w
 * weak readings, and one adjustment.
 */
final class ControlPlanner {

  /** Redundancy beyond this adds nothing: the reading is well controlled. */
  private static final double ENOUGH = 0.3;

  /** A distance that brings no reading over the threshold must at least bring this much. */
  private static final double LEAST_GAIN = 0.02;

  /** An error that moves no line of a panel by this part of itself does no harm. */
  private static final double LEAST_EFFECT = 0.05;

  private static final String CONTROLLING = "it was looked for what no other reading controls";

  private final int original;
  private final List<CheckReading> proposed = new ArrayList<>();
  private final List<Reading> readings;
  private final Cancellation cancellation;
  private Adjustment current;

  private ControlPlanner(Adjustment adjustment, Cancellation cancellation) {
    this.cancellation = cancellation;
    this.current = adjustment;
    this.readings = new ArrayList<>(adjustment.survey().readings());
    this.original = readings.size();
  }

  static SurveyControl of(Adjustment adjustment, Cancellation cancellation) {
    ControlPlanner planner = new ControlPlanner(adjustment, cancellation);
    List<ReadingResult> uncontrolled = planner.weak();
    planner.propose();
    return new SurveyControl(adjustment.degreesOfFreedom(), uncontrolled, planner.proposed);
  }

  /** Those that nothing controls and that move a panel: the height of the centre mark does not. */
  private List<ReadingResult> weak() {
    return current.readings().subList(0, original).stream()
        .filter(r -> !r.isControlled() && movesAPanel(r))
        .toList();
  }

  /** The lines that fix the panels: edges and, with an opening, both diagonals of each face. */
  private static List<PanelEdge> panelLines(SurveyShape shape) {
    List<PanelEdge> lines = new ArrayList<>(shape.panelEdges());
    for (int i = 1; i <= shape.sides() && shape.truncated(); i++) {
      lines.add(new PanelEdge(shape.baseCorner(i - 1), shape.hipTop(i)));
      lines.add(new PanelEdge(shape.baseCorner(i), shape.hipTop(i - 1)));
    }
    return lines;
  }

  /** An error e in a reading moves a line by {@code p (a Q b') e}. */
  private boolean movesAPanel(ReadingResult result) {
    cancellation.goOn(CONTROLLING);
    DesignRow own = new DesignRow(9);
    DesignRow edge = new DesignRow(6);
    current.readingRow(result.number() - 1, own);
    double[] times = own.times(current.cofactors());
    double u = result.reading().standardUncertainty();
    for (PanelEdge pair : panelLines(current.survey().shape())) {
      current.distanceRow(pair.from(), pair.to(), edge);
      if (Math.abs(edge.dot(times)) > LEAST_EFFECT * u * u) {
        return true;
      }
    }
    return false;
  }

  private void propose() {
    boolean levelled = false;
    for (int step = 0; step < SurveyControl.MOST_PROPOSED; step++) {
      List<ReadingResult> weak = weak();
      if (weak.isEmpty()) {
        return;
      }
      Optional<CheckReading> distance = bestDistance(weak);
      if (distance.isPresent()) {
        take(List.of(distance.get()));
      } else if (!levelled) {
        levelled = true;
        int before = weak.size();
        List<CheckReading> levels = levels();
        int kept = proposed.size();
        take(levels);
        if (weak().size() >= before) {
          // Levels that settle nothing are not asked for.
          proposed.subList(kept, proposed.size()).clear();
          readings.subList(readings.size() - levels.size(), readings.size()).clear();
          adjust();
        }
      } else {
        take(weak.stream().map(ControlPlanner::again).flatMap(Optional::stream).toList());
        return;
      }
    }
  }

  private Optional<CheckReading> bestDistance(List<ReadingResult> weak) {
    Set<Set<Node>> read = new HashSet<>();
    for (Reading reading : readings) {
      if (reading instanceof Reading.Distance) {
        read.add(Set.copyOf(reading.nodes()));
      }
    }
    double u = ReadingPlanner.usualUncertainty(readings);
    DesignRow row = new DesignRow(6);
    DesignRow own = new DesignRow(9);
    int most = 0;
    double mostGain = LEAST_GAIN;
    PanelEdge best = null;
    for (PanelEdge pair : ReadingPlanner.pairs(current.nodeNames())) {
      cancellation.goOn(CONTROLLING);
      if (read.contains(Set.of(pair.from(), pair.to()))) {
        continue;
      }
      current.distanceRow(pair.from(), pair.to(), row);
      double[] times = row.times(current.cofactors());
      double divisor = u * u + row.dot(times);
      int controlled = 0;
      double gain = 0;
      for (ReadingResult result : weak) {
        current.readingRow(result.number() - 1, own);
        double shared = own.dot(times) / result.reading().standardUncertainty();
        double after = result.redundancy() + shared * shared / divisor;
        controlled += after >= ReadingResult.CONTROLLED ? 1 : 0;
        gain += Math.min(after, ENOUGH) - result.redundancy();
      }
      // Better by more than rounding, so that ties go to the first pair by name.
      boolean more = controlled > most || (controlled == most && gain > mostGain * (1 + 1e-9));
      if (more && (controlled > 0 || gain > LEAST_GAIN)) {
        most = controlled;
        mostGain = gain;
        best = pair;
      }
    }
    return Optional.ofNullable(best)
        .map(pair -> new CheckReading(Quantity.DISTANCE, pair.from(), pair.to(), false));
  }

  /** From the first base corner to every other that was not levelled from it. */
  private List<CheckReading> levels() {
    Set<Set<Node>> read = new HashSet<>();
    for (Reading reading : readings) {
      if (reading instanceof Reading.HeightDifference) {
        read.add(Set.copyOf(reading.nodes()));
      }
    }
    List<CheckReading> levels = new ArrayList<>();
    SurveyShape shape = current.survey().shape();
    Node first = shape.baseCorner(1);
    for (int i = 2; i <= shape.sides(); i++) {
      Node corner = shape.baseCorner(i);
      if (!read.contains(Set.of(first, corner))) {
        levels.add(new CheckReading(Quantity.HEIGHT_DIFFERENCE, first, corner, false));
      }
    }
    return levels;
  }

  private static Optional<CheckReading> again(ReadingResult result) {
    Node from = result.reading().nodes().get(0);
    Node to = result.reading().nodes().get(1);
    if (result.reading() instanceof Reading.Distance) {
      return Optional.of(new CheckReading(Quantity.DISTANCE, from, to, true));
    }
    if (result.reading() instanceof Reading.HeightDifference) {
      return Optional.of(new CheckReading(Quantity.HEIGHT_DIFFERENCE, from, to, true));
    }
    return Optional.empty();
  }

  /** Takes readings as the frame now predicts them, so that nothing moves but the certainty. */
  private void take(List<CheckReading> checks) {
    double u = ReadingPlanner.usualUncertainty(readings);
    for (CheckReading check : checks) {
      proposed.add(check);
      readings.add(
          check.quantity() == Quantity.DISTANCE
              ? Reading.distance(
                  check.from(), check.to(), current.distance(check.from(), check.to()).value(), u)
              : new Reading.HeightDifference(
                  check.from(),
                  check.to(),
                  current.heightDifference(check.from(), check.to()).value(),
                  u,
                  ""));
    }
    adjust();
  }

  private void adjust() {
    Survey survey = new Survey(current.survey().shape(), readings, current.survey().sigmaBasis());
    current =
        Adjuster.attempt(survey, cancellation)
            .filter(outcome -> outcome instanceof Adjustment)
            .map(SurveyOutcome::orThrow)
            .orElse(current);
  }
}
