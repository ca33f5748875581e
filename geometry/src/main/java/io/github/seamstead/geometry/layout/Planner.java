package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Clock;
import io.github.seamstead.geometry.layout.internal.FastRandom;
import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.layout.internal.StripRun;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The run of one request: starts in closed form and by filling, then the search on what is used.
 */
final class Planner {

  /** What part of the work each try to press in a further piece may take, and the least. */
  private static final long PRESS_PARTS = 20;

  private static final long LEAST_PRESS = 100;

  /** The same where all pieces have a place already and fewer items might do. */
  private static final long TIGHTER_PARTS = 100;

  private static final long MOST_PRESS = 10_000;

  /** Work units for each piece without which it is not worth trying to do with less stock. */
  private static final long TRY = 500;

  /** What part of all work a try may take. */
  private static final long TRIES = 16;

  /** Part of the work that goes to doing with less stock, at most. */
  private static final double THINNING = 0.7;

  private static final int MOST_REFUSALS = 24;

  private final LayoutRequest request;
  private final Work terms;
  private final NestSetup setup;
  private final Clock clock;
  private final Optional<StockTree> tree;
  private Poses best;
  private Score bestScore;
  private boolean fromRows;
  private long work;

  /** Work that is told and leaves the search as much as without it. */
  private long uncharged;

  /**
   * Prepares a run.
   *
   * @param tree a choice of stock that was made for the request already
   */
  Planner(LayoutRequest request, Optional<StockTree> tree, Work terms) {
    this.request = request;
    this.terms = terms;
    int copies = request.pieces().stream().mapToInt(Piece::count).sum();
    setup =
        new NestSetup(
            byId(request.pieces()),
            StockOrder.bins(request.stock(), copies),
            request.spacing(),
            request.edgeMargin(),
            unit(request),
            new NestSetup.Drawn());
    clock = new Clock(terms, 1);
    this.tree = tree;
    best = new Poses(copies);
    Arrays.fill(best.region, Poses.PARKED);
    bestScore = Score.of(setup, best, request.objective());
  }

  /** A fixed order, so that the order in which the caller names the pieces changes nothing. */
  static List<Piece> byId(List<Piece> pieces) {
    return pieces.stream().sorted(Comparator.comparing(Piece::id)).toList();
  }

  /** The unit of the search's lengths, in metres. */
  static double unit(LayoutRequest request) {
    return unitFor(
        request.stock().stream()
            .mapToDouble(item -> item.outline().bounds().height())
            .max()
            .orElse(1));
  }

  /**
   * The least power of two that is no less than a width: lengths in units of different ones differ
   * in their exponents alone, so that the same pieces lie the same whatever other stock there is.
   */
  static double unitFor(double width) {
    int exponent = Math.getExponent(width);
    double power = Math.scalb(1.0, exponent);
    return power < width ? 2 * power : power;
  }

  LayoutResult plan() {
    fill();
    // Pressing finds no place for what has none, so that time is left to say what would.
    int[] placed = Reporter.placed(setup, best);
    Shortfalls lacks = new Shortfalls(request, setup, placed, clock.ended());
    thinOut();
    press();
    LayoutResult.Method method = fromRows ? LayoutResult.Method.ROWS : LayoutResult.Method.SEARCH;
    return new Reporter(request, setup, best)
        .result(lacks, method, work + uncharged, clock.ending().map(Planner::stop));
  }

  private static LayoutResult.Stop stop(Clock.Ending ending) {
    return switch (ending) {
      case CANCELLED -> LayoutResult.Stop.CANCELLED;
      case FINISHED_EARLY -> LayoutResult.Stop.FINISHED_EARLY;
      case INTERRUPTED -> LayoutResult.Stop.INTERRUPTED;
      case TIME_LIMIT -> LayoutResult.Stop.TIME_LIMIT;
    };
  }

