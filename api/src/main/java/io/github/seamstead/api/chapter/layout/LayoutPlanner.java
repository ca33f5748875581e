package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.StockCloth;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.shared.work.Work;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

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
    Map<String, Outline> outlines = new LinkedHashMap<>();
    cover.cuts().forEach(shape -> outlines.put(shape.id(), shape.pattern().cut()));
    LayoutRequest request = StockCloth.request(cover.cuts(), stock);
    long units = LEAST_WORK << (run.options().effort() - 1);
    Work work = run.work(units).heardBy((done, message) -> run.progress(0.3 + 0.2 * done, message));
    LayoutResult result =
        run.done().isNothing()
            ? cover
                .choice()
                .map(choice -> CuttingLayout.plan(choice, work))
                .orElseGet(() -> CuttingLayout.plan(request, work))
            : new RestLayout(run.done(), cover).plan(request, work);
    return new LayoutPart(request.stock(), outlines, result);
  }
}
