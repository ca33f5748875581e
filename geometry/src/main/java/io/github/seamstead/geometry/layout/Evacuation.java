package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.FastRandom;
import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.layout.internal.Separator;
import io.github.seamstead.geometry.layout.internal.Tuning;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Tries to do with less stock: all pieces of one or two items are strewn over other items, and the
 * overlaps that result are parted on all of them at once, pieces moving from item to item as they
 * find room.
 */
final class Evacuation {

  /** No heap of odd pieces is laid more densely than this, so that fuller ones are not tried. */
  private static final double DENSEST = 0.93;

  private final NestSetup setup;
  private final FastRandom random;
  private final BooleanSupplier ended;

  /** Placements evaluated. */
  private long work;

  Evacuation(NestSetup setup, FastRandom random, BooleanSupplier ended) {
    this.setup = setup;
    this.random = random;
    this.ended = ended;
  }

  long work() {
    return work;
  }

  /**
   * Chooses items to do with instead of those used: all but one that has little on it, or one
   * larger unused item for two small ones.
   *
   * @param poses where the pieces lie
   * @param attempt counts the tries; each looks further
   * @return which bins to use; empty if the pieces could hardly fit those
   */
  Optional<boolean[]> fewer(Poses poses, int attempt) {
    double[] filled = new double[setup.bins.size()];
    for (int i = 0; i < poses.region.length; i++) {
      if (poses.region[i] != Poses.PARKED) {
        filled[setup.regions.bin[poses.region[i]]] += area(i);
      }
    }
    int[] used =
        IntStream.range(0, filled.length)
            .filter(b -> filled[b] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(b -> filled[b]))
            .mapToInt(Integer::intValue)
            .toArray();
    if (used.length < 2) {
      return Optional.empty();
    }
    boolean[] on = new boolean[filled.length];
    for (int b : used) {
      on[b] = true;
    }
    on[used[attempt / 2 % used.length]] = false;
    int larger = largestUnused(filled);
    if (attempt % 2 == 1 && larger >= 0 && used.length > 2) {
      on[used[(attempt / 2 + 1) % used.length]] = false;
      on[larger] = true;
    }
    double room = 0;
    for (int b = 0; b < on.length; b++) {
      room += on[b] ? room(setup.bins.get(b)) : 0;
    }
    return Arrays.stream(filled).sum() <= DENSEST * room ? Optional.of(on) : Optional.empty();
  }

  private int largestUnused(double[] filled) {
    int largest = -1;
    for (int b = 0; b < filled.length; b++) {
      boolean larger = largest < 0 || room(setup.bins.get(b)) > room(setup.bins.get(largest));
      largest = filled[b] <= 0 && larger ? b : largest;
    }
    return largest;
  }

  private double room(Bin bin) {
    double flaws = bin.item().flaws().stream().mapToDouble(f -> f.area()).sum();
    return StockOrder.area(bin) - flaws;
  }

  private double area(int i) {
    return setup.pieces.get(setup.kind[i]).outline().area();
  }

  /**
   * Lays the placed pieces on some of the bins alone.
   *
   * @param units the most placements to evaluate
   * @return where they lie then; empty if overlaps were left
   */
  Optional<Poses> onto(boolean[] bins, Poses poses, long units) {
    int[] members =
        IntStream.range(0, poses.region.length)
            .filter(i -> poses.region[i] != Poses.PARKED)
            .toArray();
    Nest nest = setup.nest(members, b -> bins[b]);
    Poses start = new Poses(members.length);
    for (int k = 0; k < members.length; k++) {
      start.take(k, poses, members[k]);
    }
    nest.load(start);
    for (int k = 0; k < members.length; k++) {
      if (!bins[setup.regions.bin[start.region[k]]]) {
        int[] choice = nest.regions.ofKind(nest.kind[k]);
        if (choice.length == 0) {
          return Optional.empty();
        }
        Strew.put(setup, nest, k, choice[random.below(choice.length)], random);
      }
    }
    boolean apart =
        new Separator(nest, random, Tuning.CHOSEN)
            .separate(() -> nest.work >= units || ended.getAsBoolean());
    work += nest.work;
    if (!apart) {
      return Optional.empty();
    }
    nest.save(start);
    Poses out = poses.copy();
    for (int k = 0; k < members.length; k++) {
      out.take(members[k], start, k);
    }
    return Optional.of(out);
  }
}
