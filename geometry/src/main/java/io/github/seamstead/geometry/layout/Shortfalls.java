package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.plane.Bounds;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What found no place, why, and what would help. */
final class Shortfalls {

  private final LayoutRequest request;
  private final NestSetup setup;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final List<Piece> wouldFit = new ArrayList<>();

  Shortfalls(LayoutRequest request, NestSetup setup, int[] placed) {
    this.request = request;
    this.setup = setup;
    double areaLeft = 0;
    for (StockItem item : request.stock()) {
      areaLeft += item.count() * item.outline().area();
    }
    for (int k = 0; k < placed.length; k++) {
      areaLeft -= placed[k] * setup.pieces.get(k).outline().area();
    }
    for (int k = 0; k < placed.length; k++) {
      int missing = setup.pieces.get(k).count() - placed[k];
      if (missing > 0) {
        shortfalls.add(explain(k, missing, areaLeft));
      }
    }
  }

  List<Shortfall> shortfalls() {
    return shortfalls;
  }

  private Shortfall explain(int k, int missing, double areaLeft) {
    Piece piece = setup.pieces.get(k);
    Bounds size = piece.outline().bounds();
    String what =
        "piece "
            + piece.id()
            + ", "
            + Numbers.plain(size.width())
            + " m by "
            + Numbers.plain(size.height())
            + " m as drawn, "
            + missing
            + " without a place: ";
    if (setup.regions.ofKind(k).length > 0) {
      wouldFit.add(piece.withCount(missing));
      return new Shortfall(
          piece.id(), missing, Shortfall.Reason.STOCK_USED_UP, false, what + "the stock is full");
    }
    boolean hem = piece.hem().map(HemEdge::required).orElse(false);
    if (hem && fitsWithoutHem(piece)) {
      return new Shortfall(
          piece.id(),
          missing,
          Shortfall.Reason.NO_REINFORCED_EDGE,
          false,
          what + "no stock item has a reinforced edge on which its hem can lie");
    }
    boolean splice = areaLeft >= piece.outline().area();
    return new Shortfall(
        piece.id(),
        missing,
        Shortfall.Reason.LARGER_THAN_STOCK,
        splice,
        what
            + "larger than every stock item"
            + (splice ? "; the stock left over has the area to splice it" : ""));
  }

  private boolean fitsWithoutHem(Piece piece) {
    NestSetup free =
        new NestSetup(
            List.of(piece.withoutHem().withCount(1)),
            StockOrder.bins(request.stock(), 1),
            request.spacing(),
            request.edgeMargin());
    return free.regions.ofKind(0).length > 0;
  }

  /** Further copies of the first stock in the builder's order that takes all that is left. */
  Optional<StockNeed> furtherStock() {
    List<StockItem> order =
        request.stock().stream().sorted(Comparator.comparingInt(StockItem::preference)).toList();
    for (StockItem item : order) {
      Optional<StockNeed> need = wouldFit.isEmpty() ? Optional.empty() : need(item);
      if (need.isPresent()) {
        return need;
      }
    }
    return Optional.empty();
  }

  private Optional<StockNeed> need(StockItem item) {
    int copies = wouldFit.stream().mapToInt(Piece::count).sum();
    NestSetup more =
        new NestSetup(
            wouldFit,
            StockOrder.bins(List.of(many(item, copies)), copies),
            request.spacing(),
            request.edgeMargin());
    Nest nest = more.nest();
    int[] pieces =
        IntStream.range(0, copies)
            .boxed()
            .sorted(
                Comparator.comparingDouble(i -> -more.pieces.get(more.kind[i]).outline().area()))
            .mapToInt(Integer::intValue)
            .toArray();
    new Filler(more, nest)
        .fill(pieces, IntStream.range(0, more.bins.size()).toArray(), () -> false);
    Poses poses = new Poses(copies);
    nest.save(poses);
    if (IntStream.of(poses.region).anyMatch(r -> r == Poses.PARKED)) {
      return Optional.empty();
    }
    double[] reach = Score.reach(more, poses);
    int items = (int) java.util.Arrays.stream(reach).filter(r -> r > 0).count();
    double length = item instanceof Roll ? java.util.Arrays.stream(reach).sum() : 0;
    return Optional.of(new StockNeed(item.id(), items, length));
  }

  private static StockItem many(StockItem item, int copies) {
    return item instanceof Roll roll
        ? roll.withCount(copies)
        : ((io.github.seamstead.geometry.stock.Sheet) item).withCount(copies);
  }
}
