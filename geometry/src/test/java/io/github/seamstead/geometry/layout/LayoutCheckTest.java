package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** The check must see every kind of fault in a layout that was good. */
class LayoutCheckTest {

  private static final Outline PANEL = CuttingLayoutTest.outline(0, 0, 1, 0, 0.5, 1);

  private static final LayoutRequest REQUEST =
      LayoutRequest.of(
              List.of(
                  Piece.of("hem", PANEL).withCount(2).withHem(0, true),
                  Piece.of("warp", Outline.rectangle(0.6, 0.3))
                      .withGrain(new Grain(0, true))
                      .withRotations(Rotations.anyAngle())),
              List.of(
                  Sheet.rectangle("s", 4, 2)
                      .withReinforcedEdges(0)
                      .withFlaws(CuttingLayoutTest.outline(3, 1, 3.5, 1, 3.2, 1.5))))
          .withSpacing(0.01, 0.02);

  private static final LayoutResult GOOD =
      CuttingLayout.plan(REQUEST, Work.of(Budget.ofWork(5_000), 1));

  private static LayoutResult with(List<Placement> placements) {
    StockUse use = GOOD.used().get(0);
    StockUse other = new StockUse("s", 1, placements, 4, use.cost(), List.of());
    return new LayoutResult(
        List.of(other),
        GOOD.unplaced(),
        GOOD.furtherStock(),
        GOOD.density(),
        4,
        GOOD.cost(),
        GOOD.objectiveValue(),
        GOOD.lowerBound(),
        GOOD.lengthBound(),
        GOOD.gap(),
        GOOD.method(),
        GOOD.workUsed(),
        GOOD.stopped());
  }

  private static Placement at(String id, int copy, boolean over, double turn, double x, double y) {
    return new Placement(id, copy, over, turn, Vector2D.of(x, y), id.equals("hem"));
  }

  private static List<String> faults(Placement... placements) {
    return LayoutCheck.faults(REQUEST, with(List.of(placements)));
  }

  private static final Placement LEFT = at("hem", 1, false, 0, 0.02, 0);
  private static final Placement RIGHT = at("hem", 2, false, 0, 1.04, 0);
  private static final Placement WARP = at("warp", 1, false, 0, 0.02, 1.5);

  @Test
  void goodLayoutsPass() {
    assertThat(GOOD.isComplete()).isTrue();
    assertThat(LayoutCheck.faults(REQUEST, GOOD)).isEmpty();
    assertThat(faults(LEFT, RIGHT, WARP)).isEmpty();
  }

