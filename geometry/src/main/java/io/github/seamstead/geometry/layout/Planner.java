package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The run of one request: starts in closed form and by filling, then the search on what is used.
 */
final class Planner {

  private static final double FILL_PART = 0.3;

  private final LayoutRequest request;
  private final Work terms;
  private final NestSetup setup;
  private final Clock clock;
  private final FastRandom random;
  private Poses best;
  private Score bestScore;
  private boolean fromRows;
  private long work;

  Planner(LayoutRequest request, Work terms) {
    this.request = request;
    this.terms = terms;
    int copies = request.pieces().stream().mapToInt(Piece::count).sum();
    setup =
        new NestSetup(
            byId(request.pieces()),
            StockOrder.bins(request.stock(), copies),
            request.spacing(),
            request.edgeMargin());
    clock = new Clock(terms, 1);
    random = new FastRandom(Seeds.stream(terms.seed(), "cutting", 0).nextLong());
    best = new Poses(copies);
    java.util.Arrays.fill(best.region, Poses.PARKED);
    bestScore = Score.of(setup, best, request.objective());
  }

  /** A fixed order, so that the order in which the caller names the pieces changes nothing. */
  static List<Piece> byId(List<Piece> pieces) {
    return pieces.stream().sorted(Comparator.comparing(Piece::id)).toList();
  }

  LayoutResult plan() {
    fill();
    if (setup.kind.length <= StripRun.MOST_SEARCHED) {
      place();
      empty();
    }
    // Pressing finds no place for what has none, so that time is left to say what would.
    int[] placed = Reporter.placed(setup, best);
    Shortfalls lacks = new Shortfalls(request, setup, placed, clock.ended());
    press();
    LayoutResult.Method method = fromRows ? LayoutResult.Method.ROWS : LayoutResult.Method.SEARCH;
    return new Reporter(request, setup, best).result(lacks, method, work, clock.stop());
  }

  /**
   * Lays the starts. Filling is finished whatever the work units are, since a layout needs a start;
   * the time limit, a cancellation and an interrupt end it alike. With rows in closed form at hand
   * it is a try like any other and keeps to its part of the budget.
   */
  private void fill() {
    BooleanSupplier ended = clock.ended();
    for (int[] order : StockOrder.orders(setup.bins)) {
      if (ended.getAsBoolean()) {
        return;
      }
      RowsStart.lay(setup, request, order, ended).ifPresent(p -> offer(p, true));
      Nest nest = setup.nest();
      boolean laid = bestScore.missingArea() == 0;
      long before = work;
      BooleanSupplier stop = laid ? () -> clock.spent(before + nest.work) >= FILL_PART : ended;
      new Filler(setup, nest).fill(bySize(), order, stop);
      offer(nest, false);
    }
  }

  private double spent() {
    return clock.spent(work);
  }

  private void offer(Nest nest, boolean rows) {
    work += nest.work;
    nest.work = 0;
    Poses poses = new Poses(nest.pieces);
    nest.save(poses);
    offer(poses, rows);
  }

  private void offer(Poses poses, boolean rows) {
    Score score = Score.of(setup, poses, request.objective());
    if (score.betterThan(bestScore)) {
      best = poses;
      bestScore = score;
      fromRows = rows;
    }
  }

