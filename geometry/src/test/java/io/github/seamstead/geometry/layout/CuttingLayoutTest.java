package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

public class CuttingLayoutTest {

  private static final Outline TRIANGLE = outline(0, 0, 2, 0, 1, 3);
  private static final Outline ELL = outline(0, 0, 1, 0, 1, 0.4, 0.4, 0.4, 0.4, 1, 0, 1);
  private static final Outline FIVE = outline(0, 0, 0.8, 0.1, 1, 0.6, 0.5, 1, -0.1, 0.6);

  public static Outline outline(double... xy) {
    Vector2D[] v = new Vector2D[xy.length / 2];
    for (int i = 0; i < v.length; i++) {
      v[i] = Vector2D.of(xy[2 * i], xy[2 * i + 1]);
    }
    return Outline.of(v);
  }

  private static LayoutResult plan(LayoutRequest request, long work) {
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(work), 1));
    LayoutVerifier.verify(request, result);
    return result;
  }

  @Test
  void panelsOnARollLieHeadToTail() {
    Piece panel = Piece.of("panel", TRIANGLE).withCount(8);
    LayoutResult r = plan(LayoutRequest.of(List.of(panel), List.of(Roll.of("canvas", 3, 50))), 0);
    assertThat(r.isComplete()).isTrue();
    assertThat(r.method()).isEqualTo(LayoutResult.Method.ROWS);
    assertThat(r.usedLength()).isCloseTo(4 * 2 + 1, within(1e-9));
  }

  @Test
  void theSearchNeverWorsensTheRows() {
    Piece panel = Piece.of("panel", TRIANGLE).withCount(7).withRotations(Rotations.anyAngle());
    LayoutRequest request = LayoutRequest.of(List.of(panel), List.of(Roll.of("canvas", 4, 50)));
    assertThat(plan(request, 20_000).usedLength())
        .isLessThanOrEqualTo(plan(request, 0).usedLength() + 1e-9);
  }

  @Test
  void aBattenThatMayBeTurnedLiesFromCornerToCorner() {
    Piece batten = Piece.of("batten", outline(0, 0, 1.35, 0, 1.35, 0.02, 0, 0.02));
    List<StockItem> sheet = List.of(Sheet.rectangle("offcut", 1, 1));
    LayoutRequest held = LayoutRequest.of(List.of(batten), sheet);
    assertThat(plan(held, 2_000).isComplete()).isFalse();
    LayoutRequest free =
        LayoutRequest.of(List.of(batten.withRotations(Rotations.anyAngle())), sheet);
    LayoutResult r = plan(free, 2_000);
    assertThat(r.isComplete()).isTrue();
    // 1.35 cos a + 0.02 sin a is at most 1 from 42.9° on.
    double turn = Math.toDegrees(r.used().get(0).placements().get(0).rotation()) % 90;
    assertThat(turn).isBetween(42.9, 47.1);
  }

  @Test
  void piecesThatMayBeTurnedLeanAgainstOneAnother() {
    // Two right triangles make a rectangle at an angle that no side of the strip suggests.
    Piece wedge =
        Piece.of("wedge", outline(0, 0, 0.9, 0.1, 0.3, 0.55))
            .withCount(6)
            .withRotations(Rotations.anyAngle());
    StripProblem free = StripProblem.of(1, List.of(wedge));
    StripResult turned = StripLayout.solve(free, Work.of(Budget.ofWork(300_000), 1));
    LayoutVerifier.verify(free, turned);
    StripProblem held = StripProblem.of(1, List.of(wedge.withRotations(Rotations.halfTurn())));
    StripResult straight = StripLayout.solve(held, Work.of(Budget.ofWork(300_000), 1));
    assertThat(turned.length()).isLessThan(straight.length());
  }

  @Test
  void mixedPiecesKeepSpacingMarginAndFlaws() {
    Sheet sheet =
        Sheet.of("tarp", outline(0, 0, 4, 0, 5, 2, 4, 3.5, 0, 3))
            .withCount(2)
            .withFlaws(outline(1.5, 1.2, 2, 1.2, 2, 1.7, 1.5, 1.7));
    LayoutRequest request =
        LayoutRequest.of(
                List.of(
                    Piece.of("ell", ELL).withCount(5),
                    Piece.of("five", FIVE).withCount(4),
                    Piece.of("flap", Outline.rectangle(1.2, 0.3)).withCount(3)),
                List.of(sheet))
            .withSpacing(0.02, 0.05);
    LayoutResult r = plan(request, 30_000);
    assertThat(r.isComplete()).isTrue();
  }

  @Test
  void hemsLieOnReinforcedEdges() {
    Piece panel = Piece.of("panel", TRIANGLE).withCount(5).withHem(0, true);
    Roll one = Roll.of("canvas", 4, 50).withReinforcedEdges(0);
    LayoutResult low = plan(LayoutRequest.of(List.of(panel), List.of(one)), 5_000);
    assertThat(low.isComplete()).isTrue();
    assertThat(low.usedLength()).isCloseTo(10, within(1e-9));
    LayoutResult both =
        plan(LayoutRequest.of(List.of(panel), List.of(one.withReinforcedEdges(0, 2))), 5_000);
    assertThat(both.usedLength()).isLessThan(low.usedLength());
  }

  @Test
  void saysWhatIsLargerThanTheStockAndWhetherSplicingHelps() {
    Piece big = Piece.of("big", Outline.rectangle(5, 3));
    Piece small = Piece.of("small", Outline.rectangle(1, 1)).withCount(30);
    StockItem sheet = Sheet.rectangle("sheet", 4, 3).withCount(2);
    LayoutResult r = plan(LayoutRequest.of(List.of(big), List.of(sheet)), 1_000);
    assertThat(r.unplaced().get(0).reason()).isEqualTo(Shortfall.Reason.LARGER_THAN_STOCK);
    assertThat(r.unplaced().get(0).spliceHelps()).isTrue();
    LayoutResult full = plan(LayoutRequest.of(List.of(small), List.of(sheet)), 1_000);
    assertThat(full.unplaced().get(0).reason()).isEqualTo(Shortfall.Reason.STOCK_USED_UP);
    assertThat(full.unplaced().get(0).count()).isEqualTo(6);
    assertThat(full.furtherStock()).containsExactly(new StockNeed("sheet", 1, 0, 0));
    Piece hem = small.withHem(0, true);
    LayoutResult none = plan(LayoutRequest.of(List.of(hem), List.of(sheet)), 1_000);
    assertThat(none.unplaced().get(0).reason()).isEqualTo(Shortfall.Reason.NO_REINFORCED_EDGE);
  }

  @Test
  void namesTheMarginAndTheFlawThatLeaveNoRoom() {
    Piece piece = Piece.of("p", Outline.rectangle(1, 0.987654321));
    Sheet sheet = Sheet.rectangle("s", 1.1, 1.1);
    LayoutRequest request = LayoutRequest.of(List.of(piece), List.of(sheet)).withSpacing(0, 0.1);
    Shortfall margin = plan(request, 1_000).unplaced().get(0);
    assertThat(margin.reason()).isEqualTo(Shortfall.Reason.MARGIN_TOO_LARGE);
    assertThat(margin.message()).contains("1 m by 0.9877 m").contains("margin of 0.1 m");
    Sheet torn = sheet.withFlaws(outline(0, 0, 1.1, 0, 1.1, 1.1, 0, 1));
    Shortfall flaw = plan(LayoutRequest.of(List.of(piece), List.of(torn)), 1_000).unplaced().get(0);
    assertThat(flaw.reason()).isEqualTo(Shortfall.Reason.FLAWS_IN_THE_WAY);
    assertThat(flaw.message()).contains("flaws").doesNotContain("full");
  }

  @Test
  void tellsFullStockFromStockThatMoreEffortMightUse() {
    Sheet sheet = Sheet.rectangle("s", 2, 1);
    Piece two = Piece.of("p", Outline.rectangle(1, 1)).withCount(3);
    assertThat(
            plan(LayoutRequest.of(List.of(two), List.of(sheet)), 500).unplaced().get(0).message())
        .endsWith("the stock is full");
    Piece disc = Piece.of("p", Outline.rectangle(0.7, 0.7)).withCount(3);
    assertThat(
            plan(LayoutRequest.of(List.of(disc), List.of(sheet)), 500).unplaced().get(0).message())
        .contains("more effort or less spacing and margin");
  }

  @Test
  void usesTheFewestSheetsAndTheBuildersOrder() {
    Piece square = Piece.of("square", Outline.rectangle(1, 1)).withCount(4);
    Sheet small = Sheet.rectangle("small", 2, 1).withCount(5).withPreference(0);
    Sheet large = Sheet.rectangle("large", 2, 2).withPreference(1);
    LayoutResult r = plan(LayoutRequest.of(List.of(square), List.of(small, large)), 1_000);
    assertThat(r.used()).hasSize(1);
    assertThat(r.used().get(0).stockId()).isEqualTo("large");
    assertThat(r.gap()).isZero();
  }

  @Test
  void sameSeedAndWorkGiveTheSameLayout() {
    LayoutRequest request =
        LayoutRequest.of(
            List.of(Piece.of("ell", ELL).withCount(6), Piece.of("five", FIVE).withCount(5)),
            List.of(Roll.of("canvas", 2.1, 30)));
    Work work = Work.of(Budget.ofWork(40_000), 5);
    assertThat(CuttingLayout.plan(request, work)).isEqualTo(CuttingLayout.plan(request, work));
  }

  @Test
  void cancelledAtOnceStillGivesAValidLayout() {
    LayoutRequest request =
        LayoutRequest.of(
            List.of(Piece.of("ell", ELL).withCount(6)), List.of(Roll.of("canvas", 2.1, 30)));
    Cancellation off = new Cancellation();
    off.cancel();
    Work work = new Work(Budget.ofWork(1_000_000), 1, Progress.NONE, off);
    LayoutVerifier.verify(request, CuttingLayout.plan(request, work));
  }

  @Test
  void refusesWhatHasNoAnswer() {
    Roll roll = Roll.of("canvas", 2.1, 30);
    Piece grain = Piece.of("g", ELL).withRotations(Rotations.none()).withGrain(new Grain(1, true));
    assertThatThrownBy(() -> plan(LayoutRequest.of(List.of(grain), List.of(roll)), 1))
        .hasMessageContaining("piece g: none of its rotations brings its grain along the stock");
    Piece tiny = Piece.of("t", Outline.rectangle(1e-7, 1e-7));
    assertThatThrownBy(() -> plan(LayoutRequest.of(List.of(tiny), List.of(roll)), 1))
        .hasMessageContaining("millionth");
  }

  @Test
  void spacingLargerThanTheStockLeavesRoomForOne() {
    Piece ell = Piece.of("ell", ELL).withCount(3);
    LayoutRequest request =
        LayoutRequest.of(List.of(ell), List.of(Sheet.rectangle("s", 2, 2))).withSpacing(10, 0);
    assertThat(plan(request, 5_000).unplaced().get(0).count()).isEqualTo(2);
  }

  @Test
  void whatCanBeBoughtIsNamedBeforeReclaimedSheets() {
    LayoutRequest request =
        LayoutRequest.of(
            List.of(Piece.of("flag", Outline.rectangle(1, 1)).withCount(5)),
            List.of(
                Sheet.rectangle("reclaimed", 2, 1),
                Roll.of("dear", 1, 1).withPreference(2).withCostPerMetre(9),
                Roll.of("cheap", 1, 1).withPreference(3).withCostPerMetre(4)));
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(1_000), 1));
    assertThat(result.furtherStock()).hasSize(1);
    StockNeed need = result.furtherStock().get(0);
    assertThat(need.stockId()).isEqualTo("cheap");
    assertThat(need.length()).isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(need.cost()).isCloseTo(4, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void onlyWhatNothingWithAPriceTakesIsLaidOnMoreReclaimedSheets() {
    Piece hemmed = Piece.of("hemmed", Outline.rectangle(1, 1)).withCount(4).withHem(0, true);
    Piece plain = Piece.of("plain", Outline.rectangle(1, 1)).withCount(5);
    Piece wide = Piece.of("wide", Outline.rectangle(1.4, 1.2)).withCount(2);
    LayoutRequest request =
        LayoutRequest.of(
            List.of(hemmed, plain, wide),
            List.of(
                Sheet.rectangle("banded", 2, 1).withReinforcedEdges(0),
                Roll.of("narrow", 1, 1).withCostPerMetre(2),
                Roll.of("broad", 1.5, 1.4).withCostPerMetre(9)));
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(1_000), 1));
    assertThat(result.unplaced().stream().mapToInt(Shortfall::count).sum()).isPositive();
    assertThat(result.furtherStock()).extracting(StockNeed::stockId).contains("narrow", "banded");
    // The cheap roll takes what it holds; the dear one what is too wide for it.
    for (StockNeed need : result.furtherStock()) {
      if (need.stockId().equals("narrow")) {
        assertThat(need.cost()).isCloseTo(2 * need.length(), within(1e-9));
      }
      if (need.stockId().equals("banded")) {
        assertThat(need.items()).isEqualTo(1);
      }
    }
  }

  @Test
  void furtherStockIsLaidOutAndEnough() {
    Piece panel = Piece.of("panel", TRIANGLE).withCount(9);
    Roll roll = Roll.of("roll", 3.1, 7).withCostPerMetre(5);
    LayoutRequest request = LayoutRequest.of(List.of(panel), List.of(roll)).withSpacing(0.01, 0.01);
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(1_000), 1));
    assertThat(result.furtherStock()).hasSize(1);
    StockNeed need = result.furtherStock().get(0);
    assertThat(need.cost()).isCloseTo(5 * need.length(), within(1e-9));
    LayoutRequest more =
        LayoutRequest.of(List.of(panel), List.of(roll.withCount(1 + need.items())))
            .withSpacing(0.01, 0.01);
    assertThat(CuttingLayout.plan(more, Work.of(Budget.ofWork(1_000), 1)).isComplete()).isTrue();
    double area = result.unplaced().get(0).count() * panel.outline().area();
    assertThat(need.length()).isGreaterThan(area / 3.1);
  }
}
