package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.Shortfall.Reason;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/** What found no place, why, and what would help. */
final class Shortfalls {

  private final LayoutRequest request;
  private final NestSetup setup;
  private final BooleanSupplier ended;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final List<Piece> wouldFit = new ArrayList<>();
  private final List<StockNeed> furtherStock;

  /**
   * Explains what has no place.
   *
   * @param placed how many copies of each piece have one
   * @param ended whether the search is to end; what is not known by then is left open
   */
  Shortfalls(LayoutRequest request, NestSetup setup, int[] placed, BooleanSupplier ended) {
    this.request = request;
    this.setup = setup;
    this.ended = ended;
    boolean sought = !ended.getAsBoolean();
    double areaLeft = 0;
    for (StockItem item : request.stock()) {
      areaLeft += item.count() * item.outline().area();
    }
    double areaMissing = 0;
    for (int k = 0; k < placed.length; k++) {
      double area = setup.pieces.get(k).outline().area();
      areaLeft -= placed[k] * area;
      areaMissing += (setup.pieces.get(k).count() - placed[k]) * area;
    }
    for (int k = 0; k < placed.length; k++) {
      int missing = setup.pieces.get(k).count() - placed[k];
      if (missing > 0) {
        shortfalls.add(explain(k, missing, sought, areaLeft, areaMissing));
      }
    }
    furtherStock = sought ? new FurtherStock(request, ended).of(wouldFit) : List.of();
  }

  List<Shortfall> shortfalls() {
    return shortfalls;
  }

  /** Further stock that takes all that is left. */
  List<StockNeed> furtherStock() {
    return furtherStock;
  }

  private Shortfall explain(
      int k, int missing, boolean sought, double areaLeft, double areaMissing) {
    Piece piece = setup.pieces.get(k);
    boolean boxFits = setup.regions.ofKind(k).length > 0;
    Reason reason = boxFits && !sought ? Reason.SEARCH_STOPPED : reason(piece, boxFits);
    if (reason == Reason.STOCK_USED_UP) {
      wouldFit.add(piece.withCount(missing));
    }
    boolean larger = reason == Reason.LARGER_THAN_STOCK || reason == Reason.MARGIN_TOO_LARGE;
    boolean splice = larger && areaLeft >= piece.outline().area();
    Bounds size = piece.outline().bounds();
    String message =
        "piece "
            + piece.id()
            + ", "
            + metres(size.width())
            + " by "
            + metres(size.height())
            + " as drawn, "
            + missing
            + " without a place: "
            + words(reason, areaLeft >= areaMissing)
            + (splice ? "; the stock left over has the area to splice it" : "");
    return new Shortfall(piece.id(), missing, reason, splice, message);
  }

  private Reason reason(Piece piece, boolean boxFits) {
    List<StockItem> stock = request.stock();
    double margin = request.edgeMargin();
    boolean mustHem = piece.hem().map(HemEdge::required).orElse(false);
    if (!boxFits && !mustHem && margin == 0) {
      // Known from the sizes alone, without a trial.
      return Reason.LARGER_THAN_STOCK;
    }
    Reason reason = Reason.LARGER_THAN_STOCK;
    if (boxFits && fitsEmpty(piece, stock, margin)) {
      reason = Reason.STOCK_USED_UP;
    } else if (mustHem && fitsEmpty(piece.withoutHem(), stock, margin)) {
      reason = Reason.NO_REINFORCED_EDGE;
    } else if (margin > 0 && fitsEmpty(piece, stock, 0)) {
      reason = Reason.MARGIN_TOO_LARGE;
    } else if (stock.stream().anyMatch(item -> !item.flaws().isEmpty())
        && fitsEmpty(piece, stock.stream().map(Shortfalls::flawless).toList(), margin)) {
      reason = Reason.FLAWS_IN_THE_WAY;
    }
    // A trial that was cut short tells nothing.
    return ended.getAsBoolean() ? Reason.SEARCH_STOPPED : reason;
  }

  private String words(Reason reason, boolean areaEnough) {
    return switch (reason) {
      case LARGER_THAN_STOCK -> "larger than every stock item";
      case MARGIN_TOO_LARGE ->
          "with the margin of "
              + metres(request.edgeMargin())
              + " to every edge and flaw it fits no stock item";
      case FLAWS_IN_THE_WAY -> "no stock item has room for it beside its flaws";
      case NO_REINFORCED_EDGE -> "no stock item has a reinforced edge on which its hem can lie";
      case STOCK_USED_UP ->
          areaEnough
              ? "no room was found for it; the stock left over has the area, so that more effort"
                  + " or less spacing and margin may do"
              : "the stock is full";
      case SEARCH_STOPPED -> "the search was stopped before it had looked for room to the end";
    };
  }

  private static String metres(double length) {
    return Numbers.significant(Math.max(length, 0), 4) + " m";
  }

  private static StockItem flawless(StockItem item) {
    return item instanceof Roll roll
        ? roll.withFlaws(new Outline[0])
        : ((Sheet) item).withFlaws(new Outline[0]);
  }

  /** Whether one copy finds a place when nothing else lies on the stock. */
  private boolean fitsEmpty(Piece piece, List<StockItem> stock, double margin) {
    return Filled.fitsEmpty(piece, stock, request.spacing(), margin, ended);
  }
}
