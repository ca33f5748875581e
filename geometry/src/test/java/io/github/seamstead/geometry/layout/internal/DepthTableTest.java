package io.github.seamstead.geometry.layout.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Seeds;
import java.util.HashMap;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class DepthTableTest {

  private static final int PLACES = 4000;

  private static int turn(Orientations turns, String name, Outline outline) {
    double[] corners = Obstacles.corners(outline, Vector2D.ZERO, 1);
    Orientations.Clearance none = Orientations.Clearance.of(0);
    int shape = turns.addShape(name, corners, ConvexParts.of(corners), none, false);
    return turns.addTurn(shape, 0);
  }

  @Test
  void depthsAreExactAtTheBoundaryAndNearInside() {
    Orientations drawn = new Orientations(new HashMap<>());
    int slot = turn(drawn, "slot", NoFitTest.SLOT);
    int cross = turn(drawn, "cross", NoFitTest.CROSS);
    drawn.close();
    Orientations turns = drawn.own(new int[0]);
    DepthTable table = turns.depths();
    NoFit fit = NoFitTest.fit(NoFitTest.SLOT, NoFitTest.CROSS);
    int head = -1;
    for (int asked = 0; asked < PLACES && head < 0; asked++) {
      head = table.head(turns, slot, cross);
    }
    assertThat(head).as("asked often enough").isNotNegative();
    double width = (fit.maxX - fit.minX) / DepthGrid.SIZE;
    double height = (fit.maxY - fit.minY) / DepthGrid.SIZE;
    double diagonal = Math.hypot(width, height);
    RandomGenerator random = Seeds.stream(1, "depths", 0);
    double[] exit = new double[2];
    double[] exactExit = new double[2];
    int[] seen = new int[4];
    for (int k = 0; k < PLACES; k++) {
      double dx = fit.minX - width + (fit.maxX - fit.minX + 2 * width) * random.nextDouble();
      double dy = fit.minY - height + (fit.maxY - fit.minY + 2 * height) * random.nextDouble();
      double exact = fit.depth(dx, dy);
      int cell = table.cell(head, dx, dy);
      if (cell == 0) {
        assertThat(exact).isZero();
        seen[0]++;
      } else if (DepthTable.isInside(cell)) {
        double near = table.depthInside(head, cell, dx, dy);
        assertThat(near).isPositive().isCloseTo(exact, within(diagonal / 2));
        assertThat(exact).isPositive();
        seen[1]++;
      } else if (DepthTable.isSide(cell)) {
        assertThat(table.depthAtBoundary(cell, dx, dy)).isCloseTo(exact, within(1e-14));
        assertThat(table.exitAtSide(cell, dx, dy, exit)).isCloseTo(exact, within(1e-14));
        fit.exit(dx, dy, exactExit);
        assertThat(exit).containsExactly(exactExit, within(1e-14));
        seen[2]++;
      } else {
        assertThat(table.depthAtBoundary(cell, dx, dy)).isEqualTo(exact);
        seen[3]++;
      }
    }
    assertThat(seen).as("each kind of cell").doesNotContain(0);
  }

  @Test
  void anExactFitIsTold() {
    Orientations drawn = new Orientations(new HashMap<>());
    int slot = turn(drawn, "slot", NoFitTest.SLOT);
    int cross = turn(drawn, "cross", NoFitTest.CROSS);
    drawn.close();
    Orientations turns = drawn.own(new int[0]);
    DepthTable table = turns.depths();
    int head = -1;
    for (int asked = 0; asked < PLACES && head < 0; asked++) {
      head = table.head(turns, slot, cross);
    }
    // The cross stands with its lower arm in the slot, touching both sides and the bottom.
    int cell = table.cell(head, 0, 1);
    assertThat(cell == 0 || table.depthAtBoundary(cell, 0, 1) == 0).isTrue();
    assertThat(table.depthAtBoundary(table.cell(head, 1e-6, 1), 1e-6, 1))
        .isCloseTo(1e-6, within(2 * NoFit.TOUCH));
  }
}
