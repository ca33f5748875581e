package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.StockCloth;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.LayoutSums;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Work;
import io.github.seamstead.shared.work.internal.Later;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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
    Supplier<Laid> work = () -> lay(run, cover.get(), stated.get());
    Later<Laid> layout = run.beside().start("layout of a plan", work);
    return () -> run.attempt("$.stock", () -> finished(run, cover.get(), layout));
  }

  /** What was asked for and what came of it. */
  private record Laid(LayoutRequest request, LayoutPart part) {}

  private static LayoutPart finished(Run run, CoverPart cover, Later<Laid> layout) {
    Laid laid = layout.get();
    LayoutPart part = laid.part();
    work(run, laid.request(), part.result());
    for (Shortfall shortfall : part.result().unplaced()) {
      run.unmet(Chapter.LAYOUT, ShortCloth.lack(shortfall, cover.cuts()));
    }
    return SavingsSearch.isWorthIt(run, part)
        ? part.with(new SavingsSearch(run, cover, part).savings())
        : part;
  }

  private static void work(Run run, LayoutRequest request, LayoutResult result) {
    // What is laid beside pieces that were cut already is not a layout of the whole request.
    if (result.used().isEmpty() || !run.options().worked() || !run.done().isNothing()) {
      return;
    }
    run.worked(
        "geometry.layout.density",
        "How much of the cloth used is in pieces",
        steps -> LayoutSums.density(request, result, steps));
    run.worked(
        "geometry.layout.bound",
        "The length below which no layout is",
        steps -> LayoutSums.lengthBound(request, result, steps));
    run.worked(
        "geometry.layout.rowlength",
        "The panels of the first sheet in a row, leg against leg",
        steps -> LayoutSums.rowLength(request, result, steps));
  }

  private static Laid lay(Run run, CoverPart cover, Stock stock) {
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
    return new Laid(request, new LayoutPart(request.stock(), outlines, result, Optional.empty()));
  }
}
