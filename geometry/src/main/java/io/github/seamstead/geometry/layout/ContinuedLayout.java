package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lays out the rest of the pieces when some are cut already: those stay where they are, and what
 * was planned for the others stays as far as its cloth is still there.
 *
 * <p>Two layouts are compared: one that keeps every place planned before and lays only what has
 * none, and one that lays all that is uncut anew on the cloth that is left. The first is taken
 * unless the second places more cloth or uses fewer sheets and rolls, so that the result is never
 * worse than planning the rest from nothing, and moves no piece without need.
 */
public final class ContinuedLayout {

  /** Below what a hand can mark, above what moving an outline rounds, in metres. */
  private static final double TOUCH = 1e-6;

  private final LayoutRequest request;
  private final RestOfStock rest;
  private final List<LaidPiece> cut;

  private ContinuedLayout(LayoutRequest request, List<LaidPiece> cut, List<LostCloth> lost) {
    this.request = request;
    this.cut = List.copyOf(cut);
    List<LostCloth> gone = new ArrayList<>(lost);
    cut.forEach(piece -> gone.add(hole(request, piece)));
    this.rest = new RestOfStock(request, gone);
  }

  /**
   * Plans the cutting of the rest. Costs at most six layouts of the rest with the work given each.
   *
   * @param request all pieces, cut ones too, all stock as it was at first, and the rules
   * @param cut the pieces that are cut, each copy at most once
   * @param planned where uncut pieces were to lie; those without a place are laid anew
   * @param lost cloth that is gone besides the pieces cut
   * @param work the terms of each search
   * @return the layout of all pieces, cut ones included
   * @throws IllegalArgumentException if a piece or stock item is not part of the request, a copy is
   *     out of range or named twice, or as {@link CuttingLayout#plan} does
   */
  public static LayoutResult plan(
      LayoutRequest request,
      List<LaidPiece> cut,
      List<LaidPiece> planned,
      List<LostCloth> lost,
      Work work) {
    check(request, cut, lost);
    ContinuedLayout layout = new ContinuedLayout(request, cut, lost);
    List<LaidPiece> open = layout.open();
    List<LaidPiece> kept = planned.stream().filter(p -> isOpen(open, p)).toList();
    kept = kept.stream().filter(layout::isFree).toList();
    boolean asPlanned = kept.size() == open.size();
    RestOfStock.Laid keeping = layout.lay(kept, work);
    if (asPlanned || kept.isEmpty()) {
      return layout.result(keeping);
    }
    RestOfStock.Laid anew = layout.lay(List.of(), work);
    return layout.result(layout.better(anew, keeping) ? anew : keeping);
  }

  private static void check(LayoutRequest request, List<LaidPiece> cut, List<LostCloth> lost) {
    Set<String> seen = new HashSet<>();
    for (LaidPiece piece : cut) {
      Placement p = piece.placement();
      int count = piece(request, p.pieceId()).map(Piece::count).orElse(0);
      Args.within("cut piece " + p.pieceId() + ": copy", p.copy(), 1, count);
      Args.require(
          seen.add(p.pieceId() + '/' + p.copy()),
          "cut piece: given " + p.pieceId() + " number " + p.copy() + " twice");
      requireStock(request, piece.stockId(), piece.copy());
    }
    lost.forEach(part -> requireStock(request, part.stockId(), part.copy()));
  }

  private static void requireStock(LayoutRequest request, String id, int copy) {
    int count =
        request.stock().stream()
            .filter(s -> s.id().equals(id))
            .mapToInt(s -> s.count())
            .findFirst()
            .orElse(0);
    Args.within("stock " + id + ": copy", copy, 1, count);
  }

  static Optional<Piece> piece(LayoutRequest request, String id) {
    return request.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
  }

  static Outline outline(LayoutRequest request, Placement p) {
    return p.place(piece(request, p.pieceId()).orElseThrow().outline());
  }

  private static LostCloth hole(LayoutRequest request, LaidPiece piece) {
    return new LostCloth(piece.stockId(), piece.copy(), outline(request, piece.placement()), true);
  }

  /** One entry for each copy that is not cut; where it lies is left open. */
  private List<LaidPiece> open() {
    List<LaidPiece> open = new ArrayList<>();
    for (Piece piece : request.pieces()) {
      for (int copy = 1; copy <= piece.count(); copy++) {
        LaidPiece named = RestOfStock.named(piece.id(), copy);
        if (cut.stream().noneMatch(c -> same(c, named))) {
          open.add(named);
        }
      }
    }
    return open;
  }

  private static boolean isOpen(List<LaidPiece> open, LaidPiece piece) {
    return open.stream().anyMatch(o -> same(o, piece));
  }

  private static boolean same(LaidPiece a, LaidPiece b) {
    return a.placement().copy() == b.placement().copy()
        && a.placement().pieceId().equals(b.placement().pieceId());
  }

  /** Whether the cloth of a place planned before is still there. */
  private boolean isFree(LaidPiece piece) {
    Outline outline = outline(request, piece.placement());
    for (LostCloth part : rest.lost(piece.stockId(), piece.copy())) {
      double clear = part.cutOut() ? request.spacing() : request.edgeMargin();
      if (Intrusion.depth(outline, part.outline()) > TOUCH
          || (clear > 0 && distance(outline, part.outline()) < clear - TOUCH)) {
        return false;
      }
    }
    return request.stock().stream()
        .anyMatch(s -> s.id().equals(piece.stockId()) && piece.copy() <= s.count());
  }

  private static double distance(Outline a, Outline b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < a.size(); i++) {
      least = Math.min(least, b.distanceToSegment(a.vertex(i), a.vertex(i + 1)));
    }
    return least;
  }

  /** Keeps some places and lays all others on the rest of the cloth. */
  private RestOfStock.Laid lay(List<LaidPiece> kept, Work work) {
    List<LaidPiece> open =
        open().stream().filter(o -> kept.stream().noneMatch(k -> same(k, o))).toList();
    List<LostCloth> taken = kept.stream().map(k -> hole(request, k)).toList();
    RestOfStock.Laid laid = rest.without(taken).lay(open, work);
    List<LaidPiece> all = new ArrayList<>(kept);
    all.addAll(laid.pieces());
    return laid.with(all);
  }

  private boolean better(RestOfStock.Laid a, RestOfStock.Laid b) {
    return Comparator.comparingDouble(RestOfStock.Laid::missing)
            .thenComparingInt(this::items)
            .compare(a, b)
        < 0;
  }

  private int items(RestOfStock.Laid laid) {
    Set<String> used = new HashSet<>();
    cut.forEach(c -> used.add(c.stockId() + '/' + c.copy()));
    laid.pieces().forEach(c -> used.add(c.stockId() + '/' + c.copy()));
    return used.size();
  }

  private LayoutResult result(RestOfStock.Laid laid) {
    List<LaidPiece> all = new ArrayList<>(cut);
    all.addAll(laid.pieces());
    return ContinuedResult.of(request, all, cut, laid);
  }
}
