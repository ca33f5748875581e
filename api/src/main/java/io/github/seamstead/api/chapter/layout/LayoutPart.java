package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Where each piece is cut.
 *
 * @param stock the sheets and rolls, in the order of the document
 * @param outlines the outline of each shape to cut, by its name
 * @param result the layout
 * @param savings where cloth could be saved instead of buying more; empty if every piece has a
 *     place, or if the plan is one of many
 */
public record LayoutPart(
    List<StockItem> stock,
    Map<String, Outline> outlines,
    LayoutResult result,
    Optional<Savings> savings) {

  public LayoutPart {
    stock = List.copyOf(stock);
    outlines = Map.copyOf(outlines);
  }

  /**
   * Gives a piece where it lies.
   *
   * @param placement one of the result's placements
   * @return its cut outline in the stock's coordinates, in metres
   */
  public Outline placed(Placement placement) {
    return placement.place(Objects.requireNonNull(outlines.get(placement.pieceId())));
  }

  /** The same with where cloth could be saved. */
  LayoutPart with(Savings found) {
    return new LayoutPart(stock, outlines, result, Optional.of(found));
  }

  /**
   * Counts the pieces that found no place.
   *
   * @return 0 if every piece is placed
   */
  public int withoutPlace() {
    return result.unplaced().stream().mapToInt(Shortfall::count).sum();
  }

  /**
   * Gives the cloth of the pieces that found no place.
   *
   * @return the area inside their cut lines, in square metres; 0 if every piece is placed
   */
  public double areaWithoutPlace() {
    return result.unplaced().stream()
        .mapToDouble(
            lack -> lack.count() * Objects.requireNonNull(outlines.get(lack.pieceId())).area())
        .sum();
  }
}
