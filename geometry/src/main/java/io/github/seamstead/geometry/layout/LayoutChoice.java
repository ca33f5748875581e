package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Clock;
import io.github.seamstead.shared.work.Work;
import java.util.Iterator;
import java.util.Optional;

/**
 * Chooses among several ways to divide the same cover into pieces by laying each out: the fewest
 * pieces without a place, then the least area of them, then the lowest rank, then the least stock.
 *
 * <p>Each way is filled without a search, and only as far as it may still come to less than the
 * best so far; ways in the order of their rank end the choice soon. More stock never makes the
 * worth of the choice worse, if the same ways are offered, within the bounds that {@link
 * CuttingLayout} names. What was laid for the way chosen is kept for {@link CuttingLayout#plan}.
 */
public final class LayoutChoice {

  private final LayoutRequest request;
  private final int index;
  private final StockTree tree;
  private final Worth worth;

  /**
   * A way to divide the cover.
   *
   * @param request its pieces, with the stock and rules that all ways share
   * @param rank what it costs to join the pieces, for example how many splices; lower is better
   */
  public record Way(LayoutRequest request, int rank) {}

  private LayoutChoice(LayoutRequest request, int index, StockTree tree, Worth worth) {
    this.request = request;
    this.index = index;
    this.tree = tree;
    this.worth = worth;
  }

  /**
   * Makes the choice.
   *
   * @param ways the ways in the order of their rank; each is asked for when it is its turn
   * @param work the terms: seed, time limit and cancellation count, work units do not
   * @return the choice; empty if there is no way
   */
  public static Optional<LayoutChoice> among(Iterator<Way> ways, Work work) {
    Clock clock = new Clock(work, 1);
    Optional<LayoutChoice> best = Optional.empty();
    for (int i = 0; ways.hasNext(); i++) {
      Way way = ways.next();
      if (best.isPresent() && (best.get().beats(way.rank()) || clock.ended().getAsBoolean())) {
        break;
      }
      Optional<Worth> limit = best.map(choice -> choice.worth);
      StockTree tree = new StockTree(way.request(), way.rank(), limit, work.seed(), clock.ended());
      tree.search();
      int number = i;
      Optional<LayoutChoice> better =
          tree.found().map(f -> new LayoutChoice(way.request(), number, tree, f.worth()));
      best = better.isPresent() ? better : best;
    }
    return best;
  }

  /** Whether no way of a rank, nor of a higher one, can be better. */
  private boolean beats(int rank) {
    return worth.isComplete() && worth.rank() < rank;
  }

  /**
   * Tells which way was chosen.
   *
   * @return its place among those offered, counted from 0
   */
  public int index() {
    return index;
  }

  /**
   * Tells whether every piece has a place already.
   *
   * @return whether the filling left none over
   */
  public boolean isComplete() {
    return worth.isComplete();
  }

  /**
   * Gives the way chosen as a request.
   *
   * @return its pieces, stock and rules
   */
  public LayoutRequest request() {
    return request;
  }

  StockTree tree() {
    return tree;
  }
}
