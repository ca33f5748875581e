package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

class StripLayoutProperties {

  /** A star-shaped outline, often not convex. */
  static Outline star(RandomGenerator random, int n, double least, double most) {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
      double r = least + (most - least) * random.nextDouble();
      corners.add(Vector2D.of(r * Math.cos(angle), r * Math.sin(angle)));
    }
    return new Outline(corners);
  }

  private static List<Piece> pieces(long seed, double size) {
    RandomGenerator random = Seeds.stream(seed, "layout-test", 0);
    List<Piece> out = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      Rotations turns =
          switch (random.nextInt(4)) {
            case 0 -> Rotations.none();
            case 1 -> Rotations.halfTurn();
            case 2 -> Rotations.anyAngle();
            default -> Rotations.of(0, 0.7, 2.1);
          };
      out.add(
          Piece.of("p" + k, star(random, 3 + random.nextInt(6), 0.3 * size, size))
              .withCount(1 + random.nextInt(4))
              .withRotations(turns));
    }
    return out;
  }

  private static StripResult solve(StripProblem problem, long work, long seed) {
    StripResult result = StripLayout.solve(problem, Work.of(Budget.ofWork(work), seed));
    LayoutVerifier.verify(problem, result);
    return result;
  }

  @Property(tries = 25, seed = "-888835201059512191")
  void stripsAreValid(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 2) int gap) {
    StripProblem problem = new StripProblem(3, pieces(seed, 1), 0.05 * gap, 0.04 * gap);
    solve(problem, 4_000, seed);
  }

  @Property(tries = 12, seed = "-3066744216740509214")
  void scaleOfCoordinatesChangesNothing(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = -6, max = 9) int power) {
    double scale = Math.pow(10, power);
    StripProblem problem = StripProblem.of(3 * scale, pieces(seed, scale));
    assertThat(solve(problem, 2_000, 1).density()).isBetween(0.05, 1.0);
  }

  @Property(tries = 12, seed = "63141212684154377")
  void moreWorkNeverWorsensIt(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    StripProblem problem = StripProblem.of(3, pieces(seed, 1));
    assertThat(solve(problem, 20_000, 1).length())
        .isLessThanOrEqualTo(solve(problem, 0, 1).length() + 1e-9);
  }

  @Property(tries = 12, seed = "1015741362786641435")
  void placeAndOrderOfInputChangeNothing(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = -9, max = 9) int move) {
    List<Piece> given = pieces(seed, 1);
    List<Piece> other = new ArrayList<>();
    for (Piece p : given) {
      Outline moved = p.outline().placed(0, Vector2D.of(move * 0.37, -move * 1.9));
      other.add(Piece.of(p.id(), moved).withCount(p.count()).withRotations(p.rotations()));
    }
    Collections.reverse(other);
    assertThat(solve(StripProblem.of(3, other), 4_000, 2).length())
        .isCloseTo(solve(StripProblem.of(3, given), 4_000, 2).length(), within(1e-9));
  }

  @Property(tries = 10, seed = "125121737555981870")
  void moreStockNeverWorsensIt(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    List<Piece> given = pieces(seed, 1);
    Sheet sheet = Sheet.rectangle("s", 3, 2.5);
    double before = -1;
    for (int count = 1; count <= 3; count++) {
      LayoutRequest request = LayoutRequest.of(given, List.of(sheet.withCount(count)));
      LayoutResult r = CuttingLayout.plan(request, Work.of(Budget.ofWork(3_000), 1));
      LayoutVerifier.verify(request, r);
      double placed = r.used().stream().mapToDouble(u -> u.placements().size()).sum();
      assertThat(placed).isGreaterThanOrEqualTo(before);
      before = placed;
    }
  }

  @Property(tries = 10, seed = "323802077081496455")
  void cancelGivesAValidLayoutAtAnyMoment(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 5) int reports) {
    Cancellation off = new Cancellation();
    int[] heard = new int[1];
    Progress stopLater =
        (ratio, message) -> {
          if (heard[0]++ >= reports) {
            off.cancel();
          }
        };
    StripProblem problem = StripProblem.of(3, pieces(seed, 1));
    Work work = new Work(Budget.ofWork(100_000), seed, stopLater, off);
    LayoutVerifier.verify(problem, StripLayout.solve(problem, work));
  }
}
