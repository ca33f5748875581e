package io.github.seamstead.geometry.layout.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.layout.CuttingLayoutTest;
import io.github.seamstead.geometry.layout.LayoutVerifier;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Seeds;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class NoFitTest {

  static final Outline SLOT =
      CuttingLayoutTest.outline(0, 0, 3, 0, 3, 2, 2, 2, 2, 1, 1, 1, 1, 2, 0, 2);
  static final Outline CROSS =
      CuttingLayoutTest.outline(
          0, 1, 1, 1, 1, 0, 2, 0, 2, 1, 3, 1, 3, 2, 2, 2, 2, 3, 1, 3, 1, 2, 0, 2);

  static NoFit fit(Outline a, Outline b) {
    return NoFitBuilder.build(
        ConvexParts.of(Obstacles.corners(a, Vector2D.ZERO, 1)),
        ConvexParts.of(Obstacles.corners(b, Vector2D.ZERO, 1)),
        0);
  }

  @Property(tries = 60, seed = "1428270053517946802")
  void overlapsExactlyWhereTheGeometryLibrarySaysSo(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "nofit", 0);
    NoFit fit = fit(SLOT, CROSS);
    double dx = -4 + 8 * random.nextDouble();
    double dy = -4 + 7 * random.nextDouble();
    double common =
        LayoutVerifier.overlap(
            LayoutVerifier.polygon(SLOT),
            LayoutVerifier.polygon(CROSS.placed(0, Vector2D.of(dx, dy))),
            4);
    assertThat(fit.depth(dx, dy) > 0).isEqualTo(common > 1e-12);
  }

  @Property(tries = 60, seed = "-4113992075092140847")
  void theExitEndsTheOverlapAndIsAsLongAsTheDepth(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "nofit", 1);
    NoFit fit = fit(SLOT, CROSS);
    double dx = -3 + 6 * random.nextDouble();
    double dy = -3 + 5 * random.nextDouble();
    double[] exit = new double[2];
    double depth = fit.exit(dx, dy, exit);
    assertThat(depth).isCloseTo(fit.depth(dx, dy), within(1e-12));
    assertThat(Math.hypot(exit[0], exit[1])).isCloseTo(depth, within(1e-12));
    assertThat(fit.depth(dx + exit[0], dy + exit[1])).isLessThan(1e-9);
  }

  @Test
  void anArmOfTheSlotsOwnWidthFitsTheSlot() {
    NoFit fit = fit(SLOT, CROSS);
    // The cross stands with its lower arm in the slot, touching both sides and the bottom.
    assertThat(fit.depth(0, 1)).isZero();
    assertThat(fit.depth(0, 0.9)).isGreaterThan(0);
    assertThat(fit.depth(0.1, 1)).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void partsCoverTheOutlineAndAreConvex() {
    for (Outline o : new Outline[] {SLOT, CROSS}) {
      double sum = 0;
      for (double[] part : ConvexParts.of(Obstacles.corners(o, Vector2D.ZERO, 1))) {
        sum += Convex.area(part);
        double[] grown = Convex.sum(part, Convex.negated(part));
        assertThat(Convex.area(grown)).isGreaterThanOrEqualTo(4 * Convex.area(part) - 1e-9);
      }
      assertThat(sum).isCloseTo(o.area(), within(1e-9));
    }
  }
}
