package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class ContinuedLayoutTest {

  private static final Work WORK = Work.of(Budget.ofWork(500), 1);
  private static final Piece SQUARE =
      Piece.of("square", Outline.rectangle(1, 1)).withCount(4).withRotations(Rotations.of(0));

  private static LaidPiece at(int copy, double x) {
    return at("sheet", 1, copy, x);
  }

  private static LaidPiece at(String stock, int number, int copy, double x) {
    return new LaidPiece(
        stock, number, new Placement("square", copy, false, 0, Vector2D.of(x, 0), false));
  }

  private static LayoutRequest onSheets(int count) {
    return LayoutRequest.of(
        List.of(SQUARE), List.of(Sheet.rectangle("sheet", 5, 1).withCount(count)));
  }

  @Test
  void aSpoiledPieceGoesWhereClothIsLeft() {
    LostCloth hole = new LostCloth("sheet", 1, Outline.rectangle(1, 1), true);
    List<LaidPiece> cut = List.of(at(2, 1), at(3, 2));
    LayoutResult result =
        ContinuedLayout.plan(onSheets(2), cut, List.of(at(1, 0), at(4, 3)), List.of(hole), WORK);
    assertThat(result.isComplete()).isTrue();
    // Five squares have room on the first sheet: the one that was lost, and the four wanted.
    assertThat(result.used()).hasSize(1);
    assertThat(result.used().get(0).placements().get(0).shift().getX()).isEqualTo(4, within());
    assertThat(result.used().get(0).placements().get(3).shift().getX()).isEqualTo(3, within());
  }

  @Test
  void whatIsBegunIsUsedUpBeforeAnotherIsBegun() {
    LayoutRequest request =
        LayoutRequest.of(
            List.of(SQUARE),
            List.of(
                Sheet.rectangle("small", 2, 1).withCount(2),
                Roll.of("roll", 1, 30).withPreference(-1)));
    List<LaidPiece> cut = List.of(at("small", 1, 1, 0), at("small", 2, 2, 0));
    LayoutResult result = ContinuedLayout.plan(request, cut, List.of(), List.of(), WORK);
    assertThat(result.isComplete()).isTrue();
    assertThat(result.used()).extracting(StockUse::stockId).containsOnly("small");
    assertThat(result.lowerBound()).isEqualTo(2);
    assertThat(result.gap()).isZero();
  }

  @Test
  void whatFindsNoPlaceIsToldWithItsCount() {
    LostCloth hole = new LostCloth("sheet", 1, Outline.rectangle(3, 1), false);
    LayoutResult result =
        ContinuedLayout.plan(onSheets(1), List.of(), List.of(), List.of(hole), WORK);
    assertThat(result.isComplete()).isFalse();
    assertThat(result.unplaced()).hasSize(1);
    assertThat(result.unplaced().get(0).count()).isEqualTo(2);
  }

  @Test
  void whatIsNotPartOfTheRequestIsRefused() {
    assertThatThrownBy(
            () -> ContinuedLayout.plan(onSheets(1), List.of(at(5, 0)), List.of(), List.of(), WORK))
        .hasMessageContaining("copy");
    assertThatThrownBy(
            () ->
                ContinuedLayout.plan(
                    onSheets(1), List.of(at(1, 0), at(1, 2)), List.of(), List.of(), WORK))
        .hasMessageContaining("twice");
    assertThatThrownBy(
            () ->
                ContinuedLayout.plan(
                    onSheets(1), List.of(at("roll", 1, 1, 0)), List.of(), List.of(), WORK))
        .hasMessageContaining("roll");
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }
}
