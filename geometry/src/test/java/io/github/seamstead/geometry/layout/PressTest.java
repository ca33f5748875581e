package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Press;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class PressTest {

  private static final Outline SQUARE = Outline.rectangle(0.5, 0.5);
  private static final Outline WEDGE = CuttingLayoutTest.outline(0, 0, 1, 0, 0, 1);

  /** A strip one wide, in units of its width. */
  private static Nest nest(Piece... pieces) {
    Bin bin = new Bin(Roll.of("strip", 1, 20), 1, new Bounds(0, 0, 20, 1), 0);
    return new NestSetup(List.of(pieces), List.of(bin), 0, 0).nest();
  }

  private static void put(Nest nest, int i, double x, double y) {
    nest.place(i, nest.regions.ofKind(nest.kind[i])[0], x, y);
  }

  @Test
  void aRowClosesUp() {
    Nest nest = nest(Piece.of("square", SQUARE).withCount(3));
    put(nest, 0, 0.26, 0.5);
    put(nest, 1, 0.78, 0.5);
    put(nest, 2, 1.29, 0.5);
    assertThat(new Press(nest).press(0.1, nest.reach())).isTrue();
    assertThat(nest.reach()).isCloseTo(1.5, within(1e-8));
    assertThat(nest.isApart()).isTrue();
  }

  @Test
  void wedgesCloseUpOnTheirLongEdges() {
    // The two make a square, from which the upper one stands off along the strip.
    Nest nest =
        nest(Piece.of("wedge", WEDGE), Piece.of("wedge-over", WEDGE.placed(Math.PI, zero())));
    put(nest, 0, 1 / 3.0, 1 / 3.0);
    put(nest, 1, 0.75, 2 / 3.0);
    double before = nest.reach();
    Press press = new Press(nest);
    assertThat(press.press(0.1, before)).isTrue();
    assertThat(press.least()).isCloseTo(1, within(1e-8));
    assertThat(nest.isApart()).isTrue();
  }

  @Test
  void aSmallOverlapIsPartedWhereThereIsRoom() {
    Nest nest = nest(Piece.of("square", SQUARE).withCount(2));
    put(nest, 0, 0.25, 0.5);
    put(nest, 1, 0.74, 0.5);
    assertThat(nest.isApart()).isFalse();
    assertThat(new Press(nest).press(0.05, 1.01)).isTrue();
    assertThat(nest.reach()).isCloseTo(1, within(1e-8));
    assertThat(nest.isApart()).isTrue();
  }

  @Test
  void nothingMovesWhereNothingIsGained() {
    Nest nest = nest(Piece.of("square", SQUARE).withCount(2));
    put(nest, 0, 0.25, 0.25);
    put(nest, 1, 0.75, 0.25);
    assertThat(new Press(nest).press(0.1, 1 - 1e-6)).isFalse();
    assertThat(nest.x[0]).isEqualTo(0.25);
    assertThat(nest.x[1]).isEqualTo(0.75);
  }

  private static Vector2D zero() {
    return Vector2D.ZERO;
  }
}
