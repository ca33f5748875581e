package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.work.Work;
import java.util.Optional;

/**
 * Lays pieces on sheets and rolls: all pieces placed if that is possible, then the least stock,
 * then the builder's order of preference, then the largest remnant.
 *
 * <p>More stock never makes the start worse: no more pieces without a place, then no more items or
 * cost. Every choice of items is considered for it that can come to less, up to one or two hundred
 * fillings, which heaps of a dozen different items stay below as a rule. Each item is filled by
 * pushing the pieces along it, and in other directions too where that saves an item. What follows
 * does with less stock where it can, given some hundreds of work units for each piece, and shortens
 * what is used; in that it may be luckier with the one heap than with the other.
 *
 * <p>Congruent triangles or trapezoids are first laid in closed form ({@link PanelRows}, {@link
 * HemRows}); everything else, and whatever the search can still better, goes to a search over exact
 * no-fit regions. The layout in closed form is the search's start, so the result is never worse
 * than either. Every layout is held to its request by {@link LayoutCheck} before it is returned.
 *
 * <p>A work unit is one placement evaluated. The filling from which the search starts is finished
 * whatever the work units are, since a layout needs a start; {@link LayoutResult#workUsed} counts
 * it. A time limit, a cancellation and an interrupt of the calling thread end any part of the work,
 * filling included: the best layout so far is returned and {@link LayoutResult#stopped} tells why.
 * The result depends on the seed and the work units alone if there is no time limit, whichever
 * threads it runs on.
 *
 * <pre>{@code
 * Piece panel = Piece.of("panel", RegularPyramid.ofBaseSideAndHeight(12, 1.2, 2).faceOutline());
 * LayoutRequest request =
 *     LayoutRequest.of(List.of(panel.withCount(12)), List.of(Roll.of("roll", 3.2, 40)));
 * LayoutResult layout = CuttingLayout.plan(request, Work.of(Budget.ofWork(20_000), 1));
 * layout.isComplete(); // true
 * layout.usedLength(); // in metres of the roll
 * }</pre>
 */
public final class CuttingLayout {

  private CuttingLayout() {}

  /**
   * Plans the cutting.
   *
   * @param request pieces, stock and rules
   * @param work the terms of the search
   * @return a valid layout with what could not be placed, a bound and the gap to it
   * @throws IllegalArgumentException if a piece has no turn that follows its grain, or is too small
   *     for its size to be told beside the stock
   */
  public static LayoutResult plan(LayoutRequest request, Work work) {
    return plan(request, Optional.empty(), work);
  }

  /**
   * Plans the cutting of a way that was chosen, from what was laid for it.
   *
   * @param choice the choice
   * @param work the terms of the search
   * @return as for its request
   * @throws IllegalArgumentException as for its request
   */
  public static LayoutResult plan(LayoutChoice choice, Work work) {
    return plan(choice.request(), Optional.of(choice.tree()), work);
  }

  private static LayoutResult plan(LayoutRequest request, Optional<StockTree> tree, Work work) {
    double widest = 0;
    for (StockItem item : request.stock()) {
      widest = Math.max(widest, item.outline().bounds().height());
    }
    boolean noPlainSide = request.stock().stream().allMatch(StockItem::bothSidesGood);
    for (Piece piece : request.pieces()) {
      boolean mayMirror = piece.mayMirror() || noPlainSide;
      Bounds b = piece.outline().bounds();
      Args.require(
          hasTurn(piece, false) || (mayMirror && hasTurn(piece, true)),
          "piece " + piece.id() + ": none of its rotations brings its grain along the stock");
      Args.require(
          Math.max(b.width(), b.height()) > 1e-6 * widest,
          "piece " + piece.id(),
          "a size below a millionth of the stock's width " + Numbers.significant(widest, 4) + " m",
          "must be larger");
    }
    LayoutResult result = new Planner(request, tree, work).plan();
    LayoutCheck.require(request, result);
    return result;
  }

  private static boolean hasTurn(Piece piece, boolean mirrored) {
    return !PieceTurns.of(piece, mirrored).isEmpty();
  }
}
