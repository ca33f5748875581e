package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/**
 * By hand: Steiner's formula for convex pieces, the inequality of Brunn and Minkowski for others.
 */
class GrownAreaTest {

  private static final Outline SQUARE = Outline.rectangle(1, 1);

  @Test
  void aSquareGrowsByItsSidesAndFourQuarterDiscs() {
    double grown = GrownArea.of(List.of(Piece.of("square", SQUARE).withCount(3)), 0.2, 1);
    assertThat(grown).isCloseTo(3 * (1 + 4 * 0.1 + Math.PI * 0.01), within(1e-6));
  }

  /**
   * An L of three unit squares: 4.2832 + 8 x 0.1 would be too much, as its notch grows together.
   */
  @Test
  void aPieceThatIsNotConvexGrowsLikeADiscOfItsArea() {
    Outline angle =
        Outline.of(
            Vector2D.of(0, 0),
            Vector2D.of(2, 0),
            Vector2D.of(2, 1),
            Vector2D.of(1, 1),
            Vector2D.of(1, 2),
            Vector2D.of(0, 2));
    double disc = Math.sqrt(3 / Math.PI) + 0.1;
    assertThat(GrownArea.of(List.of(Piece.of("angle", angle)), 0.2, 1))
        .isCloseTo(Math.PI * disc * disc, within(1e-6));
  }

  /**
   * Squares of 1 m, 0.2 m apart, on a strip of 2.4 m with margins of 0.1 m lie in pairs: four take
   * 0.1 + 1 + 0.2 + 1 + 0.1 = 2.4 m. Their bare area needs 4 / 2.2 + 0.2 = 2.018 m; with the
   * spacing it is 4 x 1.431416 / 2.4 - 0.2 + 0.2 = 2.385693 m.
   */
  @Test
  void aStripIsNoShorterThanTheSpacingAllows() {
    List<Piece> four = List.of(Piece.of("square", SQUARE).withCount(4));
    double bound = StripLayout.bound(new StripProblem(2.4, four, 0.2, 0.1), Steps.none());
    assertThat(bound).isCloseTo(2.385693, within(1e-5));
  }

  /** Four of these squares fill a sheet of 2.4 m by 2.4 m; by area alone five would do with one. */
  @Test
  void fiveSquaresDoNotGoOnASheetForFour() {
    assertThat(items(Sheet.rectangle("sheet", 2.4, 2.4), 4)).isEqualTo(1);
    assertThat(items(Sheet.rectangle("sheet", 2.4, 2.4), 5)).isEqualTo(2);
  }

  /** A hem lies on the band itself, so that no margin may be counted on there. */
  @Test
  void aBandNeedsNoMargin() {
    Sheet banded = Sheet.rectangle("sheet", 2.4, 2.4).withReinforcedEdges(0);
    // Room for (2.4 + 0.2)^2 = 6.76 or, round the corners, 5.76 + 9.6 x 0.1 + 0.0314 = 6.751.
    assertThat(items(banded, 4)).isEqualTo(1);
    assertThat(items(banded, 5)).isEqualTo(2);
  }

  /** Five squares take two sheets, of 7 and 9 whatever is on them; of a roll a beginning may do. */
  @Test
  void twoSheetsCostAsMuchAsTheTwoCheapest() {
    Sheet sheet = Sheet.rectangle("sheet", 2.4, 2.4);
    List<StockItem> sheets =
        List.of(
            sheet.withCost(7), sheet.withCost(12), Sheet.rectangle("other", 2.4, 2.4).withCost(9));
    assertThat(StockBounds.costOf(StockOrder.bins(sheets, 1), 2)).isEqualTo(16);
    List<StockItem> stock = new ArrayList<>(sheets);
    stock.add(Roll.of("roll", 2.4, 20).withCostPerMetre(3));
    assertThat(StockBounds.costOf(StockOrder.bins(stock, 1), 2)).isEqualTo(7);
  }

  private static int items(StockItem sheet, int squares) {
    List<Bin> bins = StockOrder.bins(Collections.nCopies(3, sheet), 1);
    return GrownArea.items(List.of(Piece.of("square", SQUARE).withCount(squares)), bins, 0.2, 0.1);
  }
}
