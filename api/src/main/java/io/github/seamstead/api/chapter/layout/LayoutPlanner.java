package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.api.job.StockFlaw;
import io.github.seamstead.api.job.StockRoll;
import io.github.seamstead.api.job.StockSheet;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.Grain;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.Objective;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Lays the shapes on the stock. */
final class LayoutPlanner {

  /** Work units of the least effort; each step of effort doubles them. */
  private static final long LEAST_WORK = 4_000;

  private LayoutPlanner() {}

  /**
   * Starts the layout beside the rest of the plan: it takes the longest and nothing else waits for
   * it. What it has to say is noted when the result is fetched, by the thread that plans.
   */
  static Supplier<Optional<LayoutPart>> start(Run run, Optional<CoverPart> cover) {
    if (cover.isEmpty()) {
      return Optional::empty;
    }
    Optional<Stock> stated = run.document().stock();
    if (stated.isEmpty()) {
      run.skip(Chapter.LAYOUT, "the document has no stock");
      return Optional::empty;
    }
    CompletableFuture<LayoutPart> layout =
        CompletableFuture.supplyAsync(() -> lay(run, cover.get(), stated.get()));
    return () -> run.attempt("$.stock", () -> finished(run, layout));
  }

  private static LayoutPart finished(Run run, CompletableFuture<LayoutPart> layout) {
    try {
      LayoutPart part = layout.join();
      for (Shortfall shortfall : part.result().unplaced()) {
        run.unmet(Chapter.LAYOUT, shortfall.message());
      }
      return part;
    } catch (CompletionException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw refused;
      }
      throw e;
    }
  }

  private static LayoutPart lay(Run run, CoverPart cover, Stock stock) {
    List<StockItem> items = items(stock);
    Map<String, Outline> outlines = new LinkedHashMap<>();
    List<Piece> pieces = new ArrayList<>();
    for (CutShape shape : cover.cuts()) {
      outlines.put(shape.id(), shape.pattern().cut());
      pieces.add(piece(shape, stock.keepGrain()));
    }
    LayoutRequest request =
        LayoutRequest.of(pieces, items)
            .withSpacing(stock.spacing(), stock.edgeMargin())
            .withObjective(Objective.FEWEST_ITEMS);
    long units = LEAST_WORK << (run.options().effort() - 1);
    Work work =
        new Work(
            Budget.ofWork(units),
            run.options().seed(),
            (done, message) -> run.progress(0.3 + 0.2 * done, message),
            run.options().cancellation());
    return new LayoutPart(items, outlines, CuttingLayout.plan(request, work));
  }

  private static Piece piece(CutShape shape, boolean keepGrain) {
    PatternPiece pattern = shape.pattern();
    Piece piece = Piece.of(shape.id(), pattern.cut()).withCount(shape.pieces().size());
    piece =
        keepGrain
            ? piece.withRotations(Rotations.anyAngle()).withGrain(new Grain(pattern.grain(), false))
            : piece.withRotations(Rotations.of(0, Math.PI / 2, Math.PI, 3 * Math.PI / 2));
    return pattern.reinforcedCutEdge().isPresent()
        ? piece.withHem(pattern.reinforcedCutEdge().getAsInt(), true)
        : piece;
  }

  private static List<StockItem> items(Stock stock) {
    List<StockItem> items = new ArrayList<>();
    for (StockSheet sheet : stock.sheets()) {
      items.add(
          Sheet.rectangle(sheet.id(), sheet.length(), sheet.width())
              .withCount(sheet.count())
              .withPreference(sheet.preference())
              .withFlaws(flaws(sheet.flaws()))
              .withReinforcedEdges(edges(sheet.reinforced()))
              .withCost(sheet.cost().orElse(0.0)));
    }
    for (StockRoll roll : stock.rolls()) {
      items.add(
          Roll.of(roll.id(), roll.width(), roll.length())
              .withCount(roll.count())
              .withPreference(roll.preference())
              .withFlaws(flaws(roll.flaws()))
              .withReinforcedEdges(edges(roll.reinforced()))
              .withCostPerMetre(roll.costPerMetre().orElse(0.0)));
    }
    return items;
  }

  private static Outline[] flaws(List<StockFlaw> flaws) {
    return flaws.stream()
        .map(f -> Outline.rectangle(f.width(), f.height()).placed(0, Vector2D.of(f.x(), f.y())))
        .toArray(Outline[]::new);
  }

  /** The edges of a rectangle run counter-clockwise from the lower one. */
  private static Integer[] edges(List<SheetEdge> edges) {
    return edges.stream()
        .map(
            edge ->
                switch (edge) {
                  case BOTTOM -> 0;
                  case RIGHT -> 1;
                  case TOP -> 2;
                  case LEFT -> 3;
                })
        .toArray(Integer[]::new);
  }
}
