package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Many invented surveys of one kind, sound and with one planted error, counted. */
final class SurveySimulation {

  /** How a frame is taped. */
  enum Kind {
    WHOLE_WITH_LEVELS(false, true),
    WHOLE_WITHOUT_LEVELS(false, false),
    CUT_WITH_LEVELS(true, true),
    CUT_WITHOUT_LEVELS(true, false);

    private final boolean truncated;
    private final boolean levels;

    Kind(boolean truncated, boolean levels) {
      this.truncated = truncated;
      this.levels = levels;
    }
  }

  /** Of the readings, the one that is made wrong. */
  enum Planted {
    ANY_READING,
    A_HIP
  }

  private static final double NOISE = 0.002;
  private static final double BEND = 0.03;

  /** Beyond this many stated uncertainties a length is not what it was said to be. */
  static final double FAR = 4;

  private final Kind kind;
  int surveys;
  int readings;
  int falseAlarms;
  int degreesOfFreedom;
  double weightedSquares;
  int edges;
  int edgesCovered;
  double squaredErrors;
  int planted;
  int named;
  int listed;
  int silent;
  int undecided;
  int goodThrownOut;
  int trueEdgesFar;

  SurveySimulation(Kind kind) {
    this.kind = kind;
  }

  /** Adds a sound survey and one with an error planted. */
  void add(long seed, Planted which, double error) {
    RandomGenerator random = Seeds.stream(seed, "simulation", kind.ordinal());
    int sides = 5 + random.nextInt(8);
    Map<Node, Vector3D> nodes = TestFrames.bent(sides, kind.truncated, 2.5, 3, BEND, seed);
    List<Reading> taped = new ArrayList<>();
    for (Reading reading : TestFrames.readings(nodes, sides, kind.truncated, NOISE, seed)) {
      // A cut frame without levels needs the mark on the ground to hold together.
      boolean centre = reading.nodes().contains(Node.CENTRE) && !kind.truncated;
      if (kind.levels || (!centre && reading instanceof Reading.Distance)) {
        taped.add(reading);
      }
    }
    SurveyShape shape = TestFrames.shape(sides, kind.truncated);
    if (!(Survey.of(shape, taped).adjust() instanceof Adjustment)) {
      return;
    }
    sound(Survey.of(shape, taped).findBlunders(), nodes);
    int at = place(taped, which, random);
    Reading right = taped.get(at);
    // A distance of less than twice the error cannot be read too short by it.
    boolean isShort = right instanceof Reading.Distance && right.value() < 2 * error;
    double off = isShort || random.nextBoolean() ? error : -error;
    taped.set(at, right.withValue(right.value() + off));
    wrong(Survey.of(shape, taped).findBlunders(), nodes, at + 1);
  }

  private static int place(List<Reading> taped, Planted which, RandomGenerator random) {
    while (true) {
      int at = random.nextInt(taped.size());
      Reading reading = taped.get(at);
      boolean hip =
          reading instanceof Reading.Distance d
              && d.from().kind() == Node.Kind.BASE
              && (d.to().kind() == Node.Kind.APEX
                  || (d.to().kind() == Node.Kind.OPENING && d.to().number() == d.from().number()));
      if (which == Planted.ANY_READING || hip) {
        return at;
      }
    }
  }

  private void sound(BlunderReport report, Map<Node, Vector3D> nodes) {
    surveys++;
    readings += report.first().readings().size();
    falseAlarms += (int) report.first().readings().stream().filter(ReadingResult::suspect).count();
    degreesOfFreedom += report.first().degreesOfFreedom();
    weightedSquares += report.first().weightedSquares();
    for (EdgeLength edge : report.first().edges()) {
      double z = normalisedError(edge, nodes);
      edges++;
      squaredErrors += z * z;
      edgesCovered += Math.abs(z) < 1.96 ? 1 : 0;
    }
  }

  private static double normalisedError(EdgeLength edge, Map<Node, Vector3D> nodes) {
    double exact = nodes.get(edge.edge().from()).distance(nodes.get(edge.edge().to()));
    return (edge.length().value() - exact) / edge.length().standardUncertainty();
  }

  private void wrong(BlunderReport report, Map<Node, Vector3D> nodes, int number) {
    planted++;
    boolean isNamed = report.blunders().stream().anyMatch(b -> b.number() == number);
    boolean isListed =
        isNamed
            || report.blunders().stream()
                .flatMap(b -> b.alsoPossible().stream())
                .anyMatch(other -> other.number() == number);
    named += isNamed ? 1 : 0;
    listed += isListed ? 1 : 0;
    undecided += report.undecided() ? 1 : 0;
    boolean isUncontrolled =
        report.first().readings().get(number - 1).redundancy() < ReadingResult.CONTROLLED;
    // Nothing was said of it at all, not even that nothing controls it.
    silent += !isListed && !isUncontrolled ? 1 : 0;
    goodThrownOut +=
        (int) report.blunders().stream().filter(b -> b.number() != number && b.isCertain()).count();
    boolean far =
        report.accepted().edges().stream()
            .anyMatch(edge -> Math.abs(normalisedError(edge, nodes)) > FAR);
    trueEdgesFar += far && !report.undecided() && report.control().isAllControlled() ? 1 : 0;
  }

  double varianceFactor() {
    return weightedSquares / degreesOfFreedom;
  }

  double normalisedVariance() {
    return squaredErrors / edges;
  }

  double coverage() {
    return (double) edgesCovered / edges;
  }

  static String header() {
    return "| survey | surveys | v'Pv per degree of freedom | variance of normalised edge error"
        + " | edges within 1.96 u | false alarms per reading | planted | named | named or listed"
        + " | undecided | not a word | good readings thrown out | edge far off unsaid |\n"
        + "|---|---|---|---|---|---|---|---|---|---|---|---|---|";
  }

  private String share(int count) {
    return Numbers.fixed(100.0 * count / planted, 1) + " %";
  }

  String row(String what) {
    return String.join(
        " | ",
        "| " + what,
        Integer.toString(surveys),
        Numbers.fixed(varianceFactor(), 3),
        Numbers.fixed(normalisedVariance(), 3),
        Numbers.fixed(coverage(), 3),
        Numbers.fixed((double) falseAlarms / readings, 4),
        Integer.toString(planted),
        share(named),
        share(listed),
        share(undecided),
        share(silent),
        Integer.toString(goodThrownOut),
        trueEdgesFar + " |");
  }
}
