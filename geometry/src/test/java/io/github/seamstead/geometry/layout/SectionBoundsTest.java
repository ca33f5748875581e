package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class SectionBoundsTest {

  private static Piece box(double length, double height, int count) {
    return Piece.of("box", Outline.rectangle(length, height))
        .withCount(count)
        .withRotations(Rotations.none());
  }

  @Test
  void boxesOverHalfTheHeightLieOneBehindTheOther() {
    double length = SectionBounds.length(List.of(box(0.5, 0.6, 4)), 1, 0);
    assertThat(length).isCloseTo(2, within(1e-6));
  }

  @Test
  void boxesOverAThirdOfTheHeightLieTwoAbreast() {
    double length = SectionBounds.length(List.of(box(0.5, 0.34, 6)), 1, 0);
    assertThat(length).isCloseTo(1.5, within(1e-6));
  }

  @Test
  void theSpacingTakesRoomToo() {
    // With a tenth between them two boxes of 0.46 no longer lie abreast.
    double length = SectionBounds.length(List.of(box(0.5, 0.46, 4)), 1, 0.1);
    assertThat(length).isCloseTo(2, within(1e-6));
  }

  @Test
  void aBoxJustHalfAsHighLeavesRoomForAnother() {
    double length = SectionBounds.length(List.of(box(0.5, 0.5, 4)), 1, 0);
    assertThat(length).isCloseTo(1, within(1e-6));
  }

  @Test
  void aWedgeCountsWhereItIsTall() {
    // A right triangle as high as the strip takes more than half of it over half its length.
    Piece wedge =
        Piece.of("wedge", CuttingLayoutTest.outline(0, 0, 1, 0, 0, 1))
            .withCount(3)
            .withRotations(Rotations.none());
    assertThat(SectionBounds.length(List.of(wedge), 1, 0)).isGreaterThanOrEqualTo(1.5 - 1e-6);
  }

  @Test
  void sheetsThatHoldOneEachAreCountedByPieces() {
    Sheet sheet = Sheet.rectangle("sheet", 1, 1).withCount(4);
    LayoutRequest request = LayoutRequest.of(List.of(box(0.8, 0.6, 3)), List.of(sheet));
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(100), 1));
    // By area two sheets would do.
    assertThat(result.lowerBound()).isEqualTo(3);
    assertThat(result.gap()).isZero();
  }

  @Property(tries = 40, seed = "3391120046782215506")
  void noVerifiedLayoutBeatsTheBounds(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "section-bounds", 0);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < 1 + random.nextInt(3); k++) {
      Outline outline =
          random.nextBoolean()
              ? StripLayoutProperties.star(random, 3 + random.nextInt(4), 0.2, 0.5)
              : Outline.rectangle(0.2 + 0.7 * random.nextDouble(), 0.2 + 0.7 * random.nextDouble());
      pieces.add(
          Piece.of("p" + k, outline)
              .withCount(1 + random.nextInt(5))
              .withRotations(random.nextBoolean() ? Rotations.none() : Rotations.halfTurn()));
    }
    double spacing = random.nextInt(2) * 0.03;
    StripProblem strip = new StripProblem(1.2, pieces, spacing, 0.02);
    StripResult laid = StripLayout.solve(strip, Work.of(Budget.ofWork(20_000), seed));
    LayoutVerifier.verify(strip, laid);
    double needed = SectionBounds.length(pieces, 1.2 - 0.04, spacing) + 0.04;
    assertThat(laid.length()).isGreaterThan(needed - 1e-9);
    List<StockItem> stock = List.of(Sheet.rectangle("sheet", 1.5, 1.2).withCount(9));
    LayoutRequest request = LayoutRequest.of(pieces, stock).withSpacing(spacing, 0.02);
    LayoutResult result = CuttingLayout.plan(request, Work.of(Budget.ofWork(5_000), seed));
    LayoutVerifier.verify(request, result);
    if (result.isComplete()) {
      List<Bin> bins = StockOrder.bins(stock, 15);
      assertThat(SectionBounds.items(pieces, bins, spacing, 0.02))
          .isLessThanOrEqualTo(result.used().size());
    }
  }
}
