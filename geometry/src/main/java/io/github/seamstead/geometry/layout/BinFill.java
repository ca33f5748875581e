package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.FastRandom;
import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.layout.internal.Separator;
import io.github.seamstead.geometry.layout.internal.Tuning;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Fills one copy of a stock item with what is left to cut. What it does depends on the item and on
 * what is left alone, not on the other stock: that is what lets {@link StockTree} compare heaps.
 */
final class BinFill {

  private static final int MOST_REFUSALS = 3;

  /** Directions in which pieces are pushed; which ones is told in the table of heaps. */
  private static final List<Filler.Push> PUSHES =
      List.of(
          Filler.Push.ALONG,
          new Filler.Push(1, 1),
          new Filler.Push(1, 0.3),
          new Filler.Push(0.3, 1));

  /** More pieces are pushed along alone: the directions differ least there and take longest. */
  private static final int FEW = 150;

  private final LayoutRequest request;
  private final NestSetup setup;
  private final Nest nest;
  private final int[] bySize;
  private final Bin bin;
  private final long seed;
  private final Map<String, Filled> known = new HashMap<>();
  private final int[] one = {0};

  /** Placements evaluated. */
  long work;

  /**
   * A filling.
   *
   * @param kinds the kind of each placement
   * @param placements where they lie, in the item's coordinates; the copy is of no meaning
   * @param area of the pieces, in square metres
   * @param reach how far they reach along the item, margin included, in metres
   * @param rows whether it was found in closed form
   */
  record Filled(
      List<Integer> kinds, List<Placement> placements, double area, double reach, boolean rows) {
    /** How many copies of a kind lie on the item. */
    int count(int kind) {
      return (int) kinds.stream().filter(k -> k == kind).count();
    }
  }

  BinFill(
      LayoutRequest request,
      List<Piece> pieces,
      Bin bin,
      double unit,
      NestSetup.Drawn drawn,
      long seed) {
    this.request = request;
    this.bin = bin;
    this.seed = seed;
    setup =
        new NestSetup(pieces, List.of(bin), request.spacing(), request.edgeMargin(), unit, drawn);
    nest = setup.nest();
    bySize = StockTree.bySize(setup);
  }

  /** Whether one of a kind may lie on the item, by its size. */
  boolean mayHold(int kind) {
    return setup.regions.ofKind(kind).length > 0;
  }

  /**
   * Fills the item.
   *
   * @param left how many of each kind are left to cut
   * @param everyWay whether pieces are pushed in every direction in turn, or along the item alone
   * @param squeeze work units for each try to press one more piece in; 0 for none
   * @param stop asked often; true ends the filling with what lies
   */
  Filled fill(int[] left, boolean everyWay, long squeeze, BooleanSupplier stop) {
    String key = Arrays.toString(left) + everyWay + squeeze;
    Filled filled = known.get(key);
    if (filled == null) {
      filled = filled(left, everyWay, squeeze, stop);
      known.put(key, filled);
    }
    return filled;
  }

  private Filled filled(int[] left, boolean everyWay, long squeeze, BooleanSupplier stop) {
    Optional<Poses> rows = RowsStart.lay(setup, request, bin, left, stop);
    if (rows.isPresent() && IntStream.of(counts(rows.get())).sum() == IntStream.of(left).sum()) {
      return result(rows.get(), true);
    }
    int[] pieces = IntStream.of(bySize).filter(i -> setup.copy[i] <= left[setup.kind[i]]).toArray();
    int pushes = everyWay && pieces.length <= FEW ? PUSHES.size() : 1;
    Poses poses = fullest(pieces, pushes, stop);
    if (squeeze > 0) {
      poses = squeezed(poses, left, squeeze, stop);
    }
    Filled filled = result(poses, false);
    return rows.map(r -> result(r, true)).filter(r -> r.area() >= filled.area()).orElse(filled);
  }

