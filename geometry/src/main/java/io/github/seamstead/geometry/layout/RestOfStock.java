package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The stock less what is gone from it, one item for each copy that was begun. */
final class RestOfStock {

  /**
   * Where pieces were laid.
   *
   * @param pieces each with its place
   * @param unplaced what found none
   * @param missing its area, in square metres
   * @param further what to fetch for it
   * @param method how the last layout was found
   * @param work units spent
   * @param stopped what ended a search early
   */
  record Laid(
      List<LaidPiece> pieces,
      List<Shortfall> unplaced,
      double missing,
      List<StockNeed> further,
      LayoutResult.Method method,
      long work,
      Optional<LayoutResult.Stop> stopped) {

    static final Laid NOTHING =
        new Laid(
            List.of(), List.of(), 0, List.of(), LayoutResult.Method.SEARCH, 0, Optional.empty());

    Laid with(List<LaidPiece> all) {
      return new Laid(all, unplaced, missing, further, method, work, stopped);
    }

    private Laid after(Laid first) {
      List<LaidPiece> both = new ArrayList<>(first.pieces);
      both.addAll(pieces);
      return new Laid(
          both,
          unplaced,
          missing,
          further,
          method,
          first.work + work,
          first.stopped.isPresent() ? first.stopped : stopped);
    }
  }

  /** A copy or copies of an item as one entry of a request. */
  private record Entry(StockItem item, String id, List<Integer> copies, boolean begun) {}

  private final LayoutRequest request;
  private final List<LostCloth> lost;

  RestOfStock(LayoutRequest request, List<LostCloth> lost) {
    this.request = request;
    this.lost = List.copyOf(lost);
  }

  RestOfStock without(List<LostCloth> more) {
    List<LostCloth> all = new ArrayList<>(lost);
    all.addAll(more);
    return new RestOfStock(request, all);
  }

  List<LostCloth> lost(String stockId, int copy) {
    return lost.stream().filter(l -> l.stockId().equals(stockId) && l.copy() == copy).toList();
  }

  /** A copy of a piece, its place open. */
  static LaidPiece named(String pieceId, int copy) {
    return new LaidPiece("open", 1, new Placement(pieceId, copy, false, 0, Vector2D.ZERO, false));
  }

  /**
   * Lays copies on what is begun first and then on what is whole, or on all at once if that places
   * more or uses fewer items.
   */
  Laid lay(List<LaidPiece> open, Work work) {
    if (open.isEmpty()) {
      return Laid.NOTHING;
    }
    List<Entry> all = entries();
    List<Entry> begun = all.stream().filter(Entry::begun).toList();
    if (begun.isEmpty() || begun.size() == all.size()) {
      return lay(open, all, work);
    }
    Laid first = lay(open, begun, work);
    if (first.unplaced.isEmpty()) {
      return first;
    }
    List<LaidPiece> left =
        open.stream().filter(o -> first.pieces.stream().noneMatch(p -> same(p, o))).toList();
    Laid then = lay(left, all.stream().filter(e -> !e.begun).toList(), work).after(first);
    Laid once = lay(open, all, work);
    return Comparator.comparingDouble(Laid::missing)
                .thenComparingLong(this::fresh)
                .compare(once, then)
            < 0
        ? once
        : then;
  }

  private static boolean same(LaidPiece a, LaidPiece b) {
    return a.placement().copy() == b.placement().copy()
        && a.placement().pieceId().equals(b.placement().pieceId());
  }

