package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** More cloth never makes a worse plan: no more pieces without a place, then no more sheets. */
class MoreStockProperties {

  @Property(tries = 25, seed = "20261128")
  void moreStockIsNeverWorse(@ForAll long seed) {
    growOneByOne(new Random(seed));
  }

  @Tag("soak")
  @Property(tries = 500, seed = "20261129")
  void moreStockIsNeverWorseForHundredsOfHeaps(@ForAll long seed) {
    growOneByOne(new Random(seed));
  }

  private static void growOneByOne(Random random) {
    List<Piece> pieces = pieces(random);
    List<StockItem> heap = heap(pieces, random);
    Collections.shuffle(heap, random);
    int[] before = {Integer.MAX_VALUE, 0};
    for (int n = 1 + random.nextInt(heap.size()); n <= heap.size(); n++) {
      LayoutRequest request = LayoutRequest.of(pieces, heap.subList(0, n)).withSpacing(0.005, 0.01);
      LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(500), 1));
      int missing = result.unplaced().stream().mapToInt(Shortfall::count).sum();
      assertThat(missing).isLessThanOrEqualTo(before[0]);
      if (missing == before[0]) {
        assertThat(result.used().size()).isLessThanOrEqualTo(before[1]);
      }
      before = new int[] {missing, result.used().size()};
    }
  }

  private static List<Piece> pieces(Random random) {
    List<Piece> pieces = new ArrayList<>();
    int kinds = 1 + random.nextInt(4);
    for (int k = 0; k < kinds; k++) {
      double w = 0.5 + 1.3 * random.nextDouble();
      double h = 0.5 + 2.2 * random.nextDouble();
      double top = w * (0.1 + 0.9 * random.nextDouble());
      Outline panel =
          new Outline(
              List.of(
                  Vector2D.of(0, 0),
                  Vector2D.of(w, 0),
                  Vector2D.of((w + top) / 2, h),
                  Vector2D.of((w - top) / 2, h)));
      pieces.add(
          Piece.of("panel-" + k, panel)
              .withCount(1 + random.nextInt(6))
              .withRotations(Rotations.of(0, Math.PI / 2, Math.PI, 1.5 * Math.PI)));
    }
    return pieces;
  }

  /** Odd sheets, some holed, of 0.8 to 2.2 times the area of the pieces. */
  private static List<StockItem> heap(List<Piece> pieces, Random random) {
    double want = StripLayout.area(pieces) * (0.8 + 1.4 * random.nextDouble());
    List<StockItem> heap = new ArrayList<>();
    for (double has = 0; has < want && heap.size() < 8; ) {
      double length = 1.5 + 3 * random.nextDouble();
      double width = 1 + 2 * random.nextDouble();
      int count = 1 + random.nextInt(2);
      has += length * width * count;
      Sheet sheet = Sheet.rectangle("sheet-" + heap.size(), length, width).withCount(count);
      Vector2D at =
          Vector2D.of(0.9 * length * random.nextDouble(), 0.9 * width * random.nextDouble());
      heap.add(
          random.nextInt(3) == 0
              ? sheet.withFlaws(Outline.rectangle(0.2, 0.2).placed(0, at))
              : sheet);
    }
    return heap;
  }
}
