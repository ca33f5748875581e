package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.Shortfall.Reason;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** What found no place, why, and what would help. */
final class Shortfalls {

  private final LayoutRequest request;
  private final NestSetup setup;
  private final BooleanSupplier ended;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final List<Piece> wouldFit = new ArrayList<>();
  private final Optional<StockNeed> furtherStock;

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
    furtherStock = sought ? lookForStock() : Optional.empty();
  }

  List<Shortfall> shortfalls() {
    return shortfalls;
  }

  /** Further stock that takes all that is left. */
  Optional<StockNeed> furtherStock() {
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
    NestSetup alone =
        new NestSetup(
            List.of(piece.withCount(1)), StockOrder.bins(stock, 1), request.spacing(), margin);
    return isFilled(alone);
  }

  /** Whether every copy of a request finds a place by filling. */
  private boolean isFilled(NestSetup some) {
    return IntStream.of(filled(some).region).noneMatch(r -> r == Poses.PARKED);
  }

  private Poses filled(NestSetup some) {
    Nest nest = some.nest();
    int[] pieces =
        IntStream.range(0, nest.pieces)
            .boxed()
            .sorted(
                Comparator.comparingDouble(i -> -some.pieces.get(some.kind[i]).outline().area()))
            .mapToInt(Integer::intValue)
            .toArray();
    new Filler(some, nest).fill(pieces, IntStream.range(0, some.bins.size()).toArray(), ended);
    Poses poses = new Poses(nest.pieces);
    nest.save(poses);
    return poses;
  }

  /**
   * What can be bought comes first, the cheapest that takes all that is left; where no stock has a
   * price, the first in the builder's order that takes it.
   */
  private Optional<StockNeed> lookForStock() {
    if (wouldFit.isEmpty()) {
      return Optional.empty();
    }
    Optional<StockNeed> bought =
        request.stock().stream()
            .filter(item -> item.costOf(1) > 0)
            .flatMap(item -> need(item).stream())
            .min(Comparator.comparingDouble(StockNeed::cost));
    if (bought.isPresent()) {
      return bought;
    }
    List<StockItem> order =
        request.stock().stream().sorted(Comparator.comparingInt(StockItem::preference)).toList();
    for (StockItem item : order) {
      Optional<StockNeed> need = need(item);
      if (need.isPresent()) {
        return need;
      }
    }
    return Optional.empty();
  }

  /**
   * How many further copies of one item take all that is left. Tried with few copies first and then
   * with twice as many, since filling never comes to the later ones where the first do.
   */
  private Optional<StockNeed> need(StockItem item) {
    int copies = wouldFit.stream().mapToInt(Piece::count).sum();
    double area = wouldFit.stream().mapToDouble(p -> p.count() * p.outline().area()).sum();
    double least = Math.min(copies, Math.ceil(2 * area / item.outline().area()) + 1);
    for (int items = (int) least; !ended.getAsBoolean(); items = Math.min(copies, 2 * items)) {
      NestSetup more =
          new NestSetup(
              wouldFit,
              StockOrder.bins(List.of(many(item, items)), items),
              request.spacing(),
              request.edgeMargin());
      if (IntStream.range(0, wouldFit.size()).anyMatch(k -> more.regions.ofKind(k).length == 0)) {
        return Optional.empty();
      }
      Poses poses = filled(more);
      if (IntStream.of(poses.region).noneMatch(r -> r == Poses.PARKED)) {
        double[] reach = Score.reach(more, poses);
        int used = (int) Arrays.stream(reach).filter(r -> r > 0).count();
        double length = item instanceof Roll ? Arrays.stream(reach).sum() : 0;
        double cost = Arrays.stream(reach).filter(r -> r > 0).map(item::costOf).sum();
        return Optional.of(new StockNeed(item.id(), used, length, cost));
      }
      if (items >= copies) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static StockItem many(StockItem item, int copies) {
    return item instanceof Roll roll ? roll.withCount(copies) : ((Sheet) item).withCount(copies);
  }
}
