package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Uncertain;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * An adjusted survey: coordinates with covariance, a test of every reading, and the uncertainty of
 * every distance that follows from them. Immutable.
 *
 * <p>Uncertainties are propagated from the stated ones ({@code s = 1}); where only their ratios are
 * known and there is redundancy, they are scaled by the root of the variance factor.
 */
public final class Adjustment implements SurveyOutcome {

  private final Survey survey;
  private final List<Node> nodes;
  private final Map<Node, Integer> places;
  private final NetworkModel model;
  private final GaussNewton.Solution solution;
  private final int freeMotions;
  private final int degreesOfFreedom;
  private final double scale;
  private final OutlierTest outlierTest;
  private final List<ReadingResult> readings;

  Adjustment(
      Survey survey,
      List<Node> nodes,
      Map<Node, Integer> places,
      NetworkModel model,
      GaussNewton.Solution solution) {
    this.survey = survey;
    this.nodes = nodes;
    this.places = Map.copyOf(places);
    this.model = model;
    this.solution = solution;
    this.freeMotions = model.freeMotions(solution.unknowns()).length;
    this.degreesOfFreedom = model.observations() - model.unknowns() + freeMotions;
    boolean estimated = survey.sigmaBasis() == SigmaBasis.ESTIMATED && degreesOfFreedom > 0;
    this.scale = estimated ? Math.sqrt(solution.weightedSquares() / degreesOfFreedom) : 1;
    this.outlierTest = OutlierTest.of(survey.sigmaBasis(), degreesOfFreedom);
    this.readings =
        ReadingTests.of(model, solution, survey.readings(), scale, outlierTest.critical());
  }

  /**
   * Gives the survey that was adjusted.
   *
   * @return the survey
   */
  public Survey survey() {
    return survey;
  }

  /**
   * Lists the nodes as adjusted.
   *
   * @return in the order of {@link Node}
   */
  public List<AdjustedNode> nodes() {
    List<AdjustedNode> adjusted = new ArrayList<>();
    for (Node node : nodes) {
      double[][] q = covariance(node, node);
      adjusted.add(
          new AdjustedNode(
              node, position(node), Vector3D.of(root(q[0][0]), root(q[1][1]), root(q[2][2]))));
    }
    return List.copyOf(adjusted);
  }

  /**
   * Gives a node's adjusted place.
   *
   * @param node a node of the survey
   * @return in metres
   * @throws IllegalArgumentException if the survey has no such node
   */
  public Vector3D position(Node node) {
    int place = place(node);
    double[] x = solution.unknowns();
    return Vector3D.of(
        model.coordinate(place, 0, x),
        model.coordinate(place, 1, x),
        model.coordinate(place, 2, x));
  }

