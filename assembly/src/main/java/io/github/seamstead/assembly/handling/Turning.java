package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Turning a cover that was joined inside out: which end goes through which, and whether it passes.
 *
 * <p>By every route the whole girth of the hem passes the opening once. Gathered, it has the
 * section {@code p t / phi} plus the seams; the opening, drawn round, has {@code P^2 / (4 pi)}, of
 * which half is left to hands and to the cloth that folds back over its edge (common practice).
 *
 * @param ends the openings
 * @param thickness thickness of the cloth, in metres, greater than 0; at most 0.05
 * @param seamArea section of all seams, ropes and rings that pass with it, in square metres, 0 or
 *     more
 * @param packing how tightly it is gathered
 */
public record Turning(CoverEnds ends, double thickness, double seamArea, Packing packing) {

  /** The part of the opening that the bundle may fill. */
  public static final double FILL = 0.5;

  private static final Source DERIVED =
      Source.derived("section of the gathered girth; circle of the opening's loop");
  private static final Source ROOM =
      Source.commonPractice("half of the opening is left to hands and the edge that folds back");

  public Turning {
    Args.positive("thickness of the cloth", thickness, "m");
    Args.within("thickness of the cloth", thickness, 0, 0.05, "m");
    Args.notNegative("section of the seams", seamArea, "m2");
  }

  /**
   * Looks at every route.
   *
   * @param ends the openings
   * @param thickness thickness of the cloth, in metres, greater than 0
   * @param seamArea section of all seams and ropes that pass with it, in square metres
   * @param packing how tightly it is gathered, such as {@link Packing#BUNCHED}
   * @return the routes
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Turning of(CoverEnds ends, double thickness, double seamArea, Packing packing) {
    return new Turning(ends, thickness, seamArea, packing);
  }

  /**
   * Computes the diameter of the gathered girth with the steps.
   *
   * @param clothRatio cloth over bulk, greater than 0, at most 1
   * @param steps where the steps go
   * @return in metres
   * @throws IllegalArgumentException if the ratio is out of range
   */
  @Calculation("assembly.handling.turn")
  public double bundle(double clothRatio, Steps steps) {
    Args.positive("cloth in the bulk", clothRatio, "");
    Args.within("cloth in the bulk", clothRatio, 0, 1, "");
    double section =
        steps
            .step("S", "section of the gathered girth")
            .formula("(p * t + S_x) / phi")
            .with("p", ends.hemLength(), "m")
            .with("t", thickness, "m")
            .with("S_x", seamArea, "m2")
            .with("phi", clothRatio, "")
            .from(DERIVED)
            .gives((ends.hemLength() * thickness + seamArea) / clothRatio, "m2");
    return steps
        .step("d", "diameter of the bundle")
        .formula("sqrt(4 * S / pi)")
        .with("S", section, "m2")
        .from(DERIVED)
        .gives(Math.sqrt(4 * section / Math.PI), "m");
  }

  /**
   * Computes the least loop that even a loose bundle passes with room.
   *
   * @return in metres
   */
  public double leastLoop() {
    return leastLoop(Steps.none());
  }

  /**
   * Computes the least loop that even a loose bundle passes with room, with the steps.
   *
   * @param steps where the steps go
   * @return in metres
   */
  @Calculation("assembly.handling.turnloop")
  public double leastLoop(Steps steps) {
    double bundle = bundle(packing.clothRatio().low(), steps);
    return steps
        .step("P", "least loop round the opening")
        .formula("pi * d / sqrt(f)")
        .with("d", bundle, "m")
        .with("f", FILL, "")
        .from(ROOM)
        .gives(Math.PI * bundle / Math.sqrt(FILL), "m");
  }

  /**
   * Gives every route, the roomiest opening first.
   *
   * @return one to three routes
   */
  public List<TurnRoute> routes() {
    List<TurnRoute> routes = new ArrayList<>();
    routes.add(route("the top", "the hem", ends.hemLength()));
    ends.top().ifPresent(top -> routes.add(route("the hem", "the opening at the top", top)));
    ends.doorLength().ifPresent(door -> routes.add(route("the top", "the door", door)));
    routes.sort(Comparator.comparingDouble(TurnRoute::opening).reversed());
    return List.copyOf(routes);
  }

  /**
   * Gives the roomiest route.
   *
   * @return a route; it may still not pass
   */
  public TurnRoute best() {
    return routes().get(0);
  }

  private TurnRoute route(String first, String through, double loop) {
    Range bundle =
        new Range(
            bundle(packing.clothRatio().high(), Steps.none()),
            bundle(packing.clothRatio().likely(), Steps.none()),
            bundle(packing.clothRatio().low(), Steps.none()));
    double opening = loop / Math.PI;
    double free = opening * Math.sqrt(FILL);
    TurnRoute.Passage passage =
        bundle.high() <= free
            ? TurnRoute.Passage.PASSES
            : bundle.low() <= free ? TurnRoute.Passage.DOUBTFUL : TurnRoute.Passage.TOO_TIGHT;
    return new TurnRoute(first, through, bundle, opening, passage);
  }

  /**
   * Writes how to turn the cover by the roomiest route.
   *
   * @return a few sentences in the order of the work
   */
  public String text() {
    TurnRoute route = best();
    return "The cover lies inside out. Spread it flat with "
        + route.through()
        + " open; two people reach in through "
        + route.through()
        + " to "
        + route.first()
        + ", take it (tie a rope to it first) and draw it back out; the others feed the cloth in"
        + " from outside, seam by seam, until the good side is out all round. Bundle "
        + Numbers.fixed(route.bundle().low(), 2)
        + " to "
        + Numbers.fixed(route.bundle().high(), 2)
        + " m, opening "
        + Numbers.fixed(route.opening(), 2)
        + " m across: "
        + route.passage().label()
        + ".";
  }
}
