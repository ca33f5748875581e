package io.github.seamstead.geometry.layout.internal;

import java.util.function.BooleanSupplier;

/**
 * Takes overlaps out of a nest: pieces that overlap are moved one after another to where their
 * weighted overlap is least; after each pass the weights of pairs that still overlap grow, the more
 * the deeper they are, so that a pair which keeps getting in each other's way is worth ever more to
 * part. Guided local search in the sense of Voudouris and Tsang (1999).
 */
public final class Separator {

  private final Tuning tuning;
  private final Nest nest;
  private final FastRandom random;
  final Mover mover;
  private final int[] order;
  private final Poses best;
  private double bestOverlap;

  /** Work at the start and at the last record, and what is granted to reach the next. */
  private long begunAt;

  private long recordAt;
  private long grace;

  /** Pieces of the running pass, and which of them comes next; no pass runs where it is -1. */
  private int count;

  private int next;
  private boolean over;

  public Separator(Nest nest, FastRandom random, Tuning tuning) {
    this.tuning = tuning;
    this.nest = nest;
    nest.weigh(tuning.bias());
    this.random = random;
    mover = new Mover(nest, random, tuning);
    order = new int[nest.pieces];
    best = new Poses(nest.pieces);
  }

  /** The overlap of the best state seen since {@link #begin}. */
  double bestOverlap() {
    return bestOverlap;
  }

  /**
   * Tries to end all overlap. Afterwards the nest holds the state of least overlap seen.
   *
   * @param stop asked before every move; true ends the search
   * @return true if no overlap is left
   */
  public boolean separate(BooleanSupplier stop) {
    begin();
    goOn(stop, () -> false);
    return bestOverlap <= 0;
  }

  /** Takes up the state that the nest holds; {@link #goOn} then works on it. */
  void begin() {
    Pairs pairs = nest.pairs();
    pairs.reset();
    nest.refreshAll();
    bestOverlap = pairs.overlap();
    nest.save(best);
    begunAt = nest.work;
    recordAt = nest.work;
    grace = tuning.grace() * nest.pieces;
    // Counted as work, so that even tries that need no move use up the budget.
    nest.work += nest.pieces;
    count = -1;
    over = bestOverlap <= 0;
  }

  /**
   * Works until the overlap is gone, patience or {@code stop} ends the search, or a pause is due.
   *
   * @param stop asked before every move; true ends the search
   * @param pause asked before every move; true leaves it to be gone on with
   * @return true if it has ended; the nest then holds the state of least overlap seen
   */
  boolean goOn(BooleanSupplier stop, BooleanSupplier pause) {
    while (!over) {
      if (count < 0) {
        choose();
      }
      while (next < count) {
        if (pause.getAsBoolean()) {
          return false;
        }
        if (stop.getAsBoolean()) {
          over = true;
          break;
        }
        mover.move(order[next++]);
      }
      count = -1;
      if (!over) {
        judge();
      }
    }
    nest.load(best);
    nest.refreshAll();
    return true;
  }

  /** Begins a pass over the pieces that overlap, in random order. */
  private void choose() {
    next = 0;
    count = 0;
    for (int i = 0; i < nest.pieces; i++) {
      if (nest.pairs().overlaps(i)) {
        int at = random.below(count + 1);
        order[count] = order[at];
        order[at] = i;
        count++;
      }
    }
    nest.work += nest.pieces;
  }

  /**
   * After a pass: keeps its state if it is the best. A search without a record in the second half
   * of its life is over: what it learns by going on is worth less than what a new one would.
   */
  private void judge() {
    double overlap = nest.pairs().overlap();
    if (overlap < bestOverlap) {
      if (overlap < tuning.record() * bestOverlap) {
        recordAt = nest.work;
      }
      bestOverlap = overlap;
      nest.save(best);
    }
    nest.pairs().grow(tuning);
    over = bestOverlap <= 0 || nest.work - recordAt > Math.max(grace, recordAt - begunAt);
  }
}
