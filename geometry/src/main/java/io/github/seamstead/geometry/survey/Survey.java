package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Cancellation;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The field book of a frame: its shape and all readings.
 *
 * <pre>{@code
 * List<Reading> readings = new ArrayList<>();
 * for (int i = 1; i <= 4; i++) {
 *   readings.add(Reading.distance(Node.APEX, Node.base(i), 2.06, 0.003));
 *   readings.add(Reading.distance(Node.base(i), Node.base(i % 4 + 1), 2, 0.003));
 * }
 * Survey.of(SurveyShape.whole(4), readings).adjust() instanceof Deficiency; // true: it may lean
 * readings.add(Reading.distance(Node.base(1), Node.base(3), 2.828, 0.003));
 * Survey.of(SurveyShape.whole(4), readings).adjust() instanceof Adjustment; // true
 * }</pre>
 *
 * @param shape what kind of frame it is
 * @param readings the readings, in the order of the field book; at least one, at most {@value
 *     #MOST_READINGS}
 * @param sigmaBasis whether the stated uncertainties are known or only their ratios
 */
public record Survey(SurveyShape shape, List<Reading> readings, SigmaBasis sigmaBasis) {

  /** The most readings that one survey may hold. */
  public static final int MOST_READINGS = 20_000;

  public Survey {
    readings = Args.notEmpty("readings", readings);
    Args.within("number of readings", readings.size(), 1, MOST_READINGS);
    for (int i = 0; i < readings.size(); i++) {
      for (Node node : readings.get(i).nodes()) {
        String where = "reading " + (i + 1) + " (" + readings.get(i).name() + "): ";
        Args.require(
            node.number() <= shape.sides(),
            where + "given node " + node + ", corners go from 1 to " + shape.sides());
        Args.require(
            shape.truncated() || node.kind() != Node.Kind.OPENING,
            where + "given node " + node + ", but the frame is stated to have no opening");
      }
    }
  }

  /**
   * A survey whose stated uncertainties are known.
   *
   * @param shape what kind of frame it is
   * @param readings at least one
   * @return the survey
   * @throws IllegalArgumentException as the constructor does
   */
  public static Survey of(SurveyShape shape, List<? extends Reading> readings) {
    return new Survey(shape, List.copyOf(readings), SigmaBasis.KNOWN);
  }

  /**
   * Lists the nodes: those of the panels and those that the readings name.
   *
   * @return in the order of {@link Node}
   */
  public List<Node> nodes() {
    Set<Node> nodes = new TreeSet<>(shape.panelNodes());
    readings.forEach(reading -> nodes.addAll(reading.nodes()));
    return List.copyOf(nodes);
  }

  /**
   * Adjusts the readings by least squares. Cost O(u³) per step for u = 3 times the number of nodes,
   * a handful of steps.
   *
   * @return the adjustment, or the readings that are missing
   * @throws IllegalArgumentException if the readings contradict each other so much that no frame
   *     near to a regular one is a least-squares solution
   */
  public SurveyOutcome adjust() {
    return adjust(new Cancellation());
  }

  /**
   * As {@link #adjust()}, with a switch that ends it. It is heard at every row of the equations: a
   * frame of a thousand unknowns returns within milliseconds.
   *
   * @param cancellation ends the adjustment
   * @return the adjustment, or the readings that are missing
   * @throws IllegalArgumentException as {@link #adjust()} does
   * @throws java.util.concurrent.CancellationException if it is cancelled
   */
  public SurveyOutcome adjust(Cancellation cancellation) {
    return Adjuster.adjust(this, cancellation);
  }

  /**
   * Takes out, one at a time, the reading that is tested worst until all pass, tries to take each
   * back, and says what probably happened.
   *
   * @return the blunders and the adjustment without them
   * @throws IllegalArgumentException if readings are missing (with the words of the deficiency) or
   *     if {@link #adjust()} fails
   */
  public BlunderReport findBlunders() {
    return findBlunders(new Cancellation());
  }

  /**
   * As {@link #findBlunders()}, with a switch that ends it. The search is bounded: adjustments are
   * counted by their cost, readings times the square of the unknowns, and a survey of thousands of
   * readings with dozens of wrong ones is given up as undecided after some seconds.
   *
   * @param cancellation ends the search, also within an adjustment
   * @return the blunders and the adjustment without them
   * @throws IllegalArgumentException as {@link #findBlunders()} does
   * @throws java.util.concurrent.CancellationException if it is cancelled
   */
  public BlunderReport findBlunders(Cancellation cancellation) {
    return BlunderSearch.run(this, new SearchTerms(cancellation));
  }
}