  /** How many whole items are begun. */
  private long fresh(Laid laid) {
    return laid.pieces.stream()
        .filter(p -> lost(p.stockId(), p.copy()).isEmpty())
        .map(p -> p.stockId() + '/' + p.copy())
        .distinct()
        .count();
  }

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    for (StockItem item : request.stock()) {
      List<Integer> whole = new ArrayList<>();
      for (int copy = 1; copy <= item.count(); copy++) {
        List<LostCloth> gone = lost(item.id(), copy);
        if (gone.isEmpty()) {
          whole.add(copy);
        } else {
          String id = item.id() + " number " + copy;
          entries.add(new Entry(holed(item, id, gone), id, List.of(copy), true));
        }
      }
      if (!whole.isEmpty()) {
        entries.add(new Entry(counted(item, whole.size()), item.id(), whole, false));
      }
    }
    return entries;
  }

  private static StockItem holed(StockItem item, String id, List<LostCloth> gone) {
    List<Outline> flaws = new ArrayList<>(item.flaws());
    gone.forEach(part -> flaws.add(part.outline()));
    if (item instanceof Sheet s) {
      return new Sheet(
          id,
          s.outline(),
          1,
          flaws,
          s.reinforcedEdges(),
          s.preference(),
          s.cost(),
          s.bothSidesGood());
    }
    Roll r = (Roll) item;
    return new Roll(
        id,
        r.width(),
        r.length(),
        1,
        flaws,
        r.reinforcedEdges(),
        r.preference(),
        r.costPerMetre(),
        r.bothSidesGood());
  }

  private static StockItem counted(StockItem item, int count) {
    return item instanceof Sheet sheet ? sheet.withCount(count) : ((Roll) item).withCount(count);
  }

  private Laid lay(List<LaidPiece> open, List<Entry> on, Work work) {
    Map<String, List<Integer>> copies = new LinkedHashMap<>();
    open.forEach(
        o ->
            copies
                .computeIfAbsent(o.placement().pieceId(), id -> new ArrayList<>())
                .add(o.placement().copy()));
    List<Piece> pieces = new ArrayList<>();
    copies.forEach(
        (id, numbers) ->
            pieces.add(ContinuedLayout.piece(request, id).orElseThrow().withCount(numbers.size())));
    // What is cut out counts as a flaw, which keeps the margin: it must not be below the spacing.
    LayoutRequest part =
        new LayoutRequest(
            pieces,
            on.stream().map(Entry::item).toList(),
            request.spacing(),
            on.stream().anyMatch(Entry::begun)
                ? Math.max(request.edgeMargin(), request.spacing())
                : request.edgeMargin(),
            request.objective());
    LayoutResult result = CuttingLayout.plan(part, work);
    List<LaidPiece> laid = new ArrayList<>();
    for (StockUse use : result.used()) {
      Entry entry = on.stream().filter(e -> e.id.equals(use.stockId())).findFirst().orElseThrow();
      int copy = entry.copies.get(use.copy() - 1);
      String stock = entry.begun ? original(entry) : entry.id;
      for (Placement p : use.placements()) {
        int number = Optional.ofNullable(copies.get(p.pieceId())).orElseThrow().get(p.copy() - 1);
        laid.add(new LaidPiece(stock, copy, numbered(p, number)));
      }
    }
    double missing =
        result.unplaced().stream().mapToDouble(s -> s.count() * areaOf(s.pieceId())).sum();
    return new Laid(
        laid,
        result.unplaced(),
        missing,
        result.furtherStock().stream().map(need -> needed(need, on)).toList(),
        result.method(),
        result.workUsed(),
        result.stopped());
  }

  private double areaOf(String pieceId) {
    return ContinuedLayout.piece(request, pieceId).orElseThrow().outline().area();
  }

  private static String original(Entry entry) {
    return entry.id.substring(0, entry.id.length() - (" number " + entry.copies.get(0)).length());
  }

  private static StockNeed needed(StockNeed need, List<Entry> on) {
    return on.stream()
        .filter(e -> e.begun && e.id.equals(need.stockId()))
        .findFirst()
        .map(e -> new StockNeed(original(e), need.items(), need.length(), need.cost()))
        .orElse(need);
  }

  private static Placement numbered(Placement p, int copy) {
    return new Placement(
        p.pieceId(), copy, p.mirrored(), p.rotation(), p.shift(), p.onReinforcedEdge());
  }
}
