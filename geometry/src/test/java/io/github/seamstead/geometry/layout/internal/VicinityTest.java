package io.github.seamstead.geometry.layout.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

class VicinityTest {

  private static final int KINDS = 4;
  private static final int COPIES = 3;
  private static final double SIDE = 4;

  /** Asked so often that every pair in use has a table. */
  private static final int OFTEN = 3000;

  /** A star-shaped outline, mostly not convex. */
  private static Outline star(RandomGenerator random) {
    int n = 3 + random.nextInt(7);
    List<Vector2D> corners = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      double r = 0.2 + 0.8 * random.nextDouble();
      double a = 2 * Math.PI * (k + 0.6 * random.nextDouble()) / n;
      corners.add(Vector2D.of(r * Math.cos(a), r * Math.sin(a)));
    }
    return new Outline(corners);
  }

  private static Nest nest(RandomGenerator random) {
    Orientations turns = new Orientations(new HashMap<>());
    Regions regions = new Regions();
    int[] kind = new int[KINDS * COPIES];
    List<int[]> free = new ArrayList<>();
    for (int k = 0; k < KINDS; k++) {
      double[] corners = Obstacles.corners(star(random), Vector2D.ZERO, 1);
      Orientations.Clearance none = Orientations.Clearance.of(0);
      int shape = turns.addShape("s" + k, corners, ConvexParts.of(corners), none, false);
      int upright = regions.add(turns.addTurn(shape, 0), 0, 0, 0, SIDE, SIDE, false);
      int aslant = regions.add(turns.addTurn(shape, 1 + k), 0, 0, 0, SIDE, SIDE, false);
      regions.addKind(new int[] {upright, aslant});
      free.add(new int[0]);
      for (int c = 0; c < COPIES; c++) {
        kind[COPIES * k + c] = k;
      }
    }
    turns.close();
    Nest nest = new Nest(turns, regions, kind, free, new double[0][]);
    for (int i = 0; i < kind.length; i++) {
      int r = regions.ofKind(kind[i])[random.nextInt(2)];
      nest.place(i, r, SIDE * random.nextDouble(), SIDE * random.nextDouble());
    }
    return nest;
  }

  private static double exact(Nest nest, int i, double x, double y) {
    double sum = 0;
    int o = nest.orientation[i];
    for (int j = 0; j < nest.pieces; j++) {
      int oj = nest.orientation[j];
      double dx = x - nest.x[j];
      double dy = y - nest.y[j];
      double c = nest.turns.cos[oj];
      double s = nest.turns.sin[oj];
      sum += j == i ? 0 : nest.turns.fit(oj, o).depth(c * dx + s * dy, c * dy - s * dx);
    }
    return sum;
  }

  @Property(tries = 15, seed = "4471209385561732208")
  void aPlaceIsJudgedAsByTheNestItself(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "vicinity", 0);
    Nest nest = nest(random);
    int i = random.nextInt(nest.pieces);
    int o = nest.orientation[i];
    for (int k = 0; k < OFTEN; k++) {
      nest.evaluate(i, o, nest.x[i], nest.y[i], Double.POSITIVE_INFINITY);
    }
    Vicinity vicinity = nest.vicinity();
    vicinity.gather(i, o, nest.x[i], nest.y[i]);
    double[] own = new double[2];
    double[] exit = new double[2];
    for (int k = 0; k < 200; k++) {
      double x = nest.x[i] + 0.3 * (random.nextDouble() - 0.5);
      double y = nest.y[i] + 0.3 * (random.nextDouble() - 0.5);
      double told = vicinity.evaluate(x, y, Double.POSITIVE_INFINITY);
      assertThat(told).isCloseTo(nest.evaluate(i, o, x, y, Double.POSITIVE_INFINITY), within(1e-9));
      // Near depths may differ by what a cell holds; none may be lost or found.
      assertThat(told > 0).isEqualTo(exact(nest, i, x, y) > 0);
      if (!vicinity.covers(x, y)) {
        vicinity.gather(i, o, x, y);
      }
      double sum = 0;
      int count = vicinity.meet(x, y);
      for (int m = 0; m < count; m++) {
        sum += vicinity.exit(m, x, y, own);
      }
      double wanted = 0;
      for (int j = 0; j < nest.pieces; j++) {
        wanted += j == i ? 0 : nest.exit(j, o, x, y, exit);
      }
      assertThat(sum).isCloseTo(wanted, within(1e-12));
      assertThat(sum).isCloseTo(exact(nest, i, x, y), within(1e-12));
    }
  }
}
