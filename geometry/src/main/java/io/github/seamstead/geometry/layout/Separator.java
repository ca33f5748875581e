package io.github.seamstead.geometry.layout;

import java.util.function.BooleanSupplier;

/**
 * Takes overlaps out of a nest: pieces that overlap are moved one after another to where their
 * weighted overlap is least; after each pass the weights of pairs that still overlap grow, the more
 * the deeper they are, so that a pair which keeps getting in each other's way is worth ever more to
 * part. Guided local search in the sense of Voudouris and Tsang (1999).
 */
final class Separator {

  private final Nest nest;
  private final FastRandom random;
  final Mover mover;
  private final int[] order;
  private final Poses best;
  private double bestOverlap;

  private int patience;
  private int strikes;
  private int strike;
  private int idle;
  private double atStart;

  /** Pieces of the running pass, and which of them comes next; no pass runs where it is -1. */
  private int count;

  private int next;
  private boolean over;

  Separator(Nest nest, FastRandom random) {
    this.nest = nest;
    this.random = random;
    mover = new Mover(nest, random);
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
   * @param patience passes without progress before a strike
   * @param strikes how often to go back to the best state and try again
   * @param stop asked before every move; true ends the search
   * @return true if no overlap is left
   */
  boolean separate(int patience, int strikes, BooleanSupplier stop) {
    begin(patience, strikes);
    goOn(stop, () -> false);
    return bestOverlap <= 0;
  }

  /** Takes up the state that the nest holds; {@link #goOn} then works on it. */
  void begin(int patience, int strikes) {
    this.patience = patience;
    this.strikes = strikes;
    Pairs pairs = nest.pairs();
    pairs.reset();
    nest.refreshAll();
    bestOverlap = pairs.overlap();
    nest.save(best);
    // Counted as work, so that even tries that need no move use up the budget.
    nest.work += nest.pieces;
    strike = 0;
    idle = 0;
    count = -1;
    atStart = bestOverlap;
    over = strikes <= 0 || patience <= 0 || bestOverlap <= 0;
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

  /** After a pass: keeps its state if it is the best, and begins anew or ends where it stalls. */
  private void judge() {
    double overlap = nest.pairs().overlap();
    if (overlap < bestOverlap) {
      idle = overlap < 0.98 * bestOverlap ? 0 : idle + 1;
      bestOverlap = overlap;
      nest.save(best);
    } else {
      idle++;
    }
    nest.pairs().grow();
    if (idle < patience && bestOverlap > 0) {
      return;
    }
    strike = bestOverlap < 0.98 * atStart ? 0 : strike + 1;
    over = strike >= strikes || bestOverlap <= 0;
    atStart = bestOverlap;
    idle = 0;
    if (!over && strike > 0) {
      nest.load(best);
      nest.refreshAll();
    }
  }
}