  private int[] bySize() {
    Comparator<Integer> order =
        Comparator.comparing((Integer i) -> mustHem(i) ? 0 : 1)
            .thenComparing(i -> -setup.pieces.get(setup.kind[i]).outline().area())
            .thenComparing(i -> setup.pieces.get(setup.kind[i]).id())
            .thenComparing(i -> setup.copy[i]);
    return IntStream.range(0, setup.kind.length)
        .boxed()
        .sorted(order)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private boolean mustHem(int i) {
    return setup.pieces.get(setup.kind[i]).hem().map(HemEdge::required).orElse(false);
  }

  /** Tries to make room for pieces without a place, the largest first. */
  private void place() {
    double until = 0.5;
    for (int i : bySize()) {
      if (spent() >= until) {
        return;
      }
      int[] choice = setup.regions.ofKind(setup.kind[i]);
      if (best.region[i] != Poses.PARKED || choice.length == 0 || !areaLeft(i)) {
        continue;
      }
      Nest nest = setup.nest();
      nest.load(best);
      strew(nest, i, choice[random.below(choice.length)]);
      double share = spent() + (until - spent()) / 4;
      if (separate(nest, share)) {
        offer(nest, false);
      }
    }
  }

  private boolean areaLeft(int i) {
    double left = 0;
    for (Bin bin : setup.bins) {
      left += StockOrder.area(bin);
    }
    for (int j = 0; j < best.x.length; j++) {
      if (best.region[j] != Poses.PARKED || j == i) {
        left -= setup.pieces.get(setup.kind[j]).outline().area();
      }
    }
    return left >= 0;
  }

  /** Tries to do without one of the items used, the least filled first. */
  private void empty() {
    double until = 0.7;
    double[] filled = new double[setup.bins.size()];
    for (int i = 0; i < best.x.length; i++) {
      if (best.region[i] != Poses.PARKED) {
        filled[setup.regions.bin[best.region[i]]] +=
            setup.pieces.get(setup.kind[i]).outline().area();
      }
    }
    List<Integer> used = new ArrayList<>();
    double room = 0;
    double need = 0;
    for (int b = 0; b < filled.length; b++) {
      if (filled[b] > 0) {
        used.add(b);
        room += StockOrder.area(setup.bins.get(b));
        need += filled[b];
      }
    }
    used.sort(Comparator.comparingDouble(b -> filled[b]));
    for (int bin : used) {
      if (used.size() < 2 || spent() >= until) {
        return;
      }
      if (room - StockOrder.area(setup.bins.get(bin)) < need) {
        continue;
      }
      Nest nest = setup.nest(everyCopy(), b -> b != bin && used.contains(b));
      if (moveOut(nest, bin) && separate(nest, spent() + (until - spent()) / 2)) {
        offer(nest, false);
      }
    }
  }

  private boolean moveOut(Nest nest, int bin) {
    nest.load(best);
    for (int i = 0; i < nest.pieces; i++) {
      if (best.region[i] != Poses.PARKED && nest.regions.bin[best.region[i]] == bin) {
        int[] choice = nest.regions.ofKind(nest.kind[i]);
        if (choice.length == 0) {
          return false;
        }
        strew(nest, i, choice[random.below(choice.length)]);
      }
    }
    return true;
  }

  /** Puts a piece anywhere in a region, on its line if it is one, and turned so that it fits. */
  private void strew(Nest nest, int i, int r) {
    turn(nest, i, r);
    int o = nest.orientation[i];
    double x = random.next();
    // Off its line a hem would stay so where it meets nothing.
    double y = nest.regions.line[r] ? x : random.next();
    nest.place(
        i,
        r,
        between(nest.minX(r, o), nest.maxX(r, o), x),
        between(nest.minY(r, o), nest.maxY(r, o), y));
  }

  /** One of the angles from which a piece starts, drawn among those at which a region holds it. */
  private void turn(Nest nest, int i, int r) {
    double[] starts = setup.startAngles(setup.kind[i]);
    int from = random.below(starts.length);
    for (int k = 0; k < starts.length; k++) {
      nest.place(i, r, 0, 0, starts[(from + k) % starts.length]);
      if (nest.hasRoom(r, nest.orientation[i])) {
        return;
      }
    }
  }

  private static double between(double a, double b, double part) {
    return a + (b - a) * part;
  }

  private boolean separate(Nest nest, double until) {
    long before = work;
    boolean done =
        new Separator(nest, random).separate(60, 2, () -> clock.spent(before + nest.work) >= until);
    work += nest.work;
    nest.work = 0;
    return done;
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
