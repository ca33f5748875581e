package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The sums of a finished layout, worked again from its request for those who want to see them. */
public final class LayoutSums {

  private LayoutSums() {}

  /**
   * Works the density of a layout; the last step is {@link LayoutResult#density()}. O(p) for p
   * placements.
   *
   * @param request what was asked for
   * @param result a layout of it with at least one placement
   * @param steps takes the worked steps
   * @return the density, 0 to 1
   * @throws IllegalArgumentException if a piece or a stock item of the result is not in the request
   */
  public static double density(LayoutRequest request, LayoutResult result, Steps steps) {
    double stock = 0;
    for (StockUse use : result.used()) {
      stock += areaOf(item(request, use), use.usedLength());
    }
    return LayoutMeasures.density(StripLayout.area(placed(request, result)), stock, steps);
  }

  /**
   * Works the length below which no layout of the placed pieces on the items used can be; {@link
   * LayoutResult#lengthBound()} is that, or the length used where rounding makes it less.
   *
   * @param request what was asked for
   * @param result a layout of it with at least one placement
   * @param steps takes the worked steps; the last is the bound
   * @return in metres
   * @throws IllegalArgumentException if a piece or a stock item of the result is not in the request
   */
  public static double lengthBound(LayoutRequest request, LayoutResult result, Steps steps) {
    List<StockItem> items = result.used().stream().map(use -> item(request, use)).toList();
    List<Piece> pieces = placed(request, result);
    return lengthBound(request, items, pieces, StripLayout.area(pieces), steps);
  }

  /**
   * Works the length of a row of the panels on the first item of a layout in closed form: the first
   * row of the shortest arrangement in which all stand on a base. Where panels that stand on a leg
   * are a hair shorter still, the layout has those. Costs what laying the rows did.
   *
   * @param request what was asked for, of one piece
   * @param result a layout of it
   * @param steps takes the worked steps; the last is the length of the row
   * @return in metres; empty if the layout was found by search, or the panels slide along cuts
   * @throws IllegalArgumentException if a piece or a stock item of the result is not in the request
   */
  public static Optional<Double> rowLength(
      LayoutRequest request, LayoutResult result, Steps steps) {
    if (result.method() != LayoutResult.Method.ROWS || result.used().isEmpty()) {
      return Optional.empty();
    }
    StockUse use = result.used().get(0);
    return PanelRows.firstRow(
            request.pieces().get(0),
            use.placements().size(),
            item(request, use).outline().bounds().height(),
            request.spacing(),
            request.edgeMargin())
        .map(row -> row.length(steps));
  }

  /** Area of an item used: of a roll the length used, of a sheet all. */
  static double areaOf(StockItem item, double usedLength) {
    return item instanceof Roll roll ? roll.width() * usedLength : item.outline().area();
  }

  /** On several items only their area counts, on one the pieces' sizes too. */
  static double lengthBound(
      LayoutRequest request, List<StockItem> used, List<Piece> placed, double area, Steps steps) {
    double widest = 0;
    for (StockItem item : used) {
      widest = Math.max(widest, item.outline().bounds().height());
    }
    if (used.size() > 1) {
      return LayoutMeasures.lowerBound(area, widest, 0, 0, 0, steps);
    }
    StockItem only = used.get(0);
    List<Piece> pieces =
        only.bothSidesGood() ? placed.stream().map(Piece::withMirroring).toList() : placed;
    double margin = StockBounds.margin(only, request.edgeMargin());
    return StripLayout.bound(new StripProblem(widest, pieces, request.spacing(), margin), steps);
  }

  private static List<Piece> placed(LayoutRequest request, LayoutResult result) {
    // In the order of a plan's own sums, so that both come to the same bits.
    Map<String, Integer> counts = new TreeMap<>();
    for (StockUse use : result.used()) {
      use.placements().forEach(p -> counts.merge(p.pieceId(), 1, Integer::sum));
    }
    List<Piece> pieces = new ArrayList<>();
    counts.forEach(
        (id, count) ->
            pieces.add(
                request.pieces().stream()
                    .filter(piece -> piece.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("piece: no " + id))
                    .withCount(count)));
    return pieces;
  }

  private static StockItem item(LayoutRequest request, StockUse use) {
    return request.stock().stream()
        .filter(item -> item.id().equals(use.stockId()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("stock: no " + use.stockId()));
  }
}
