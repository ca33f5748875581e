package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What to fetch so that pieces left over find a place, found by laying them on it. What can be
 * bought comes first; only what nothing with a price takes, such as a piece that needs the band of
 * a sheet, is laid on more of what has none.
 */
final class FurtherStock {

  /** Work units by which the length on a roll is shortened; so few pieces take little. */
  private static final long WORK = 2_000;

  private final LayoutRequest request;
  private final BooleanSupplier ended;

  FurtherStock(LayoutRequest request, BooleanSupplier ended) {
    this.request = request;
    this.ended = ended;
  }

  /** Pieces on one stock: what of it, and what it takes. */
  private record Take(StockNeed need, List<Piece> pieces) {

    double area() {
      return StripLayout.area(pieces);
    }
  }

  /** Pieces on several stocks: what of them, and what none of them takes. */
  private record Chain(List<StockNeed> needs, List<Piece> left) {

    double cost() {
      return needs.stream().mapToDouble(StockNeed::cost).sum();
    }

    Chain with(Take take) {
      List<StockNeed> more = new ArrayList<>(needs);
      more.add(take.need());
      return new Chain(
          more, left.stream().filter(piece -> !take.pieces().contains(piece)).toList());
    }
  }

  /** What takes all pieces, each of which some empty item holds; none if it is not known. */
  List<StockNeed> of(List<Piece> pieces) {
    List<StockItem> bought = request.stock().stream().filter(item -> item.costOf(1) > 0).toList();
    List<StockItem> found =
        request.stock().stream()
            .filter(item -> !bought.contains(item))
            .sorted(Comparator.comparingInt(StockItem::preference))
            .toList();
    Chain first = all(cheapest(new Chain(List.of(), pieces), bought), found);
    return first.left().isEmpty() ? first.needs() : List.of();
  }

  /** Begins with each stock in turn: a cheap one may take all but the few that need a dear one. */
  private Chain cheapest(Chain none, List<StockItem> stock) {
    return stock.stream()
        .flatMap(item -> take(none.left(), asBought(item)).stream())
        .map(take -> all(none.with(take), stock))
        .min(
            Comparator.comparingDouble((Chain chain) -> StripLayout.area(chain.left()))
                .thenComparingDouble(Chain::cost))
        .orElse(none);
  }

  private Chain all(Chain begun, List<StockItem> stock) {
    Chain chain = begun;
    Optional<Take> take = best(chain.left(), stock);
    while (take.isPresent()) {
      chain = chain.with(take.get());
      take = best(chain.left(), stock);
    }
    return chain;
  }

  /** What takes most of the pieces, then costs least, then stands first. */
  private Optional<Take> best(List<Piece> left, List<StockItem> stock) {
    if (left.isEmpty() || ended.getAsBoolean()) {
      return Optional.empty();
    }
    return stock.stream()
        .flatMap(item -> take(left, asBought(item)).stream())
        .max(
            Comparator.comparingDouble(Take::area)
                .thenComparing(take -> take.need().cost(), Comparator.reverseOrder())
                .thenComparing(take -> -stock.indexOf(item(take.need().stockId()))));
  }

  private StockItem item(String id) {
    return request.stock().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  /** The flaws of a roll are those of the one that is there. */
  private static StockItem asBought(StockItem item) {
    return item instanceof Roll roll ? roll.withFlaws(new Outline[0]) : item;
  }

  private Optional<Take> take(List<Piece> left, StockItem item) {
    List<Piece> held = left.stream().filter(piece -> isHeld(piece, item)).toList();
    return held.isEmpty() ? Optional.empty() : need(held, item).map(need -> new Take(need, held));
  }

  private boolean isHeld(Piece piece, StockItem item) {
    return Filled.fitsEmpty(piece, List.of(item), request.spacing(), request.edgeMargin(), ended);
  }

  /**
   * How many further copies of one item take all pieces. Tried with few copies first and then with
   * twice as many, since filling never comes to the later ones where the first do.
   */
  private Optional<StockNeed> need(List<Piece> pieces, StockItem item) {
    int copies = pieces.stream().mapToInt(Piece::count).sum();
    double area = StripLayout.area(pieces);
    double least = Math.min(copies, Math.ceil(2 * area / item.outline().area()) + 1);
    for (int items = (int) least; !ended.getAsBoolean(); items = Math.min(copies, 2 * items)) {
      NestSetup more =
          new NestSetup(
              pieces,
              StockOrder.bins(List.of(many(item, items)), items),
              request.spacing(),
              request.edgeMargin());
      if (IntStream.range(0, pieces.size()).anyMatch(k -> more.regions.ofKind(k).length == 0)) {
        return Optional.empty();
      }
      Poses poses = Filled.poses(more, ended);
      if (Filled.isComplete(poses)) {
        double[] reach = Arrays.stream(Score.reach(more, poses)).filter(r -> r > 0).toArray();
        return Optional.of(shortened(need(item, reach), pieces, item));
      }
      if (items >= copies) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static StockNeed need(StockItem item, double[] reach) {
    double length = item instanceof Roll ? Arrays.stream(reach).sum() : 0;
    double cost = Arrays.stream(reach).map(item::costOf).sum();
    return new StockNeed(item.id(), reach.length, length, cost);
  }

  /** Lays the pieces out on what was found to be enough, to do with less of it. */
  private StockNeed shortened(StockNeed filled, List<Piece> pieces, StockItem item) {
    if (ended.getAsBoolean()) {
      return filled;
    }
    LayoutRequest rest =
        new LayoutRequest(
            pieces,
            List.of(many(item, filled.items())),
            request.spacing(),
            request.edgeMargin(),
            item instanceof Roll ? Objective.LEAST_LENGTH : Objective.FEWEST_ITEMS);
    LayoutResult laid = CuttingLayout.plan(rest, Work.of(Budget.ofWork(WORK), 1).on(Runnable::run));
    if (!laid.isComplete()) {
      return filled;
    }
    StockNeed need = need(item, laid.used().stream().mapToDouble(StockUse::usedLength).toArray());
    boolean isLess =
        need.items() <= filled.items()
            && need.length() <= filled.length()
            && need.cost() <= filled.cost();
    return isLess ? need : filled;
  }

  private static StockItem many(StockItem item, int copies) {
    return item instanceof Roll roll ? roll.withCount(copies) : ((Sheet) item).withCount(copies);
  }
}
