package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.BinFill.Filled;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Chooses which stock to cut from: it goes through the items in an order that does not depend on
 * what else there is, and fills each or leaves it out. Every choice of items is considered, in
 * several orders, but for those that cannot come to less than the best so far.
 *
 * <p>A heap with more stock has every choice that a smaller one has, and how an item is filled
 * depends on what is left to cut alone. So what is found is never worse for more stock: no more
 * pieces without a place, and no more items, unless the number of fillings runs out, which then
 * grows with two to the power of the items. O(fillings) otherwise.
 */
final class StockTree {

  /** Beyond so many pieces to place the choices are no longer all considered. */
  private static final long MOST_TRIED = 5_000;

  private final LayoutRequest request;
  private final List<Piece> pieces;
  private final List<StockItem> items;
  private final @Nullable BinFill[] fills;
  private final NestSetup.Drawn drawn = new NestSetup.Drawn();
  private final long seed;
  private final int[] copies;
  private final double[] areas;
  private final BooleanSupplier ended;
  private final int rank;
  private boolean everyWay;
  private long squeeze;
  private long most = MOST_TRIED;
  private long tried;
  private long workLimit = Long.MAX_VALUE;
  private Optional<Found> best = Optional.empty();
  private Optional<Worth> limit;
  private boolean cut;

  /** The walk under way. */
  private int[] order = new int[0];

  private double[] roomFrom = new double[0];
  private int[] lastFor = new int[0];
  private double leastPreference;
  private final List<Cut> taken = new ArrayList<>();

  /** One copy of an item with what is cut from it. */
  record Cut(int item, int copy, Filled filled) {}

  /** The best choice. */
  record Found(Worth worth, List<Cut> cuts) {}

  /** What is counted on the way. */
  private record Sum(int items, double preference, double cost, double length) {
    Sum with(StockItem item, Filled filled) {
      return new Sum(
          items + 1,
          preference + item.preference(),
          cost + item.costOf(filled.reach()),
          length + filled.reach());
    }
  }

  /**
   * Prepares a choice.
   *
   * @param rank a term of the worth
   * @param limit what is not less is not wanted
   * @param seed of the tries to press in more
   * @param ended asked often; true ends the choice with the best so far
   */
  StockTree(
      LayoutRequest request, int rank, Optional<Worth> limit, long seed, BooleanSupplier ended) {
    this.request = request;
    this.rank = rank;
    this.limit = limit;
    this.ended = ended;
    pieces = Planner.byId(request.pieces());
    items = request.stock();
    int all = pieces.stream().mapToInt(Piece::count).sum();
    copies = items.stream().mapToInt(item -> Math.min(item.count(), all)).toArray();
    areas = pieces.stream().mapToDouble(p -> p.outline().area()).toArray();
    fills = new BinFill[items.size()];
    this.seed = seed;
  }

  private BinFill fillOf(int i) {
    BinFill known = fills[i];
    if (known != null) {
      return known;
    }
    StockItem item = items.get(i);
    Bounds bounds = item.outline().bounds();
    Bin bin = new Bin(item, 1, bounds, -bounds.minX());
    BinFill made = new BinFill(request, pieces, bin, Planner.unit(request), drawn, seed);
    fills[i] = made;
    return made;
  }

