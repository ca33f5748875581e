package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutChoice;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.work.internal.Later;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Tries whether neighbouring faces may stay in one piece: all of them, then in two fans, three and
 * so on, and one fan beside single panels. The first way in which every piece has a place, and that
 * needs no more sheets and no more money than single panels do, is taken.
 */
final class FanChoice {

  private final Run run;
  private final PanelDrawer drawer;
  private final List<PatternPiece> trims;
  private final Stock stock;

  FanChoice(Run run, PanelDrawer drawer, List<PatternPiece> trims, Stock stock) {
    this.run = run;
    this.drawer = drawer;
    this.trims = trims;
    this.stock = stock;
  }

  /** Panels over several faces, or those that each go over one. */
  ClothChoice.Chosen instead(ClothChoice.Chosen apart) {
    LayoutRequest single = StockCloth.request(CutShape.of(apart.panels(), trims), stock);
    // Laid out only if some fans have a place: mostly none has.
    Later<LayoutResult> needs =
        Later.whenAsked(
            () ->
                apart
                    .layout()
                    .map(choice -> CuttingLayout.plan(choice, run.work(1)))
                    .orElseGet(() -> CuttingLayout.plan(single, run.work(1))));
    int seams = seams(apart.panels());
    for (List<Integer> spans : ways()) {
      if (spans.size() >= seams) {
        break;
      }
      Optional<ClothChoice.Chosen> fans = laid(spans, single.stock(), needs);
      if (fans.isPresent()) {
        return fans.get();
      }
    }
    return apart;
  }

  /** Seams of the ring and splices. */
  private static int seams(List<Panel> panels) {
    return panels.size() + panels.stream().mapToInt(panel -> panel.splices().size()).sum();
  }

  /** The ways to part the faces, those with the fewest panels first. */
  private Set<List<Integer>> ways() {
    int faces = drawer.faces();
    Set<List<Integer>> ways = new LinkedHashSet<>();
    for (int panels = 1; panels < faces; panels++) {
      List<Integer> even = new ArrayList<>();
      for (int i = 0; i < panels; i++) {
        even.add(faces / panels + (i < faces % panels ? 1 : 0));
      }
      ways.add(even);
      List<Integer> one = new ArrayList<>(List.of(faces - panels + 1));
      one.addAll(Collections.nCopies(panels - 1, 1));
      ways.add(one);
    }
    return ways;
  }

  private Optional<ClothChoice.Chosen> laid(
      List<Integer> spans, List<StockItem> items, Later<LayoutResult> needs) {
    Optional<List<Panel>> panels = drawn(spans);
    if (panels.isEmpty() || !panels.get().stream().allMatch(panel -> isHeld(panel, items))) {
      return Optional.empty();
    }
    LayoutRequest request = StockCloth.request(CutShape.of(panels.get(), trims), stock);
    Optional<LayoutChoice> choice =
        LayoutChoice.among(
            List.of(new LayoutChoice.Way(request, spans.size())).iterator(), run.work(1));
    return choice
        .filter(LayoutChoice::isComplete)
        .filter(c -> needsNoMore(CuttingLayout.plan(c, run.work(1)), needs.get()))
        .map(c -> new ClothChoice.Chosen(panels.get(), Optional.of(c)));
  }

  private static boolean needsNoMore(LayoutResult fans, LayoutResult single) {
    return fans.isComplete()
        && (!single.isComplete()
            || (fans.used().size() <= single.used().size() && fans.cost() <= single.cost()));
  }

  private Optional<List<Panel>> drawn(List<Integer> spans) {
    try {
      return drawer.together(spans);
    } catch (IllegalArgumentException refused) {
      // Allowances that would meet behind the fan: single panels have them apart.
      return Optional.empty();
    }
  }

  /** Whether a part fits the box of some sheet, straight or turned by a quarter. */
  private boolean isHeld(Panel panel, List<StockItem> items) {
    Bounds piece = panel.parts().get(0).cut().bounds();
    double least = Math.min(piece.width(), piece.height());
    double most = Math.max(piece.width(), piece.height());
    double margins = 2 * stock.edgeMargin();
    return items.stream()
        .map(item -> item.outline().bounds())
        .anyMatch(
            box ->
                least <= Math.min(box.width(), box.height()) - margins
                    && most <= Math.max(box.width(), box.height()) - margins);
  }
}
