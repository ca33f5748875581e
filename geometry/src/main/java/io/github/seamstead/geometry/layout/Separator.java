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

  Separator(Nest nest, FastRandom random) {
    this.nest = nest;
    this.random = random;
    mover = new Mover(nest, random);
    order = new int[nest.pieces];
    best = new Poses(nest.pieces);
  }

  /** The overlap of the best state seen by the last {@link #separate}. */
  double bestOverlap() {
    return bestOverlap;
  }

  /**
   * Tries to end all overlap. Afterwards the nest holds the state of least overlap seen.
   *
   * @param patience passes without progress before a strike
   * @param strikes how often to go back to the best state and try again
   * @param stop asked often; true ends the search
   * @return true if no overlap is left
   */
  boolean separate(int patience, int strikes, BooleanSupplier stop) {
    Pairs pairs = nest.pairs();
    pairs.reset();
    nest.refreshAll();
    bestOverlap = pairs.overlap();
    nest.save(best);
    // Counted as work, so that even tries that need no move use up the budget.
    nest.work += nest.pieces;
    for (int strike = 0; strike < strikes && bestOverlap > 0; strike++) {
      double atStart = bestOverlap;
      if (strike > 0) {
        nest.load(best);
        nest.refreshAll();
      }
      int idle = 0;
      while (idle < patience && bestOverlap > 0) {
        if (!pass(stop)) {
          strike = strikes;
          break;
        }
        double overlap = pairs.overlap();
        if (overlap < bestOverlap) {
          idle = overlap < 0.98 * bestOverlap ? 0 : idle + 1;
          bestOverlap = overlap;
          nest.save(best);
        } else {
          idle++;
        }
        pairs.grow();
      }
      if (bestOverlap < 0.98 * atStart) {
        strike = strike >= strikes ? strike : -1;
      }
    }
    nest.load(best);
    nest.refreshAll();
    return bestOverlap <= 0;
  }

  private boolean pass(BooleanSupplier stop) {
    int count = 0;
    for (int i = 0; i < nest.pieces; i++) {
      if (nest.pairs().overlaps(i)) {
        int at = random.below(count + 1);
        order[count] = order[at];
        order[at] = i;
        count++;
      }
    }
    nest.work += nest.pieces;
    for (int k = 0; k < count; k++) {
      if (stop.getAsBoolean()) {
        return false;
      }
      mover.move(order[k]);
    }
    return true;
  }
}