  /** The copies of a request, those that need a band first, then by size. */
  static int[] bySize(NestSetup setup) {
    Comparator<Integer> order =
        Comparator.comparing(
                (Integer i) ->
                    setup.pieces.get(setup.kind[i]).hem().map(HemEdge::required).orElse(false)
                        ? 0
                        : 1)
            .thenComparing(i -> -setup.pieces.get(setup.kind[i]).outline().area())
            .thenComparing(i -> setup.pieces.get(setup.kind[i]).id())
            .thenComparing(i -> setup.copy[i]);
    return IntStream.range(0, setup.kind.length)
        .boxed()
        .sorted(order)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  long work() {
    return Arrays.stream(fills).filter(Objects::nonNull).mapToLong(fill -> fill.work).sum();
  }

  /** The best choice; empty if the limit keeps all out. */
  Optional<Found> found() {
    return best;
  }

  /** Whether some choices were not considered. */
  boolean isCut() {
    return cut;
  }

  /** Looks at every choice. */
  void search() {
    walkAll(limit.isEmpty());
  }

  /** Looks at every choice again, and from now on, with pieces pushed in every direction. */
  void searchEveryWay() {
    everyWay = true;
    squeeze = 0;
    tried = 0;
    walkAll(false);
  }

  /** Looks at every choice again and tries to press further pieces in. */
  void search(long unitsEach) {
    search(unitsEach, Long.MAX_VALUE);
  }

  /** Looks at choices again, pressing pieces in, until so much work more is done. */
  void search(long unitsEach, long mostWork) {
    squeeze = unitsEach;
    tried = 0;
    workLimit = mostWork == Long.MAX_VALUE ? mostWork : work() + mostWork;
    walkAll(false);
  }

  private void walkAll(boolean first) {
    int[] left = pieces.stream().mapToInt(Piece::count).toArray();
    for (int[] next : StockOrder.orders(items)) {
      order = next;
      measure();
      // The first descent of each order is cheap, and may come to the same with less length.
      walk(0, 1, left, new Sum(0, 0, 0, 0), first);
    }
  }

  private void measure() {
    int n = order.length;
    roomFrom = new double[n + 1];
    lastFor = new int[pieces.size()];
    Arrays.fill(lastFor, -1);
    leastPreference = 0;
    for (int at = n - 1; at >= 0; at--) {
      int item = order[at];
      roomFrom[at] = roomFrom[at + 1] + copies[item] * room(item);
      leastPreference += copies[item] * Math.min(0, items.get(item).preference());
      for (int k = 0; k < lastFor.length; k++) {
        if (lastFor[k] < 0 && fillOf(item).mayHold(k)) {
          lastFor[k] = at;
        }
      }
    }
  }

  private double room(int item) {
    return items.get(item).outline().area();
  }

  private void walk(int at, int copy, int[] left, Sum sum, boolean first) {
    if (at == order.length || IntStream.of(left).allMatch(n -> n == 0)) {
      offer(left, sum);
      return;
    }
    int item = order[at];
    if (copy > copies[item]) {
      walk(at + 1, 1, left, sum, first);
      return;
    }
    if (!first && !isWorthIt(at, copy, left, sum)) {
      return;
    }
    if (ended.getAsBoolean() || (tried > most && !first) || work() > workLimit) {
      cut = true;
      offer(left, sum);
      return;
    }
    tried += IntStream.of(left).sum();
    Filled filled = fillOf(item).fill(left, everyWay, squeeze, ended);
    if (!filled.kinds().isEmpty()) {
      int[] after = left.clone();
      for (int k = 0; k < after.length; k++) {
        after[k] -= filled.count(k);
      }
      taken.add(new Cut(item, copy, filled));
      walk(at, copy + 1, after, sum.with(items.get(item), filled), first);
      taken.remove(taken.size() - 1);
    }
    // Copies are alike: whoever leaves one out leaves out those after it.
    if (isWorthIt(at + 1, 1, left, sum)) {
      walk(at + 1, 1, left, sum, false);
    }
  }

  private void offer(int[] left, Sum sum) {
    int missing = 0;
    double area = 0;
    for (int k = 0; k < left.length; k++) {
      missing += left[k];
      area += left[k] * areas[k];
    }
    Worth worth = worth(missing, area, sum);
    if (limit.isEmpty() || worth.compareTo(limit.get()) < 0) {
      limit = Optional.of(worth);
      best = Optional.of(new Found(worth, List.copyOf(taken)));
    }
  }

  private Worth worth(int missing, double area, Sum s) {
    return switch (request.objective()) {
      case FEWEST_ITEMS -> Worth.of(missing, area, rank, s.items, s.preference, s.length, s.cost);
      case LEAST_COST -> Worth.of(missing, area, rank, s.cost, s.items, s.preference, s.length);
      case LEAST_LENGTH -> Worth.of(missing, area, rank, s.length, s.items, s.preference, s.cost);
    };
  }

  /** Whether anything that follows may come to less than the best. */
  private boolean isWorthIt(int at, int copy, int[] left, Sum sum) {
    if (limit.isEmpty()) {
      return true;
    }
    double room = roomFrom[at];
    if (at < order.length) {
      room -= (copy - 1) * room(order[at]);
    }
    int missing = 0;
    double lost = 0;
    double area = 0;
    for (int k = 0; k < left.length; k++) {
      if (lastFor[k] < at) {
        missing += left[k];
        lost += left[k] * areas[k];
      } else {
        area += left[k] * areas[k];
      }
    }
    double over = area * (1 - 1e-9) - room;
    if (over > 0) {
      lost += over;
      missing += tooMany(at, left, room);
    }
    int more = over > 0 ? 0 : leastItems(at, copy, area * (1 - 1e-9));
    Sum least = new Sum(sum.items + more, sum.preference + leastPreference, sum.cost, sum.length);
    return isLess(worth(missing, lost, least), limit.get());
  }

  /** How many pieces at least find no place in so much room: the smallest take the least. */
  private int tooMany(int at, int[] left, double room) {
    int[] small =
        IntStream.range(0, left.length)
            .filter(k -> lastFor[k] >= at && left[k] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(k -> areas[k]))
            .mapToInt(Integer::intValue)
            .toArray();
    double has = room;
    int out = 0;
    for (int k : small) {
      int in = (int) Math.min(left[k], Math.floor(has / areas[k] * (1 + 1e-9)));
      has -= in * areas[k];
      out += left[k] - in;
    }
    return Math.max(1, out);
  }

  /** How many items at least hold so much area. */
  private int leastItems(int at, int copy, double area) {
    int[] large =
        IntStream.range(at, order.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -room(order[i])))
            .mapToInt(Integer::intValue)
            .toArray();
    double need = area;
    int count = 0;
    for (int i : large) {
      int there = copies[order[i]] - (i == at ? copy - 1 : 0);
      for (int c = 0; c < there && need > 0; c++) {
        need -= room(order[i]);
        count++;
      }
    }
    return count;
  }

  /** Compares what the objective weighs most; the rest follows from the pressing. */
  private static boolean isLess(Worth bound, Worth than) {
    return bound.isLess(than, 4);
  }
}
