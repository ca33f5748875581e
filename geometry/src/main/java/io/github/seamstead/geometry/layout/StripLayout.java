package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Clock;
import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Obstacles;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.layout.internal.StripRun;
import io.github.seamstead.geometry.layout.internal.Tuning;
import io.github.seamstead.geometry.layout.internal.Turns;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The search on one strip of free length.
 *
 * <p>Shortens the strip, takes the overlaps out by guided local search over exact no-fit regions
 * and presses all pieces together at once by linear programming, again and again. A piece that may
 * lie at any angle is turned as it moves, without steps; its overlaps, and those of pieces of more
 * kinds than regions could be built for in seconds, are found from convex parts instead, and such
 * layouts are not pressed. Two threads search apart and meet at fixed counts of work. It can be
 * stopped at any time and returns the best layout so far, which is always valid: {@link
 * LayoutCheck} holds it to the problem before it is returned. A work unit is one placement
 * evaluated, O(k) for k pieces near it. The result depends on the seed and the work units alone if
 * there is no time limit.
 */
public final class StripLayout {

  private static final int FEW = 150;

  /** What part of the budget a tight start may take. */
  private static final double START_PART = 0.3;

  private StripLayout() {}

  /**
   * Lays all pieces on the strip.
   *
   * @param problem strip and pieces
   * @param work the terms; two threads share the budget
   * @return a valid layout, the shortest found
   * @throws IllegalArgumentException if a piece has no turn in which it fits across the strip, or
   *     is too small for its size to be told beside the strip's width
   */
  public static StripResult solve(StripProblem problem, Work work) {
    return solve(problem, work, Tuning.CHOSEN);
  }

  /** As the other, with other numbers than those chosen. */
  static StripResult solve(StripProblem problem, Work work, Tuning tuning) {
    Roll roll = Roll.of("strip", problem.width(), longestUseful(problem));
    Bin bin = new Bin(roll, 1, new Bounds(0, 0, roll.length(), roll.width()), 0);
    for (Piece piece : problem.pieces()) {
      requireFits(piece, problem);
    }
    List<Piece> free = Planner.byId(problem.pieces()).stream().map(Piece::withoutHem).toList();
    NestSetup setup = new NestSetup(free, List.of(bin), problem.spacing(), problem.margin());
    double least = bound(problem, Steps.none());
    double floor = (least - problem.margin()) / setup.unit * (1 + 1e-9);
    Clock clock = new Clock(work, 1);
    Nest first = setup.nest();
    Poses start = start(setup, first, clock);
    Work rest = work.within(clock.share(first.work, 1));
    StripRun run = StripRun.from(setup::nest, start, 0, floor, rest, tuning);
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < setup.kind.length; i++) {
      placements.add(setup.placement(i, run.poses()));
    }
    double length = run.length() * setup.unit + problem.margin();
    double area = area(problem.pieces());
    double bound = Math.min(length, least);
    StripResult result =
        new StripResult(
            length,
            LayoutMeasures.density(area, problem.width() * length, Steps.none()),
            bound,
            (length - bound) / length,
            placements,
            first.work + run.work());
    LayoutCheck.require(problem, result);
    return result;
  }

  /**
   * Length below which no layout of a problem can be.
   *
   * @param problem strip and pieces
   * @param steps takes the worked steps
   * @return the bound, in metres
   */
  public static double bound(StripProblem problem, Steps steps) {
    double inside = problem.width() - 2 * problem.margin();
    double longest = 0;
    double stacked = 0;
    for (Piece piece : problem.pieces()) {
      double least = SizeBounds.leastLength(piece, inside, piece.mayMirror());
      longest = Math.max(longest, Double.isFinite(least) ? least : 0);
      stacked += piece.count() * SizeBounds.leastMiddleChord(piece, inside, piece.mayMirror());
    }
    double sections = SectionBounds.length(problem.pieces(), inside, problem.spacing());
    // Of a strip so long that the bound cannot count for it the size does not matter.
    double size = Math.max(problem.width(), 4 * area(problem.pieces()) / inside);
    return LayoutMeasures.lowerBound(
        GrownArea.of(problem.pieces(), problem.spacing(), size),
        problem.width(),
        longest,
        Math.max(stacked, sections),
        problem.margin(),
        problem.spacing(),
        steps);
  }

  /** The shorter of boxes in columns and of corner-to-corner touches, those while time allows. */
  private static Poses start(NestSetup setup, Nest nest, Clock clock) {
    Poses shelf = Shelf.start(setup, nest);
    if (setup.kind.length <= FEW) {
      // A loose start is soon pressed together and leaves the search freer than a tight one.
      return shelf;
    }
    int[] order =
        IntStream.range(0, setup.kind.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble(i -> -setup.pieces.get(setup.kind[i]).outline().area()))
            .mapToInt(Integer::intValue)
            .toArray();
    new Filler(setup, nest).fill(order, new int[] {0}, () -> clock.spent(nest.work) >= START_PART);
    Poses filled = Shelf.complete(setup, nest);
    boolean shorter = StripRun.reach(nest, filled) < StripRun.reach(nest, shelf);
    return shorter ? filled : shelf;
  }

  static double area(List<Piece> pieces) {
    return pieces.stream().mapToDouble(p -> p.count() * p.outline().area()).sum();
  }

  /** A length at which the pieces fit one behind the other. */
  private static double longestUseful(StripProblem problem) {
    double sum = 2 * problem.margin();
    for (Piece piece : problem.pieces()) {
      Bounds b = piece.outline().bounds();
      sum += piece.count() * (StrictMath.hypot(b.width(), b.height()) + problem.spacing());
    }
    return 2 * sum;
  }

  private static void requireFits(Piece piece, StripProblem problem) {
    Bounds b = piece.outline().bounds();
    Args.require(
        Math.max(b.width(), b.height()) > 1e-6 * problem.width(),
        "piece " + piece.id(),
        "a size below a millionth of the strip's width "
            + Numbers.significant(problem.width(), 4)
            + " m",
        "must be larger");
    boolean fits = fits(piece, false, problem) || (piece.mayMirror() && fits(piece, true, problem));
    Args.require(
        fits,
        "piece "
            + piece.id()
            + ": has no turn allowed in which it fits across the strip of width "
            + Numbers.significant(problem.width(), 4)
            + " m with margin "
            + Numbers.significant(problem.margin(), 4)
            + " m");
  }

  private static boolean fits(Piece piece, boolean mirrored, StripProblem problem) {
    double inside = problem.width() - 2 * problem.margin();
    double unit = problem.width();
    Outline outline = mirrored ? piece.outline().mirrored() : piece.outline();
    double[] corners = Obstacles.corners(outline, outline.centroid(), unit);
    return PieceTurns.of(piece, mirrored).stream()
        .anyMatch(a -> Turns.box(corners, a).height() * unit <= inside * (1 + 1e-10));
  }
}