  /**
   * Lays the start: the best choice of stock, each item filled for itself, with pieces pushed along
   * it and then in every direction; if either leaves pieces without a place, again with tries to
   * press in more. It is finished whatever the work units are, since a layout needs a start; the
   * time limit, a cancellation and an interrupt end it.
   */
  private void fill() {
    StockTree choice =
        tree.orElseGet(
            () -> new StockTree(request, 0, Optional.empty(), terms.seed(), clock.ended()));
    if (tree.isEmpty()) {
      choice.search();
    }
    squeezeIn(choice);
    long along = choice.work();
    choice.searchEveryWay();
    uncharged = choice.work() - along;
    squeezeIn(choice);
    work += choice.work() - uncharged;
    choice.found().ifPresent(found -> take(found.cuts()));
    if (isComplete(choice) && terms.budget().workUnits() >= patience() && !isLeast()) {
      fillTighter(choice);
    }
  }

  private static boolean isComplete(StockTree choice) {
    return choice.found().filter(found -> found.worth().isComplete()).isPresent();
  }

  /** Tries to press in what has no place. */
  private void squeezeIn(StockTree choice) {
    long units = terms.budget().workUnits();
    if (!isComplete(choice) && units > 0 && !clock.ended().getAsBoolean()) {
      choice.search(Math.max(LEAST_PRESS, units == Long.MAX_VALUE ? 0 : units / PRESS_PARTS));
    }
  }

  /** Fills again, pressing more into each item than has room at once, so that fewer may do. */
  private void fillTighter(StockTree choice) {
    long units = terms.budget().workUnits();
    long before = choice.work();
    boolean timed = units == Long.MAX_VALUE;
    choice.search(
        Math.max(LEAST_PRESS, Math.min(MOST_PRESS, units / TIGHTER_PARTS)),
        timed ? TIGHTER_PARTS * patience() : units / 2);
    work += choice.work() - before;
    choice.found().ifPresent(found -> take(found.cuts()));
  }

  /** Work without which it is not worth trying to do with less stock. */
  private long patience() {
    return Math.max(1, setup.kind.length) * TRY;
  }

  private void take(List<StockTree.Cut> cuts) {
    Poses poses = new Poses(setup.kind.length);
    Arrays.fill(poses.region, Poses.PARKED);
    int[] next = new int[setup.pieces.size()];
    for (int i = setup.kind.length - 1; i >= 0; i--) {
      next[setup.kind[i]] = i;
    }
    boolean rows = !cuts.isEmpty();
    for (StockTree.Cut cut : cuts) {
      rows &= cut.filled().rows();
      int bin = binOf(cut);
      for (int p = 0; p < cut.filled().kinds().size(); p++) {
        int kind = cut.filled().kinds().get(p);
        double[] pose = setup.pose(kind, bin, cut.filled().placements().get(p)).orElseThrow();
        int i = next[kind]++;
        poses.region[i] = (int) pose[0];
        poses.x[i] = pose[1];
        poses.y[i] = pose[2];
        poses.angle[i] = pose[3];
      }
    }
    offer(poses, rows);
  }

  private int binOf(StockTree.Cut cut) {
    String id = request.stock().get(cut.item()).id();
    return IntStream.range(0, setup.bins.size())
        .filter(b -> setup.bins.get(b).item().id().equals(id))
        .filter(b -> setup.bins.get(b).copy() == cut.copy())
        .findFirst()
        .orElseThrow();
  }

  private double spent() {
    return clock.spent(work);
  }

  private void offer(Poses poses, boolean rows) {
    Score score = Score.of(setup, poses, request.objective());
    if (score.betterThan(bestScore)) {
      best = poses;
      bestScore = score;
      fromRows = rows;
    }
  }

