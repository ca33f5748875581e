package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayoutSumsTest {

  private static final Piece PANEL =
      Piece.of("p", CuttingLayoutTest.outline(0, 0, 0.264, 0, 0.132, 0.36))
          .withRotations(Rotations.of(0, Math.PI / 2, Math.PI, 3 * Math.PI / 2));

  private static LayoutResult plan(LayoutRequest request) {
    return CuttingLayout.plan(request, Work.of(Budget.ofWork(2_000), 1));
  }

  private static void assertSums(LayoutRequest request, LayoutResult result) {
    StepRecorder density = new StepRecorder();
    assertThat(LayoutSums.density(request, result, density))
        .isCloseTo(result.density(), within(1e-12));
    DerivationChecks.assertFollowsTo(
        density.derivation("geometry.layout.density", "density"), result.density());
    StepRecorder bound = new StepRecorder();
    double least = LayoutSums.lengthBound(request, result, bound);
    assertThat(Math.min(least, result.usedLength())).isCloseTo(result.lengthBound(), within(1e-12));
    DerivationChecks.assertFollowsTo(bound.derivation("geometry.layout.bound", "bound"), least);
  }

  @Test
  void theSumsOfRowsAreThoseOfTheResult() {
    LayoutRequest request =
        LayoutRequest.of(
                List.of(PANEL.withCount(5)),
                List.of(Sheet.rectangle("board", 0.7, 0.5).withCount(6)))
            .withSpacing(0.002, 0.005)
            .withObjective(Objective.FEWEST_ITEMS);
    LayoutResult result = plan(request);
    assertThat(result.method()).isEqualTo(LayoutResult.Method.ROWS);
    assertThat(result.used()).hasSize(2);
    assertSums(request, result);
    StepRecorder row = new StepRecorder();
    double length = LayoutSums.rowLength(request, result, row).orElseThrow();
    DerivationChecks.assertFollowsTo(row.derivation("geometry.layout.rowlength", "row"), length);
    // One row on the first board: with both margins it is the length used there.
    assertThat(length + 2 * 0.005).isCloseTo(result.used().get(0).usedLength(), within(1e-9));
  }

  @Test
  void theSumsOfASearchAreThoseOfTheResult() {
    Piece other = Piece.of("q", CuttingLayoutTest.outline(0, 0, 0.3, 0, 0.3, 0.2, 0.1, 0.4));
    LayoutRequest request =
        LayoutRequest.of(
                List.of(PANEL.withCount(3), other.withCount(4)), List.of(Roll.of("roll", 0.9, 5)))
            .withSpacing(0.004, 0.01)
            .withObjective(Objective.LEAST_LENGTH);
    LayoutResult result = plan(request);
    assertThat(result.method()).isEqualTo(LayoutResult.Method.SEARCH);
    assertSums(request, result);
    assertThat(LayoutSums.rowLength(request, result, new StepRecorder())).isEmpty();
  }
}