  /**
   * Fills by pushing pieces in one direction after the other, until all lie, and keeps what has
   * most on it.
   */
  private Poses fullest(int[] pieces, int pushes, BooleanSupplier stop) {
    Poses fullest = new Poses(nest.pieces);
    double most = -1;
    boolean all = false;
    for (int p = 0; p < pushes && !all; p++) {
      new Filler(setup, nest, PUSHES.get(p)).fill(pieces, one, stop);
      double area = 0;
      int count = 0;
      for (int i : pieces) {
        if (nest.region[i] != Poses.PARKED) {
          area += setup.pieces.get(setup.kind[i]).outline().area();
          count++;
        }
      }
      if (area > most * (1 + 1e-9)) {
        most = area;
        nest.save(fullest);
      }
      all = count == pieces.length;
    }
    work += nest.work;
    nest.work = 0;
    return fullest;
  }

  /** Tries to press in one piece more at a time, the largest first. */
  private Poses squeezed(Poses from, int[] left, long units, BooleanSupplier stop) {
    Poses best = from;
    int refusals = 0;
    FastRandom random = new FastRandom(Seeds.stream(seed, Arrays.toString(left), 0).nextLong());
    boolean[] refused = new boolean[left.length];
    for (int i : bySize) {
      int kind = setup.kind[i];
      int[] choice = setup.regions.ofKind(kind);
      boolean wanted = best.region[i] == Poses.PARKED && setup.copy[i] <= left[kind];
      if (!wanted || refused[kind] || choice.length == 0 || !hasArea(best, i)) {
        continue;
      }
      if (refusals == MOST_REFUSALS || stop.getAsBoolean()) {
        break;
      }
      Optional<Poses> more =
          pressedIn(best, i, choice[random.below(choice.length)], random, units, stop);
      refused[kind] = more.isEmpty();
      refusals += more.isEmpty() ? 1 : 0;
      best = more.orElse(best);
    }
    return best;
  }

  private boolean hasArea(Poses poses, int piece) {
    double area = StockOrder.area(bin) - setup.pieces.get(setup.kind[piece]).outline().area();
    for (int i = 0; i < poses.region.length; i++) {
      if (poses.region[i] != Poses.PARKED) {
        area -= setup.pieces.get(setup.kind[i]).outline().area();
      }
    }
    return area >= 0;
  }

  private Optional<Poses> pressedIn(
      Poses from, int piece, int region, FastRandom random, long units, BooleanSupplier stop) {
    int[] members =
        IntStream.range(0, from.region.length)
            .filter(i -> i == piece || from.region[i] != Poses.PARKED)
            .toArray();
    Nest some = setup.nest(members, b -> true);
    Poses start = new Poses(members.length);
    int its = 0;
    for (int k = 0; k < members.length; k++) {
      start.take(k, from, members[k]);
      its = members[k] == piece ? k : its;
    }
    some.load(start);
    Strew.put(setup, some, its, region, random);
    boolean apart =
        new Separator(some, random, Tuning.CHOSEN)
            .separate(() -> some.work >= units || stop.getAsBoolean());
    work += some.work;
    if (!apart) {
      return Optional.empty();
    }
    some.save(start);
    Poses more = from.copy();
    for (int k = 0; k < members.length; k++) {
      more.take(members[k], start, k);
    }
    return Optional.of(more);
  }

  private int[] counts(Poses poses) {
    int[] counts = new int[setup.pieces.size()];
    for (int i = 0; i < poses.region.length; i++) {
      if (poses.region[i] != Poses.PARKED) {
        counts[setup.kind[i]]++;
      }
    }
    return counts;
  }

  private Filled result(Poses poses, boolean rows) {
    List<Integer> kinds = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    double area = 0;
    for (int i = 0; i < poses.region.length; i++) {
      if (poses.region[i] != Poses.PARKED) {
        Placement p = setup.placement(i, poses);
        kinds.add(setup.kind[i]);
        placements.add(
            new Placement(
                p.pieceId(),
                p.copy(),
                p.mirrored(),
                p.rotation(),
                p.shift(),
                setup.regions.line[poses.region[i]]));
        area += setup.pieces.get(setup.kind[i]).outline().area();
      }
    }
    double reach = placements.isEmpty() ? 0 : Score.reach(setup, poses)[0];
    return new Filled(kinds, placements, area, reach, rows && area > 0);
  }
}