  /**
   * Gives the covariance of two nodes' coordinates.
   *
   * @param a a node of the survey, by rows x, y, z
   * @param b a node of the survey, by columns x, y, z
   * @return 3 by 3, in square metres; a fresh copy
   * @throws IllegalArgumentException if the survey has no such node
   */
  public double[][] covariance(Node a, Node b) {
    double[][] block = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        int row = model.unknown(place(a), i);
        int column = model.unknown(place(b), j);
        block[i][j] = scale * scale * solution.cofactors()[row][column];
      }
    }
    return block;
  }

  /**
   * Gives the adjusted straight distance of two nodes.
   *
   * @param from a node of the survey
   * @param to another node of the survey
   * @return in metres
   * @throws IllegalArgumentException if the survey has no such node
   */
  public Uncertain distance(Node from, Node to) {
    Args.require(!from.equals(to), "distance", from + " twice", "must be two nodes");
    DesignRow row = new DesignRow(6);
    double length = distanceRow(from, to, row);
    return new Uncertain(length, scale * root(row.form(solution.cofactors(), row)));
  }

  /**
   * Gives the adjusted difference of heights, {@code z(to) - z(from)}. It means something only if
   * levels or plumb offsets were read; else z is merely square to the ideal base.
   *
   * @param from a node of the survey
   * @param to another node of the survey
   * @return in metres
   * @throws IllegalArgumentException if the survey has no such node
   */
  public Uncertain heightDifference(Node from, Node to) {
    DesignRow row = new DesignRow(2);
    row.add(model.unknown(place(from), 2), -1);
    row.add(model.unknown(place(to), 2), 1);
    return new Uncertain(
        position(to).getZ() - position(from).getZ(),
        scale * root(row.form(solution.cofactors(), row)));
  }

  /**
   * Tells whether the readings fix what is plumb (levels and plumb offsets do, distances do not).
   *
   * @return true if no tilt is left free
   */
  public boolean isLevelled() {
    return freeMotions <= 4;
  }

  /**
   * Lists what is said of every reading.
   *
   * @return in the order of the field book
   */
  public List<ReadingResult> readings() {
    return readings;
  }

  /**
   * Counts the redundancies: readings less unknowns plus free motions.
   *
   * @return nu, 0 or more
   */
  public int degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /**
   * Counts the rigid motions that inner constraints had to fix.
   *
   * @return 6 for distances alone, 4 with levels
   */
  public int freeMotions() {
    return freeMotions;
  }

  /**
   * Counts the Gauss-Newton steps taken.
   *
   * @return 1 or more
   */
  public int steps() {
    return solution.steps();
  }

  /**
   * Gives the weighted sum of squared residuals, {@code v'Pv = sum((v/u)^2)}.
   *
   * @return a pure number
   */
  public double weightedSquares() {
    return solution.weightedSquares();
  }

  /**
   * Gives the factor by which stated uncertainties were multiplied.
   *
   * @return 1 where they are known, else the root of the variance factor
   */
  public double uncertaintyScale() {
    return scale;
  }

  /**
   * Tests the variance factor.
   *
   * @return the test; empty without redundancy
   */
  public Optional<GlobalTest> globalTest() {
    return degreesOfFreedom == 0
        ? Optional.empty()
        : Optional.of(AdjustmentSummary.globalTest(this, Steps.none()));
  }

  /**
   * Gives the test that was put to every reading.
   *
   * @return the test
   */
  public OutlierTest outlierTest() {
    return outlierTest;
  }

  /**
   * Lists the edges of the panels.
   *
   * @return base sides, hips, opening sides with their adjusted lengths
   */
  public List<EdgeLength> edges() {
    return survey.shape().panelEdges().stream()
        .map(edge -> new EdgeLength(edge, distance(edge.from(), edge.to())))
        .toList();
  }

  /**
   * Names the next readings, best first, that would most shrink the worst uncertainty of a panel
   * edge (and, where several edges are equally bad, that of the first), among all distances between
   * nodes, new or repeated, each as certain as the middle one of the distances already read.
   *
   * @param count how many to name, 1 or more
   * @return at most {@code count}, best first; fewer if no other helps
   */
  public List<NextReading> nextReadings(int count) {
    return nextReadings(count, pair -> true);
  }

  /**
   * Names the next readings among those that can be measured on site.
   *
   * @param count how many to name, 1 or more
   * @param measurable tells whether the tape can be stretched between two nodes
   * @return at most {@code count}, best first; fewer if no other helps
   * @throws IllegalArgumentException if the count is below 1
   */
  public List<NextReading> nextReadings(int count, Predicate<SurveyShape.PanelEdge> measurable) {
    Args.within("count", count, 1, Integer.MAX_VALUE);
    return new ReadingPlanner(this).best(count, measurable);
  }

  /**
   * Names the two next readings that together would most shrink the worst uncertainty of a panel
   * edge. Two can settle what no single one does, as where one distance alone leaves another edge
   * just as bad. All pairs of the {@value ReadingPlanner#MOST_PAIRED} distances that help most are
   * tried: O(c² e) for c such distances and e panel edges.
   *
   * @param measurable tells whether the tape can be stretched between two nodes
   * @return the two readings and what they bring; empty if no two help
   */
  public Optional<NextReadingSet> nextReadingPair(Predicate<SurveyShape.PanelEdge> measurable) {
    return new ReadingPlanner(this).bestPair(measurable);
  }

  /**
   * Says which readings others control, and which to take so that all are.
   *
   * @return the control
   */
  public SurveyControl control() {
    return control(new Cancellation());
  }

  /**
   * As {@link #control()}, with a switch that ends it.
   *
   * @param cancellation ends the search for readings to take
   * @return the control
   * @throws java.util.concurrent.CancellationException if it is cancelled
   */
  public SurveyControl control(Cancellation cancellation) {
    return ControlPlanner.of(this, cancellation);
  }

  /**
   * Lists nodes that have a mirror twin: another place which all readings fit as well.
   *
   * @return the twins; often none
   */
  public List<MirrorTwin> mirrorTwins() {
    return MirrorTwin.of(this);
  }

  /** The place of a node in the regular frame at which the adjustment started. */
  Vector3D regular(Node node) {
    return Vector3D.of(model.given(place(node)));
  }

  List<Node> nodeNames() {
    return nodes;
  }

  /** Cofactors scaled to a covariance are {@code scale()² Q}. */
  double[][] cofactors() {
    return solution.cofactors();
  }

  /** What the adjustment makes of a reading that need not be among its own. */
  Uncertain predict(Reading reading) {
    DesignRow row = new DesignRow(model.mostPerObservation());
    int[] at = reading.nodes().stream().mapToInt(this::place).toArray();
    double value = model.computed(reading, at, solution.unknowns(), row);
    return new Uncertain(value, scale * root(row.form(solution.cofactors(), row)));
  }

  /**
   * Gives the distance from the middle of some nodes to the middle of others, {@code |mean(to) -
   * mean(from)|}, with its standard uncertainty from the covariance of all their coordinates.
   *
   * @param from nodes of this survey, one or more
   * @param to nodes of this survey, one or more
   * @return the distance, in metres
   */
  public Uncertain middleDistance(List<Node> from, List<Node> to) {
    Vector3D way =
        Vector3D.centroid(to.stream().map(this::position).toList())
            .subtract(Vector3D.centroid(from.stream().map(this::position).toList()));
    double length = way.norm();
    double[] cosine = way.multiply(1 / length).toArray();
    DesignRow row = new DesignRow(3 * (from.size() + to.size()));
    for (int axis = 0; axis < 3; axis++) {
      for (Node node : from) {
        row.add(model.unknown(place(node), axis), -cosine[axis] / from.size());
      }
      for (Node node : to) {
        row.add(model.unknown(place(node), axis), cosine[axis] / to.size());
      }
    }
    return new Uncertain(length, scale * root(row.form(solution.cofactors(), row)));
  }

  void readingRow(int index, DesignRow row) {
    model.evaluate(index, solution.unknowns(), row);
  }

  double distanceRow(Node from, Node to, DesignRow row) {
    row.clear();
    return model.distance(place(from), place(to), 3, solution.unknowns(), row);
  }

  Optional<Double> critical() {
    return outlierTest.critical();
  }

  private int place(Node node) {
    Integer place = places.get(node);
    if (place == null) {
      throw new IllegalArgumentException("node: given " + node + ", the survey has only " + nodes);
    }
    return place;
  }

  private static double root(double square) {
    // A variance of zero may come out as a rounding below it.
    return Math.sqrt(Math.max(square, 0));
  }

  /** Equal surveys are adjusted alike. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Adjustment adjustment && adjustment.survey.equals(survey);
  }

  @Override
  public int hashCode() {
    return survey.hashCode();
  }

  @Override
  public String toString() {
    return "Adjustment[" + nodes.size() + " nodes, " + readings.size() + " readings]";
  }
}
