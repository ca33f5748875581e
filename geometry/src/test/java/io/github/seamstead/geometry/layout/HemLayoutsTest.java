package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hems on bands along, across and aslant of the stock, and pieces turned over on the grain. */
class HemLayoutsTest {

  private static final Outline PANEL = CuttingLayoutTest.outline(0, 0, 1, 0, 0.5, 1.1);

  private static LayoutResult plan(LayoutRequest request, long units) {
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(units), 1));
    LayoutVerifier.verify(request, result);
    return result;
  }

  private static LayoutRequest request(Piece piece, StockItem item, double margin) {
    return LayoutRequest.of(List.of(piece), List.of(item)).withSpacing(0, margin);
  }

  /** With no neighbour on its band a piece was once pressed out of the stock. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void oneHemAloneStaysOnItsStock(int edge) {
    Piece piece = Piece.of("tri", PANEL).withHem(0, true).withRotations(Rotations.anyAngle());
    Roll roll = Roll.of("R", 1.4, 6).withReinforcedEdges(edge);
    LayoutResult result = plan(request(piece, roll, 0.01), 8_000);
    assertThat(result.isComplete()).isTrue();
    Outline laid = result.used().get(0).placements().get(0).place(PANEL);
    double start = edge == 3 ? 0 : 0.01;
    assertThat(laid.bounds().minX()).isGreaterThan(start - 1e-9);
    if (edge % 2 == 0) {
      assertThat(laid.bounds().minX()).isCloseTo(start, within(1e-6));
    }
  }

  @Test
  void aPanelOnEachSheetStaysOnIt() {
    Outline panel = CuttingLayoutTest.outline(0, 0, 1.72, 0, 0.86, 2.2);
    Piece piece = Piece.of("panel", panel).withCount(6).withHem(0, true);
    Sheet sheet = Sheet.rectangle("s", 2.1, 2.9).withCount(6).withReinforcedEdges(0);
    LayoutResult result = plan(request(piece, sheet, 0.01).withSpacing(0.005, 0.01), 8_000);
    assertThat(result.isComplete()).isTrue();
    assertThat(result.used()).hasSize(6);
    for (StockUse use : result.used()) {
      assertThat(use.usedLength()).isGreaterThanOrEqualTo(1.74 - 1e-9);
      assertThat(use.placements().get(0).onReinforcedEdge()).isTrue();
    }
  }

  /** Strewn off its line a piece once stayed there where it met nothing. */
  @Test
  void hemsLieOnASlantingBand() {
    Sheet sheet =
        Sheet.of("s", CuttingLayoutTest.outline(0, 0, 3, 0, 2.1167, 2, 0.6183, 2))
            .withReinforcedEdges(1);
    Piece piece =
        Piece.of("p", CuttingLayoutTest.outline(0, 0, 0.9, 0, 0.2174, 0.4075))
            .withCount(3)
            .withHem(0, true)
            .withMirroring()
            .withRotations(Rotations.anyAngle());
    for (long seed = 0; seed < 30; seed++) {
      LayoutRequest request = request(piece, sheet, 0);
      Work work = Work.of(Budget.ofWork(3_000), seed);
      LayoutVerifier.verify(request, CuttingLayout.plan(request, work));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-6, 0.02})
  void oddSheetsTakeHemsWhateverTheMargin(double margin) {
    Outline triangle = CuttingLayoutTest.outline(0, 0, 5, 0, 2, 4);
    Outline ell = CuttingLayoutTest.outline(0, 0, 5, 0, 5, 1.5, 2, 1.5, 2, 3, 0, 3);
    Outline aslant = CuttingLayoutTest.outline(0, 0, 5, 0.02, 4.8, 3, 0.2, 3.1);
    for (Outline outline : List.of(triangle, ell, aslant, Outline.rectangle(5, 3))) {
      Piece piece =
          Piece.of("p", PANEL).withCount(3).withHem(0, true).withRotations(Rotations.anyAngle());
      Sheet sheet = Sheet.of("s", outline).withReinforcedEdges(0);
      assertThat(plan(request(piece, sheet, margin), 20_000).isComplete())
          .as("on %s", outline)
          .isTrue();
    }
  }

  /** The far edge keeps its margin, be it reinforced or not: the hem does not lie on it. */
  @Test
  void theFarEdgeKeepsItsMargin() {
    Piece piece = Piece.of("p", PANEL).withHem(0, true);
    for (Roll roll :
        List.of(
            Roll.of("R", 1.105, 6).withReinforcedEdges(0),
            Roll.of("R", 1.105, 6).withReinforcedEdges(0, 2))) {
      assertThat(plan(request(piece, roll, 0.01), 2_000).used()).isEmpty();
      assertThat(plan(request(piece, roll, 0.005), 2_000).isComplete()).isTrue();
    }
  }

  @Test
  void aPieceTurnedOverFollowsTheGrainToo() {
    Grain grain = new Grain(Math.toRadians(30), false);
    assertThat(grain.follows(Math.toRadians(-30), false)).isTrue();
    assertThat(grain.follows(Math.toRadians(30), true)).isTrue();
    assertThat(grain.follows(Math.toRadians(-30), true)).isFalse();
    // A rhomboid on a narrow band of cloth fits its own turn only, or that of its mirror image.
    Outline drawn = CuttingLayoutTest.outline(0, 0, 1, 0, 1.3, 0.4, 0.3, 0.4);
    Piece piece =
        Piece.of("p", drawn.placed(Math.toRadians(30), Vector2D.ZERO))
            .withCount(4)
            .withMirroring()
            .withGrain(grain)
            .withRotations(Rotations.anyAngle());
    Piece over = Piece.of("q", piece.outline().mirrored()).withCount(4).withMirroring();
    over = over.withGrain(new Grain(Math.toRadians(150), true)).withRotations(Rotations.anyAngle());
    LayoutRequest request = LayoutRequest.of(List.of(piece, over), List.of(Roll.of("R", 0.85, 12)));
    assertThat(plan(request, 40_000).isComplete()).isTrue();
  }

  @Test
  void aGrainThatOnlyTheOtherSideFollowsIsNoFault() {
    Piece piece =
        Piece.of("p", PANEL)
            .withMirroring()
            .withRotations(Rotations.of(Math.PI / 6))
            .withGrain(new Grain(Math.PI / 6, false));
    LayoutResult result = plan(request(piece, Roll.of("R", 2, 6), 0), 1_000);
    assertThat(result.used().get(0).placements().get(0).mirrored()).isTrue();
  }
}
