package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class FaceDifferenceTest {

  private static final Outline FACE =
      Outline.of(
          Vector2D.of(0, 0), Vector2D.of(1.6, 0), Vector2D.of(1.05, 3.2), Vector2D.of(0.55, 3.2));

  @Test
  void aRectangleGrownAlongIsOffByHalfOfItAtEachEnd() {
    FaceDifference d = FaceDifference.of(Outline.rectangle(2, 1), Outline.rectangle(2.02, 1));
    assertThat(d.edges().get(0)).isCloseTo(0.02, within(1e-12));
    assertThat(d.edges().get(1)).isCloseTo(0, within(1e-12));
    d.corners().forEach(c -> assertThat(c).isCloseTo(0.01, within(1e-12)));
    assertThat(d.greatest()).isCloseTo(0.02, within(1e-12));
  }

  @Test
  void aSkewedRectangleKeepsItsEdgesButNotItsCorners() {
    double turn = 0.01;
    Outline skewed =
        Outline.of(
            Vector2D.of(0, 0),
            Vector2D.of(2, 0),
            Vector2D.of(2 + Math.sin(turn), Math.cos(turn)),
            Vector2D.of(Math.sin(turn), Math.cos(turn)));
    FaceDifference d = FaceDifference.of(Outline.rectangle(2, 1), skewed);
    d.edges().forEach(e -> assertThat(e).isCloseTo(0, within(1e-12)));
    assertThat(d.greatest()).isBetween(0.003, 0.006);
  }

  @Test
  void outlinesOfDifferentCornersAreRefused() {
    assertThatThrownBy(
            () ->
                FaceDifference.of(
                    FACE, Outline.of(Vector2D.of(0, 0), Vector2D.of(1, 0), Vector2D.of(0, 1))))
        .hasMessageContaining("corners");
  }

  @Property(seed = "20310517", tries = 200)
  void aMovedAndTurnedOutlineIsTheSame(
      @ForAll @DoubleRange(min = -3, max = 3) double angle,
      @ForAll @DoubleRange(min = -10, max = 10) double x,
      @ForAll @DoubleRange(min = -10, max = 10) double y) {
    FaceDifference d = FaceDifference.of(FACE, FACE.placed(angle, Vector2D.of(x, y)));
    assertThat(d.greatest()).isLessThan(1e-12);
  }

  @Property(seed = "20310518", tries = 200)
  void noTurnFitsBetter(
      @ForAll @DoubleRange(min = -0.05, max = 0.05) double dx,
      @ForAll @DoubleRange(min = -0.05, max = 0.05) double dy,
      @ForAll @DoubleRange(min = -0.02, max = 0.02) double turn) {
    Outline wanted =
        Outline.of(
            FACE.vertex(0),
            FACE.vertex(1).add(Vector2D.of(dx, dy)),
            FACE.vertex(2),
            FACE.vertex(3).add(Vector2D.of(dy, -dx)));
    double best = squares(FaceDifference.of(FACE, wanted));
    Vector2D from = mean(FACE);
    Vector2D to = mean(wanted);
    double other = 0;
    for (int i = 0; i < 4; i++) {
      Vector2D a = FACE.vertex(i).subtract(from);
      Vector2D b = wanted.vertex(i).subtract(to);
      Vector2D turned =
          Vector2D.of(
              Math.cos(turn) * a.getX() - Math.sin(turn) * a.getY(),
              Math.sin(turn) * a.getX() + Math.cos(turn) * a.getY());
      other += turned.subtract(b).normSq();
    }
    assertThat(best).isLessThanOrEqualTo(other + 1e-12);
  }

  private static double squares(FaceDifference d) {
    return d.corners().stream().mapToDouble(c -> c * c).sum();
  }

  private static Vector2D mean(Outline o) {
    Vector2D sum = Vector2D.ZERO;
    for (Vector2D v : o.vertices()) {
      sum = sum.add(v);
    }
    return sum.multiply(0.25);
  }
}
