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

class SolidTest {

  private static final Outline SLOT = NoFitTest.SLOT;
  private static final Outline CROSS = NoFitTest.CROSS;

  private static Solid solid(Outline o, double angle) {
    Solid drawn = new Solid(ConvexParts.of(Obstacles.corners(o, Vector2D.ZERO, 1)));
    Solid turned = drawn.copy();
    turned.turn(drawn, Turns.cos(angle), Turns.sin(angle));
    return turned;
  }

  @Property(tries = 200, seed = "2988037315584847260")
  void overlapsExactlyWhereTheGeometryLibrarySaysSo(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "solid", 0);
    double angle = 7 * random.nextDouble();
    double dx = -4 + 8 * random.nextDouble();
    double dy = -4 + 8 * random.nextDouble();
    double common =
        LayoutVerifier.overlap(
            LayoutVerifier.polygon(SLOT),
            LayoutVerifier.polygon(CROSS.placed(angle, Vector2D.of(dx, dy))),
            4);
    double depth = solid(SLOT, 0).depth(solid(CROSS, angle), dx, dy, 0, null);
    assertThat(depth > 0).isEqualTo(common > 1e-12);
  }

  @Property(tries = 200, seed = "-925728522710138542")
  void theDistanceToKeepIsTheGeometryLibrarys(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "solid", 1);
    double angle = 7 * random.nextDouble();
    double dx = -5 + 10 * random.nextDouble();
    double dy = -5 + 10 * random.nextDouble();
    double keep = 1.5 * random.nextDouble();
    double apart =
        LayoutVerifier.polygon(SLOT)
            .distance(LayoutVerifier.polygon(CROSS.placed(angle, Vector2D.of(dx, dy))));
    double depth = solid(SLOT, 0).depth(solid(CROSS, angle), dx, dy, keep, null);
    if (apart > 0) {
      assertThat(depth).isCloseTo(Math.max(0, keep - apart), within(1e-9));
    } else {
      assertThat(depth).isGreaterThanOrEqualTo(keep);
    }
  }

  @Test
  void theExitPartsTwoConvexShapes() {
    Outline square = CuttingLayoutTest.outline(0, 0, 1, 0, 1, 1, 0, 1);
    double[] exit = new double[2];
    Solid a = solid(square, 0);
    Solid b = solid(square, 0.4);
    double depth = a.depth(b, 0.3, 0.7, 0.05, exit);
    assertThat(Math.hypot(exit[0], exit[1])).isCloseTo(depth, within(1e-12));
    assertThat(depth).isGreaterThan(0.05);
    assertThat(a.depth(b, 0.3 + exit[0], 0.7 + exit[1], 0.05, null)).isLessThan(1e-9);
  }
}
