package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layouts that a careless engine loses: needles, combs, thousands of pieces, no room to spare. */
class HardLayoutsTest {

  private static Work work(long units) {
    return Work.of(Budget.ofWork(units), 1);
  }

  private static Rotations turns(RandomGenerator random) {
    return switch (random.nextInt(3)) {
      case 0 -> Rotations.none();
      case 1 -> Rotations.of(0, 1, 2);
      default -> Rotations.anyAngle();
    };
  }

  @Property(tries = 20, seed = "-1822440858455839212")
  void needlesLieApart(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 1, max = 5) int sharpness) {
    RandomGenerator random = Seeds.stream(seed, "needles", 0);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < 4; k++) {
      double a = 7 * random.nextDouble();
      double thin = Math.pow(10, -sharpness) * (0.5 + random.nextDouble());
      Outline needle =
          Outline.of(Vector2D.of(0, 0), Vector2D.of(1, 0), Vector2D.of(random.nextDouble(), thin))
              .placed(a, Vector2D.ZERO);
      pieces.add(Piece.of("needle " + k, needle).withCount(3).withRotations(turns(random)));
    }
    StripProblem problem = StripProblem.of(1.5, pieces);
    LayoutVerifier.verify(problem, StripLayout.solve(problem, work(3_000)));
  }

  @Property(tries = 15, seed = "-2739036963034462858")
  void combsLieInOneAnotherWithoutOverlap(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "combs", 0);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      pieces.add(
          Piece.of("comb " + k, comb(random, 2 + random.nextInt(4)))
              .withCount(2)
              .withRotations(turns(random)));
    }
    StripProblem problem =
        new StripProblem(2.5, pieces, random.nextInt(2) * 0.03, random.nextInt(2) * 0.05);
    LayoutVerifier.verify(problem, StripLayout.solve(problem, work(5_000)));
  }

  /** A back with teeth, so that each comb fits the gaps of another. */
  private static Outline comb(RandomGenerator random, int teeth) {
    List<Vector2D> v = new ArrayList<>();
    double pitch = 1.4 / (2 * teeth - 1);
    double back = 0.1 + 0.2 * random.nextDouble();
    v.add(Vector2D.of(0, 0));
    v.add(Vector2D.of(1.4, 0));
    for (int i = 2 * teeth - 2; i >= 0; i--) {
      double high = i % 2 == 0 ? back + 0.3 + 0.4 * random.nextDouble() : back;
      v.add(Vector2D.of((i + 1) * pitch, high));
      v.add(Vector2D.of(i * pitch, high));
    }
    return new Outline(v);
  }

  @ParameterizedTest(name = "{0} kinds, {1} of each, turned freely: {2}")
  @CsvSource({"20, 40, false", "8, 250, true", "250, 2, false", "3, 900, false"})
  void thousandsOfPiecesAllFindAPlace(int kinds, int copies, boolean free) {
    RandomGenerator random = Seeds.stream(1, "many", 0);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      Outline star = StripLayoutProperties.star(random, 3 + random.nextInt(4), 0.1, 0.2);
      Rotations turns = free ? Rotations.anyAngle() : Rotations.halfTurn();
      pieces.add(Piece.of("p" + k, star).withCount(copies).withRotations(turns));
    }
    StripProblem problem = StripProblem.of(2, pieces);
    StripResult result = StripLayout.solve(problem, work(300_000));
    LayoutVerifier.verify(problem, result);
    assertThat(result.placements()).hasSize(kinds * copies);
  }

  /** As many as are searched at all, of kinds enough that their pairs fill the tables. */
  @Tag("long")
  @Test
  void asManyAsAreSearchedAllFindAPlace() {
    thousandsOfPiecesAllFindAPlace(20, 100, false);
  }

  @Test
  void aPieceAsLargeAsItsSheetFitsAndLeavesNoRoom() {
    Outline square = CuttingLayoutTest.outline(0, 0, 1, 0, 1, 1, 0, 1);
    for (Rotations turns : List.of(Rotations.none(), Rotations.anyAngle())) {
      Piece piece = Piece.of("whole", square).withCount(3).withRotations(turns);
      LayoutRequest request =
          LayoutRequest.of(List.of(piece), List.of(Sheet.rectangle("sheet", 1, 1).withCount(2)));
      LayoutResult result = CuttingLayout.plan(request, work(2_000));
      LayoutVerifier.verify(request, result);
      assertThat(result.used()).hasSize(2);
      assertThat(result.unplaced()).singleElement().extracting(Shortfall::count).isEqualTo(1);
    }
  }

  @Test
  void aMarginWiderThanTheStockLeavesEverythingOut() {
    Piece piece = Piece.of("patch", CuttingLayoutTest.outline(0, 0, 0.2, 0, 0.1, 0.2));
    LayoutRequest request =
        LayoutRequest.of(
                List.of(piece.withCount(2).withRotations(Rotations.anyAngle())),
                List.of(Roll.of("roll", 1, 10)))
            .withSpacing(0, 0.5);
    LayoutResult result = CuttingLayout.plan(request, work(2_000));
    LayoutVerifier.verify(request, result);
    assertThat(result.used()).isEmpty();
    assertThat(result.unplaced()).singleElement().extracting(Shortfall::count).isEqualTo(2);
  }

  /**
   * Twelve square metres hold eight: apron and two sills of 2 m by 1 m and a jamb of 1 m by 2 m,
   * which stay as drawn. Pushed to the left end the jamb stands above the apron and leaves room for
   * one sill; pushed to the lower side it stands beside the apron, with the sills above both.
   */
  @Test
  void theStartPushesInAnotherDirectionWhereOneLeavesAPieceOut() {
    LayoutRequest request =
        LayoutRequest.of(
            List.of(
                Piece.of("apron", Outline.rectangle(2, 1)),
                Piece.of("jamb", Outline.rectangle(1, 2)),
                Piece.of("sill", Outline.rectangle(2, 1)).withCount(2)),
            List.of(Sheet.rectangle("sheet", 3, 4)));
    LayoutResult start = CuttingLayout.plan(request, work(0));
    LayoutVerifier.verify(request, start);
    assertThat(start.isComplete()).isTrue();
  }
}
