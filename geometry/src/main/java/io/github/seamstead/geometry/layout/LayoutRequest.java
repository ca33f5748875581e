package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.check.Args;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Pieces, stock and the rules of cutting.
 *
 * @param pieces what is to be cut; at least one, ids unique, at most {@link #MOST_COPIES} copies in
 *     all
 * @param stock what there is to cut from; at least one, ids unique
 * @param spacing least distance between two pieces, in metres, 0 or more
 * @param edgeMargin least distance of a piece from the stock's edge and from flaws, in metres, 0 or
 *     more; a hem edge on a reinforced edge keeps none from that edge
 * @param objective what counts as less stock
 */
public record LayoutRequest(
    List<Piece> pieces,
    List<StockItem> stock,
    double spacing,
    double edgeMargin,
    Objective objective) {

  /** The most copies in all that one request may ask for. */
  public static final int MOST_COPIES = 5_000;

  public LayoutRequest {
    pieces = Args.notEmpty("pieces", pieces);
    stock = Args.notEmpty("stock", stock);
    Args.notNegative("spacing", spacing, "m");
    Args.notNegative("edge margin", edgeMargin, "m");
    Set<String> ids = new HashSet<>();
    long copies = 0;
    for (Piece piece : pieces) {
      Args.require(ids.add(piece.id()), "piece id: given \"" + piece.id() + "\" twice");
      copies += piece.count();
    }
    Args.require(
        copies <= MOST_COPIES,
        "pieces",
        copies + " copies in all",
        "must be at most " + MOST_COPIES);
    ids.clear();
    for (StockItem item : stock) {
      Args.require(ids.add(item.id()), "stock id: given \"" + item.id() + "\" twice");
    }
  }

  /**
   * Asks for pieces side by side without spacing or margin, on the fewest items.
   *
   * @param pieces what is to be cut, at least one
   * @param stock what there is to cut from, at least one
   * @return the request
   * @throws IllegalArgumentException as the constructor does
   */
  public static LayoutRequest of(List<Piece> pieces, List<? extends StockItem> stock) {
    return new LayoutRequest(pieces, List.copyOf(stock), 0, 0, Objective.FEWEST_ITEMS);
  }

  /**
   * The same request with distances to keep.
   *
   * @param betweenPieces in metres, 0 or more
   * @param toTheEdge in metres, 0 or more
   * @return the new value
   * @throws IllegalArgumentException if a distance is negative
   */
  public LayoutRequest withSpacing(double betweenPieces, double toTheEdge) {
    return new LayoutRequest(pieces, stock, betweenPieces, toTheEdge, objective);
  }

  /**
   * The same request with another objective.
   *
   * @param aim what counts as less stock
   * @return the new value
   */
  public LayoutRequest withObjective(Objective aim) {
    return new LayoutRequest(pieces, stock, spacing, edgeMargin, aim);
  }
}
