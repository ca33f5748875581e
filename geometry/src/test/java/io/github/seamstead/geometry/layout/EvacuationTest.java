package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.layout.internal.FastRandom;
import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EvacuationTest {

  private static Piece box(String id, double height, int count) {
    return Piece.of(id, Outline.rectangle(0.98, height)).withCount(count);
  }

  /** Largest first leaves 0.2 over: 0.5 and 0.4, three of 0.3, 0.2. Two sheets hold all. */
  private static LayoutRequest stack() {
    return LayoutRequest.of(
        List.of(box("a", 0.5, 1), box("b", 0.4, 1), box("c", 0.3, 3), box("d", 0.2, 1)),
        List.of(Sheet.rectangle("sheet", 1, 1.08).withCount(4)));
  }

  private static NestSetup setup() {
    LayoutRequest request = stack();
    return new NestSetup(
        Planner.byId(request.pieces()),
        StockOrder.bins(request.stock(), 6),
        0,
        0,
        Planner.unit(request),
        new NestSetup.Drawn());
  }

  @Test
  void piecesOfASheetLeftOutFindRoomOnTheOthers() {
    NestSetup setup = setup();
    Nest nest = setup.nest();
    new Filler(setup, nest).fill(StockTree.bySize(setup), new int[] {0, 1, 2, 3}, () -> false);
    Poses start = new Poses(nest.pieces);
    nest.save(start);
    assertThat(bins(setup, start)).isEqualTo(3);
    Evacuation evacuation = new Evacuation(setup, new FastRandom(5), () -> false);
    Optional<boolean[]> fewer = evacuation.fewer(start, 0);
    assertThat(fewer).isPresent();
    Poses laid = evacuation.onto(fewer.get(), start, 400_000).orElseThrow();
    nest.load(laid);
    assertThat(nest.isApart()).isTrue();
    assertThat(bins(setup, laid)).isEqualTo(2);
    assertThat(evacuation.work()).isPositive();
  }

  private static long bins(NestSetup setup, Poses poses) {
    return Arrays.stream(poses.region).map(r -> setup.regions.bin[r]).distinct().count();
  }

  @Test
  void whatCouldNotFitByAreaIsNotTried() {
    NestSetup setup = setup();
    Nest nest = setup.nest();
    new Filler(setup, nest).fill(StockTree.bySize(setup), new int[] {0, 1, 2, 3}, () -> false);
    Poses start = new Poses(nest.pieces);
    nest.save(start);
    Evacuation evacuation = new Evacuation(setup, new FastRandom(5), () -> false);
    Poses two = evacuation.onto(evacuation.fewer(start, 0).orElseThrow(), start, 400_000).get();
    assertThat(evacuation.fewer(two, 0)).isEmpty();
  }

  @Test
  void aPlanDoesWithAsFewSheetsAsCanBe() {
    LayoutResult result = CuttingLayout.plan(stack(), Work.of(Budget.ofWork(400_000), 1));
    LayoutVerifier.verify(stack(), result);
    assertThat(result.isComplete()).isTrue();
    assertThat(result.used()).hasSize(2);
    assertThat(result.gap()).isZero();
  }
}
