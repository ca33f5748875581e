package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FootprintTest {

  private static final Source TABLE =
      Source.fromMemory(
          "", "Mathematical handbook tables: area of the regular polygon of side 1", "", "");

  private static final double[] L_X = {0, 4, 4, 2, 2, 0};
  private static final double[] L_Y = {0, 0, 2, 2, 5, 5};

  @ParameterizedTest
  @CsvSource({"3, 0.4330", "5, 1.7205", "6, 2.5981", "7, 3.6339", "8, 4.8284", "12, 11.1962"})
  void regularPolygons(int sides, double area) {
    StepRecorder steps = new StepRecorder();
    double formula = Footprint.regularArea(sides, 1, steps);
    OutsideCheck.of("materials.floor", "regular " + sides + "-gon of side 1, area", TABLE)
        .expect(area)
        .within(0.00006)
        .got(formula);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.floor.regular-area", "area"), formula);
    Footprint footprint = Footprint.regular(sides, 1);
    assertThat(footprint.area()).isCloseTo(formula, within(1e-12));
    assertThat(footprint.perimeter()).isCloseTo(sides, within(1e-12));
    assertThat(footprint.corners().get(0).getY())
        .as("edge 0 lies nearest the reader, left to right")
        .isCloseTo(footprint.corners().get(1).getY(), within(1e-12));
    assertThat(footprint.corners().get(0).getX()).isLessThan(footprint.corners().get(1).getX());
  }

  @Test
  void anyPolygonAndItsGaps() {
    Footprint l = Footprint.of(L_X, L_Y);
    assertThat(l.area()).isCloseTo(14, within(1e-12));
    Footprint floor = l.withoutRound(Vector2D.of(1, 1), 0.5);
    StepRecorder steps = new StepRecorder();
    double area = floor.area(steps);
    assertThat(area).isCloseTo(14 - Math.PI / 16, within(1e-12));
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.area", "area"), area);
    assertThat(floor.toString()).contains("6 corners");
  }

  @Test
  void theInsetOfAnLIsAnL() {
    Footprint inner = Footprint.of(L_X, L_Y).inset(0.1);
    // Area − perimeter d + d² (4 per right turn: five outward corners less one inward).
    assertThat(inner.area()).isCloseTo(14 - 18 * 0.1 + 4 * 0.01, within(1e-12));
    assertThat(inner.corners()).hasSize(6);
    Footprint clipped =
        Footprint.of(new double[] {0, 4, 4, 3.9, 0}, new double[] {0, 0, 2.9, 3, 3}).inset(1);
    assertThat(clipped.corners()).as("the short edge vanishes").hasSize(4);
    assertThat(clipped.area()).isCloseTo(2, within(1e-9));
    assertThatThrownBy(() -> Footprint.of(L_X, L_Y).inset(1.1))
        .hasMessageContaining("leaves nothing");
    assertThatThrownBy(() -> Footprint.regular(6, 1).inset(1))
        .hasMessageContaining("leaves nothing");
  }

  @Test
  void badOutlinesAreNamed() {
    assertThatThrownBy(() -> Footprint.of(new double[] {0, 1, 1, 0}, new double[] {0, 1, 0, 1}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Footprint.of(new double[] {0, 1}, new double[] {0, 1}))
        .hasMessageContaining("given 2 corners");
    assertThatThrownBy(() -> Footprint.of(new double[] {0, 1, 2}, new double[] {0, 1, 2}))
        .hasMessageContaining("on one line");
    assertThatThrownBy(() -> Footprint.of(new double[] {0, 1, 2}, new double[] {0, 1}))
        .hasMessageContaining("must be as many");
    assertThatThrownBy(
            () ->
                Footprint.of(
                    List.of(Vector2D.ZERO, Vector2D.ZERO, Vector2D.of(1, 0), Vector2D.of(1, 1))))
        .hasMessageContaining("coincide");
    Footprint square = Footprint.regular(4, 2);
    assertThatThrownBy(() -> square.withoutRound(Vector2D.of(1, 0), 0.3))
        .hasMessageContaining("reaches the edge");
    assertThatThrownBy(
            () -> square.withoutRound(Vector2D.ZERO, 0.3).withoutRound(Vector2D.of(0.2, 0), 0.3))
        .hasMessageContaining("overlaps another gap");
    assertThatThrownBy(() -> Footprint.regularArea(2, 1, Steps.none()))
        .hasMessageContaining("sides");
    assertThatThrownBy(() -> Footprint.of(new double[] {0, 1, Double.NaN}, new double[] {0, 0, 1}))
        .hasMessageContaining("footprint corner x");
  }

  @Test
  void aFallTiltsAboutItsLowestCorner() {
    Footprint square = Footprint.of(new double[] {0, 4, 4, 0}, new double[] {0, 0, 2, 2});
    Fall fall = new Fall(0.01, Math.PI);
    assertThat(fall.heightAt(square, Vector2D.of(0, 1))).isCloseTo(0, within(1e-12));
    assertThat(fall.heightAt(square, Vector2D.of(4, 1))).isCloseTo(0.04, within(1e-12));
    assertThat(fall.meanExtra(square)).isCloseTo(0.02, within(1e-12));
    Footprint holed =
        square.without(
            List.of(
                Vector2D.of(3, 0.5),
                Vector2D.of(3.8, 0.5),
                Vector2D.of(3.8, 1.5),
                Vector2D.of(3, 1.5)));
    // 8 m² at 20 mm less 0.8 m² at 34 mm over 7.2 m².
    assertThat(fall.meanExtra(holed)).isCloseTo((8 * 0.02 - 0.8 * 0.034) / 7.2, within(1e-12));
  }
}