  /** Does with less stock as long as that succeeds and part of the work is left for pressing. */
  private void thinOut() {
    long units = terms.budget().workUnits();
    long patience = patience();
    if (units < patience) {
      return;
    }
    FastRandom random = new FastRandom(Seeds.stream(terms.seed(), "evacuation", 0).nextLong());
    Evacuation evacuation = new Evacuation(setup, random, clock.ended());
    int refusals = 0;
    while (refusals < MOST_REFUSALS && spent() < THINNING && !isLeast()) {
      Optional<boolean[]> fewer = evacuation.fewer(best, refusals);
      refusals++;
      if (fewer.isPresent()) {
        long before = evacuation.work();
        long most = Math.max(patience, units == Long.MAX_VALUE ? 0 : units / TRIES);
        Optional<Poses> laid = evacuation.onto(fewer.get(), best, most);
        work += evacuation.work() - before;
        Score score = bestScore;
        laid.ifPresent(poses -> offer(poses, false));
        refusals = bestScore.betterThan(score) ? 0 : refusals;
      }
    }
  }

  /** Whether no layout can do with less stock. */
  private boolean isLeast() {
    double area = 0;
    for (int i = 0; i < best.region.length; i++) {
      area += best.region[i] == Poses.PARKED ? 0 : setup.pieces.get(setup.kind[i]).outline().area();
    }
    double[] reach = Score.reach(setup, best);
    long used = Arrays.stream(reach).filter(r -> r > 0).count();
    return used <= StockBounds.of(Objective.FEWEST_ITEMS, setup.bins, area);
  }

  /** Presses the pieces of each item used towards its start, the last used first. */
  private void press() {
    double[] reach = Score.reach(setup, best);
    List<Integer> used = new ArrayList<>();
    for (int b = 0; b < reach.length; b++) {
      if (reach[b] > 0) {
        used.add(b);
      }
    }
    used.sort(Comparator.comparingDouble(b -> reach[b] / setup.bins.get(b).bounds().width()));
    for (int k = 0; k < used.size() && spent() < 1; k++) {
      press(used.get(k), clock.share(work, used.size() - k));
    }
  }

  private void press(int bin, Budget share) {
    int[] members =
        IntStream.of(everyCopy())
            .filter(i -> best.region[i] != Poses.PARKED)
            .filter(i -> setup.regions.bin[best.region[i]] == bin)
            .toArray();
    Budget rest = share;
    if (fromRows && request.pieces().get(0).hem().isEmpty()) {
      // Rows lie too tight for the search to leave them, so that a loose start gets half the time.
      Clock part = new Clock(terms.within(share), 1);
      long before = work;
      Nest nest = setup.nest(members, x -> x == bin);
      Poses loose = Shelf.start(setup, nest);
      if (StripRun.reach(nest, loose) <= end(bin)) {
        search(members, bin, loose, part.share(0, 2));
        rest = part.share(work - before, 1);
      }
    }
    Poses start = new Poses(members.length);
    for (int k = 0; k < members.length; k++) {
      start.take(k, best, members[k]);
    }
    search(members, bin, start, rest);
  }

  private double end(int bin) {
    Bin b = setup.bins.get(bin);
    return (b.bounds().maxX() + b.offset() - setup.margin()) / setup.unit;
  }

  private void search(int[] members, int bin, Poses start, Budget share) {
    Bin b = setup.bins.get(bin);
    double origin = (b.bounds().minX() + b.offset()) / setup.unit;
    double least = 0;
    for (int i : members) {
      Piece piece = setup.pieces.get(setup.kind[i]);
      least += piece.outline().area() / b.bounds().height() / setup.unit;
    }
    Work part = terms.within(share);
    StripRun run =
        StripRun.from(
            () -> setup.nest(members, x -> x == bin), start, origin, origin + least, part);
    work += run.work();
    Poses poses = best.copy();
    for (int k = 0; k < members.length; k++) {
      poses.take(members[k], run.poses(), k);
    }
    offer(poses, false);
  }

  private int[] everyCopy() {
    return IntStream.range(0, setup.kind.length).toArray();
  }
}
