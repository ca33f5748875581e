package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.Optional;

/**
 * Where everything lies, what is left and how good it is.
 *
 * <p>Invariant: placements neither overlap nor leave their stock, keep spacing and margin, and
 * cover no flaw; placed and unplaced copies together are the copies asked for.
 *
 * @param used the stock that is cut, in order of use
 * @param unplaced what found no place
 * @param furtherStock what to fetch so that all pieces that fit any item are placed: of what has a
 *     price first, and of the rest only for pieces that nothing with a price takes; empty if none
 *     is needed, if no piece left over fits any item, or if the search was stopped before it knew
 * @param density area of the pieces placed divided by the area of the stock used (whole sheets,
 *     rolls up to the used length), 0 to 1
 * @param usedLength sum over the used items of how far the cuts reach along x, in metres; 0 or more
 * @param cost of the stock used, in the caller's currency; 0 or more
 * @param objectiveValue what the objective counts: items, cost or metres; 0 or more
 * @param lowerBound no layout of the placed pieces can have a lower objective value; 0 or more
 * @param lengthBound no layout of the placed pieces on the items used has a lower used length, in
 *     metres; 0 or more
 * @param gap {@code (objectiveValue - lowerBound) / objectiveValue}, 0 to 1; 0 means proved best
 * @param method how the layout was found
 * @param workUsed work units spent: placements evaluated; 0 or more
 * @param stopped what ended the search before its count of work was used up or no better layout was
 *     possible; empty if nothing did. The layout holds all the same, but more work may place more
 */
public record LayoutResult(
    List<StockUse> used,
    List<Shortfall> unplaced,
    List<StockNeed> furtherStock,
    double density,
    double usedLength,
    double cost,
    double objectiveValue,
    double lowerBound,
    double lengthBound,
    double gap,
    Method method,
    long workUsed,
    Optional<Stop> stopped) {

  /** What ends a search early. */
  public enum Stop {
    /** The caller's {@link io.github.seamstead.shared.work.Cancellation} was switched. */
    CANCELLED,
    /** The caller asked by the same switch that searches end and all else is done in full. */
    FINISHED_EARLY,
    /** The thread that called was interrupted; it still is when the result is returned. */
    INTERRUPTED,
    /** The budget's time ran out. */
    TIME_LIMIT
  }

  /** How a layout was found. */
  public enum Method {
    /** In closed form: congruent panels head to tail in rows. */
    ROWS,
    /** By the search for irregular pieces. */
    SEARCH
  }

  public LayoutResult {
    used = List.copyOf(used);
    unplaced = List.copyOf(unplaced);
    furtherStock = List.copyOf(furtherStock);
    Args.within("density", density, 0, 1 + 1e-9, "");
    Args.notNegative("used length", usedLength, "m");
    Args.notNegative("cost", cost, "");
    Args.notNegative("objective value", objectiveValue, "");
    Args.notNegative("lower bound", lowerBound, "");
    Args.notNegative("length bound", lengthBound, "m");
    Args.within("gap", gap, 0, 1, "");
  }

  /**
   * Tells whether every piece has its place.
   *
   * @return true if nothing is unplaced
   */
  public boolean isComplete() {
    return unplaced.isEmpty();
  }
}
