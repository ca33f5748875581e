package io.github.seamstead.geometry.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class HeldRectangleTest {

  @Test
  void ofARectangleIsTheRectangle() {
    HeldRectangle held = HeldRectangle.within(Outline.rectangle(3, 2));
    assertThat(held.along()).isCloseTo(3, within(1e-9));
    assertThat(held.up()).isCloseTo(2, within(1e-9));
  }

  /** The largest rectangle on the base of a triangle has half of its base and half its height. */
  @Test
  void ofATriangleIsHalfItsBaseByHalfItsHeight() {
    Outline triangle = Outline.of(Vector2D.of(1, 1), Vector2D.of(5, 1), Vector2D.of(2.5, 4));
    HeldRectangle on = HeldRectangle.on(triangle, 0);
    assertThat(on.along() * on.up()).isBetween(0.93 * 3, 3.0);
    HeldRectangle any = HeldRectangle.within(triangle);
    assertThat(any.along() * any.up()).isBetween(0.93 * 3, 3.0);
    assertThat(HeldRectangle.upFrom(triangle, 0).up()).isCloseTo(3, within(1e-12));
  }

  @Test
  void onAnEdgeStandsOnItHoweverTheSheetLies() {
    Outline angled =
        Outline.of(
            Vector2D.of(0, 0),
            Vector2D.of(4, 0),
            Vector2D.of(4, 1),
            Vector2D.of(1, 1),
            Vector2D.of(1, 3),
            Vector2D.of(0, 3));
    for (int k = 0; k < 8; k++) {
      Outline turned = angled.placed(k * 0.8, Vector2D.of(-3, 2));
      assertThat(HeldRectangle.on(turned, 0).along()).isCloseTo(4, within(1e-6));
      assertThat(HeldRectangle.on(turned, 0).up()).isBetween(1 - 3.0 / 64, 1 + 1e-9);
      // On the upright edge of 3 m the foot's 1 m by 4 m is more than 3 m by 1 m.
      assertThat(HeldRectangle.on(turned, 5).along()).isBetween(1 - 3.0 / 64, 1 + 1e-9);
      assertThat(HeldRectangle.on(turned, 5).up()).isBetween(4 - 4.0 / 64, 4 + 1e-9);
      // Edge 3 borders the notch: what stands on it is the upright leg.
      assertThat(HeldRectangle.on(turned, 3).along()).isCloseTo(2, within(1e-6));
    }
  }
}
