package io.github.seamstead.shared.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class OutlineTest {

  private static final Outline STEP =
      Outline.of(v(0, 0), v(4, 0), v(4, 1), v(2, 1), v(2, 3), v(0, 3));

  @Test
  void rectangleHasItsMeasures() {
    Outline rectangle = Outline.rectangle(3, 2);
    assertThat(rectangle.area()).isEqualTo(6);
    assertThat(rectangle.perimeter()).isEqualTo(10);
    assertThat(rectangle.centroid()).isEqualTo(v(1.5, 1));
    assertThat(rectangle.edgeLength(1)).isEqualTo(2);
    assertThat(rectangle.isConvex()).isTrue();
    assertThat(rectangle.bounds()).isEqualTo(new Bounds(0, 0, 3, 2));
  }

  @Test
  void clockwiseCornersAreTurnedRound() {
    Outline outline = Outline.of(v(0, 0), v(0, 1), v(1, 0));
    assertThat(outline.area()).isEqualTo(0.5);
    assertThat(outline.vertices()).containsExactly(v(1, 0), v(0, 1), v(0, 0));
  }

  @Test
  void cornersAreCountedRound() {
    assertThat(STEP.vertex(6)).isEqualTo(STEP.vertex(0));
    assertThat(STEP.vertex(-1)).isEqualTo(v(0, 3));
    assertThat(STEP.edgeLength(5)).isEqualTo(3);
  }

  @Test
  void inwardCornerIsNotConvex() {
    assertThat(STEP.isConvex()).isFalse();
    assertThat(STEP.contains(v(1, 2))).isTrue();
    assertThat(STEP.contains(v(3, 2))).isFalse();
  }

  @Test
  void outlineInsideAndAcross() {
    Outline inside = Outline.rectangle(1, 1).placed(0, v(0.5, 0.5));
    Outline across = Outline.rectangle(3, 0.5).placed(0, v(0.5, 0.75));
    Outline touching = Outline.rectangle(1, 1);
    Outline away = Outline.rectangle(1, 1).placed(0, v(2.5, 1.5));
    assertThat(STEP.contains(inside)).isTrue();
    assertThat(STEP.contains(across)).isFalse();
    assertThat(STEP.contains(touching)).isFalse();
    assertThat(STEP.meets(inside)).isTrue();
    assertThat(inside.meets(STEP)).isTrue();
    assertThat(STEP.meets(across)).isTrue();
    assertThat(STEP.meets(away)).isFalse();
  }

  @Test
  void regularPolygonAreas() {
    Source table =
        Source.found("Engineering ToolBox", "Regular Polygons", "", "area over side squared");
    double[] printed = {
      0.4330, 1.0000, 1.7205, 2.5981, 3.6339, 4.8284, 6.1818, 7.6942, 9.3656, 11.1961
    };
    for (int n = 3; n <= 12; n++) {
      OutsideCheck.of("shared.plane", n + "-gon drawn by its corners: area / side²", table)
          .expect(printed[n - 3])
          // The source cuts its figures off.
          .within(1e-4)
          .got(regular(n).area());
    }
  }

  @Test
  void placingKeepsTheAreaAndMovesTheCentroid() {
    Outline placed = STEP.placed(Math.PI / 2, v(10, 0));
    assertThat(placed.area()).isCloseTo(8, within(1e-12));
    assertThat(placed.vertex(1).distance(v(10, 4))).isLessThan(1e-12);
  }

  @Test
  void mirrorIsCounterClockwiseAgain() {
    Outline mirrored = STEP.mirrored();
    assertThat(mirrored.area()).isEqualTo(8);
    assertThat(mirrored.bounds().minX()).isEqualTo(-4);
    assertThat(mirrored.bounds().maxX()).isZero();
    assertThat(mirrored.mirrored()).isEqualTo(STEP);
  }

  @Test
  void badCornersAreNamed() {
    assertThatThrownBy(() -> Outline.of(v(0, 0), v(1, 0)))
        .hasMessage("outline: given 2 corners, must have 3 or more");
    assertThatThrownBy(() -> Outline.of(v(0, 0), v(1, 0), v(2, 0)))
        .hasMessageContaining("on one line");
    assertThatThrownBy(() -> Outline.of(v(0, 0), v(2, 2), v(2, 0), v(0, 1)))
        .hasMessageContaining("cross or touch");
    assertThatThrownBy(() -> Outline.of(v(0, 0), v(0, 0), v(2, 0), v(0, 1)))
        .hasMessageContaining("coincide");
    assertThatThrownBy(() -> Outline.of(v(0, 0), v(2, 0), v(1, 0), v(1, 1)))
        .hasMessageContaining("runs back");
    assertThatThrownBy(() -> Outline.of(v(0, 0), v(Double.NaN, 0), v(1, 0)))
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> Outline.rectangle(0, 1)).hasMessageContaining("rectangle width");
  }

  @Test
  void messageShowsRoundedCorners() {
    assertThat(Outline.of(v(0, 0), v(1.50001, 0), v(0, 2)))
        .hasToString("[(0, 0), (1.5, 0), (0, 2)]");
  }

  private static Outline regular(int n) {
    double radius = 0.5 / Math.sin(Math.PI / n);
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * i / n;
      corners.add(v(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return new Outline(corners);
  }

  private static Vector2D v(double x, double y) {
    return Vector2D.of(x, y);
  }

  @Test
  void theSignOfAnAreaIsTheWayRound() {
    Outline rectangle = Outline.rectangle(3, 2);
    assertThat(Outline.signedArea(rectangle.vertices())).isEqualTo(6);
    List<Vector2D> turned = new ArrayList<>(rectangle.vertices());
    Collections.reverse(turned);
    assertThat(Outline.signedArea(turned)).isEqualTo(-6);
    // Far out: 3 m by 2 m a thousand kilometres away keeps all its digits.
    List<Vector2D> far =
        rectangle.vertices().stream().map(v -> v.add(Vector2D.of(1e6, -1e6))).toList();
    assertThat(Outline.signedArea(far)).isEqualTo(6);
    assertThat(Outline.signedArea(turned.subList(0, 2))).isZero();
  }
}
