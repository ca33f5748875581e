package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Sums up pieces in their places as the layout that a caller reads. */
final class ContinuedResult {

  private final LayoutRequest request;
  private final List<LaidPiece> laid;
  private final List<Bin> bins = new ArrayList<>();
  private final List<StockUse> used = new ArrayList<>();
  private double stockArea;
  private double widest;

  private ContinuedResult(LayoutRequest request, List<LaidPiece> laid) {
    this.request = request;
    this.laid = laid;
    for (StockItem item : request.stock()) {
      for (int copy = 1; copy <= item.count(); copy++) {
        bins.add(new Bin(item, copy, item.outline().bounds(), 0));
      }
    }
    bins.forEach(this::use);
    used.sort(Comparator.comparingInt(u -> preference(u.stockId())));
  }

  static LayoutResult of(
      LayoutRequest request, List<LaidPiece> laid, List<LaidPiece> cut, RestOfStock.Laid rest) {
    return new ContinuedResult(request, laid).result(cut, rest);
  }

  private int preference(String stockId) {
    return request.stock().stream()
        .filter(s -> s.id().equals(stockId))
        .mapToInt(StockItem::preference)
        .findFirst()
        .orElse(0);
  }

  private void use(Bin bin) {
    List<Placement> placements = new ArrayList<>();
    List<Outline> outlines = new ArrayList<>();
    double reach = 0;
    for (Piece piece : request.pieces()) {
      for (LaidPiece one : of(bin, piece)) {
        Outline outline = one.placement().place(piece.outline());
        placements.add(Hems.marked(one.placement(), piece, bin.item()));
        outlines.add(outline);
        reach = Math.max(reach, outline.bounds().maxX() - bin.bounds().minX());
      }
    }
    if (placements.isEmpty()) {
      return;
    }
    Bounds b = bin.bounds();
    reach = Math.max(1e-9, Math.min(b.width(), reach + request.edgeMargin()));
    stockArea +=
        bin.item() instanceof Roll roll ? roll.width() * reach : bin.item().outline().area();
    widest = Math.max(widest, b.height());
    used.add(
        new StockUse(
            bin.item().id(),
            bin.copy(),
            placements,
            reach,
            bin.item().costOf(reach),
            Remnants.of(bin, reach, outlines)));
  }

  /** The copies of a piece on one item, in their order. */
  private List<LaidPiece> of(Bin bin, Piece piece) {
    return laid.stream()
        .filter(
            l ->
                l.stockId().equals(bin.item().id())
                    && l.copy() == bin.copy()
                    && l.placement().pieceId().equals(piece.id()))
        .sorted(Comparator.comparingInt(l -> l.placement().copy()))
        .toList();
  }

  private LayoutResult result(List<LaidPiece> cut, RestOfStock.Laid rest) {
    double area =
        laid.stream()
            .mapToDouble(l -> ContinuedLayout.outline(request, l.placement()).area())
            .sum();
    double length = used.stream().mapToDouble(StockUse::usedLength).sum();
    double cost = used.stream().mapToDouble(StockUse::cost).sum();
    double value =
        switch (request.objective()) {
          case FEWEST_ITEMS -> used.size();
          case LEAST_COST -> cost;
          case LEAST_LENGTH -> length;
        };
    double bound = Math.min(value, Math.max(begun(cut), bound(area)));
    return new LayoutResult(
        used,
        rest.unplaced(),
        rest.further(),
        stockArea > 0 ? Math.min(1, area / stockArea) : 0,
        length,
        cost,
        value,
        bound,
        Math.min(length, widest > 0 ? area / widest : 0),
        value > 0 ? (value - bound) / value : 0,
        rest.method(),
        rest.work(),
        rest.stopped());
  }

  /** No layout begins fewer items than are begun. */
  private double begun(List<LaidPiece> cut) {
    if (request.objective() != Objective.FEWEST_ITEMS) {
      return 0;
    }
    Set<String> items = new HashSet<>();
    cut.forEach(c -> items.add(c.stockId() + '/' + c.copy()));
    return items.size();
  }

  private double bound(double area) {
    return StockBounds.of(request.objective(), bins, area);
  }
}