  @Test
  void eachKindOfFaultIsSeen() {
    assertThat(faults(at("hem", 1, false, 0, -0.9, 0), RIGHT, WARP))
        .anyMatch(f -> f.contains("sticks out"));
    assertThat(faults(at("hem", 1, false, 0, 0.01, 0), RIGHT, WARP))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("margin"));
    assertThat(faults(LEFT, at("hem", 2, false, 0, 1.025, 0), WARP))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("nearer than the spacing"));
    assertThat(faults(LEFT, at("hem", 2, false, 0, 0.5, 0), WARP))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("overlaps"));
    assertThat(faults(LEFT, at("hem", 2, false, 0, 0.02, 0), WARP))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("overlaps"));
    assertThat(faults(LEFT, at("hem", 2, false, 0, 1.04, 0.1), WARP))
        .anyMatch(f -> f.contains("not on a reinforced edge as told"))
        .anyMatch(f -> f.contains("as it must be"));
    assertThat(faults(LEFT, RIGHT, at("warp", 1, false, 0, 3, 1.1)))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("flaw"));
    assertThat(faults(LEFT, RIGHT, at("warp", 1, false, Math.PI, 1, 1.9)))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("grain"));
    assertThat(faults(LEFT, RIGHT, at("warp", 1, true, Math.PI, 0.1, 1.9)))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("turned over"));
    assertThat(faults(at("hem", 1, false, 0.1, 0.3, 0.3), RIGHT, WARP))
        .anyMatch(f -> f.contains("turned as it may not be"));
    assertThat(faults(LEFT, at("hem", 1, false, 0, 1.04, 0), WARP))
        .anyMatch(f -> f.contains("laid twice"));
    assertThat(faults(LEFT, WARP))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("1 laid or left over of 2"));
    assertThat(faults(LEFT, RIGHT, WARP, at("other", 1, false, 0, 2.2, 0.5)))
        .anyMatch(f -> f.contains("not asked for"));
  }

  private static StripResult moved(StripResult good, int index, double x, double y) {
    List<Placement> placements = new ArrayList<>(good.placements());
    Placement p = placements.get(index);
    Vector2D shift = p.shift().add(Vector2D.of(x, y));
    placements.set(
        index, new Placement(p.pieceId(), p.copy(), p.mirrored(), p.rotation(), shift, false));
    return of(good, placements, good.length());
  }

  private static StripResult of(StripResult good, List<Placement> placements, double length) {
    return new StripResult(
        length, good.density(), good.lowerBound(), good.gap(), placements, good.workUsed());
  }

  @Test
  void stripsAreHeldToTheirProblemToo() {
    StripProblem problem =
        new StripProblem(1.5, List.of(Piece.of("panel", PANEL).withCount(4)), 0.01, 0.02);
    StripResult good = StripLayout.solve(problem, Work.of(Budget.ofWork(2_000), 1));
    assertThat(LayoutCheck.faults(problem, good)).isEmpty();
    assertThat(LayoutCheck.faults(problem, moved(good, 0, 0, 5)))
        .anyMatch(f -> f.contains("sticks out"));
    Vector2D onto = good.placements().get(1).shift().subtract(good.placements().get(0).shift());
    assertThat(LayoutCheck.faults(problem, moved(good, 0, onto.getX(), onto.getY())))
        .anyMatch(f -> f.contains("overlaps"));
    assertThat(LayoutCheck.faults(problem, of(good, good.placements(), good.length() - 0.01)))
        .isNotEmpty();
    assertThat(
            LayoutCheck.faults(problem, of(good, good.placements().subList(1, 4), good.length())))
        .singleElement()
        .satisfies(f -> assertThat(f).contains("3 laid or left over of 4"));
    assertThatThrownBy(() -> LayoutCheck.require(problem, moved(good, 0, -0.5, 0)))
        .isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(
            () -> StripProblem.of(2, List.of(Piece.of("p", PANEL), Piece.of("p", PANEL))))
        .hasMessageContaining("twice");
  }

  @Test
  void aFaultIsAnErrorOfTheProgram() {
    LayoutResult bad = with(List.of(LEFT, at("hem", 2, false, 0, 0.5, 0), WARP));
    assertThatThrownBy(() -> LayoutCheck.require(REQUEST, bad))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("overlaps");
  }

  /** Two stars overlap where the geometry library sees an area, and lie apart where it does not. */
  @Property(tries = 400, seed = "4711290385566")
  void overlapsAreTheGeometryLibrarys(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "intrusion", 0);
    Outline a = StripLayoutProperties.star(random, 3 + random.nextInt(6), 0.2, 1);
    Outline b =
        StripLayoutProperties.star(random, 3 + random.nextInt(6), 0.2, 1)
            .placed(
                7 * random.nextDouble(),
                Vector2D.of(3 * random.nextDouble() - 1.5, 3 * random.nextDouble() - 1.5));
    double common = LayoutVerifier.overlap(LayoutVerifier.polygon(a), LayoutVerifier.polygon(b), 1);
    assertThat(Intrusion.depth(a, b) > 1e-8).isEqualTo(common > 1e-7);
    assertThat(Intrusion.depth(a, a)).isGreaterThan(0.01);
    Outline frame = Outline.rectangle(3, 3).placed(0, Vector2D.of(-1.5, -1.5));
    double out =
        b.area()
            - LayoutVerifier.overlap(LayoutVerifier.polygon(b), LayoutVerifier.polygon(frame), 1);
    assertThat(Intrusion.outside(b, frame) > 1e-8).isEqualTo(out > 1e-7);
    List<Vector2D> turned = new ArrayList<>(a.vertices());
    java.util.Collections.rotate(turned, 1);
    assertThat(Intrusion.depth(a, new Outline(turned))).isGreaterThan(0.01);
  }
}
