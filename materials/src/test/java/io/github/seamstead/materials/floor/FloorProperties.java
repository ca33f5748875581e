package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

class FloorProperties {

  /** A star-shaped polygon round the origin with uneven corners. */
  private static Footprint uneven(int sides, double seed) {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double radius = 3 + 0.6 * Math.sin(seed * (i + 1) * 7.3);
      double angle = 2 * Math.PI * (i + 0.3 * Math.cos(seed * i * 3.1)) / sides;
      corners.add(Vector2D.of(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return Footprint.of(corners)
        .withoutRound(Vector2D.ZERO, 0.2)
        .withoutRound(Vector2D.of(0.6, 0.3), 0.5);
  }

  @Property(tries = 100, seed = "20261129")
  void sectorsTileTheFootprint(
      @ForAll @IntRange(min = 5, max = 12) int sides,
      @ForAll @IntRange(min = 1, max = 4) int perEdge,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 6) double seed) {
    Footprint footprint = uneven(sides, seed);
    SectorPlan plan = SectorPlan.of(footprint, Vector2D.ZERO, 0, perEdge);
    assertThat(plan.sectors()).hasSize(sides * perEdge);
    assertThat(plan.area()).isCloseTo(footprint.area(), within(1e-9));
    assertThat(plan.sectors()).allSatisfy(s -> assertThat(s.area()).isPositive());
  }

  @Property(tries = 100, seed = "20261130")
  void nobodyIsTrappedAndNobodyCrossesWetEarth(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @IntRange(min = 1, max = 4) int perEdge,
      @ForAll @IntRange(min = 0, max = 11) int doorEdge) {
    SectorPlan plan =
        SectorPlan.of(Footprint.regular(sides, 2), Vector2D.ZERO, doorEdge % sides, perEdge);
    int count = sides * perEdge;
    boolean[] wet = new boolean[count];
    int door = plan.door() - 1;
    for (Sector sector : plan.inOrder()) {
      int here = sector.number() - 1;
      // Walk from the door through sectors that are not wet, one way round or the other.
      boolean left = reaches(wet, door, here, 1);
      boolean right = reaches(wet, door, here, -1);
      assertThat(left || right).as("sector %d can be reached", here + 1).isTrue();
      boolean first = sector.order() == 1;
      boolean joined = wet[Math.floorMod(here + 1, count)] || wet[Math.floorMod(here - 1, count)];
      assertThat(first || joined).as("sector %d joins a wet edge", here + 1).isTrue();
      wet[here] = true;
    }
    assertThat(plan.inOrder().get(count - 1).number()).isEqualTo(plan.door());
  }

  private static boolean reaches(boolean[] wet, int from, int to, int step) {
    int at = from;
    while (at != to) {
      if (wet[at]) {
        return false;
      }
      at = Math.floorMod(at + step, wet.length);
    }
    return !wet[at];
  }

  @Property(tries = 100, seed = "20261131")
  void loadsNeverExceedTheMixerAndNeverUnderOrder(
      @ForAll @Scale(3) @DoubleRange(min = 0.1, max = 0.6) double soil,
      @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.2) double drum,
      @ForAll @Scale(1) @DoubleRange(min = 60, max = 300) double limit,
      @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 0.06) double thickness) {
    FloorMix mix =
        new FloorMix(
            "mix",
            List.of(
                new MixPart("clay soil", soil, 1100, 0.12, 0.1),
                MixPart.of("washed sand", 1 - soil, 1300, 0.05)),
            new Range(1750, 1830, 1900),
            0.14,
            0.004);
    Mixer mixer = Mixer.of(drum, limit, 0.010);
    BuildUp floor = BuildUp.level(Demo.FOOTPRINT, List.of(EarthLayer.coat("coat", thickness, mix)));
    EarthQuantity quantity = floor.earth().get(0);
    BatchPlan plan = BatchPlan.of(quantity, mixer);
    Batch batch = plan.batch();
    assertThat(batch.looseVolume()).isLessThanOrEqualTo(drum * (1 + 1e-9));
    assertThat(batch.mass()).isLessThanOrEqualTo(limit * (1 + 1e-9));
    assertThat(plan.count().likely() * batch.dryMass())
        .isGreaterThanOrEqualTo(quantity.dryMass().likely() * (1 - 1e-12));
    OrderList order =
        OrderList.of(floor, List.of(plan), List.of(), Optional.of(new Trailer(0.8, 500)), 0.01, 0);
    for (OrderLine line : order.lines()) {
      assertThat(line.ordered()).isGreaterThanOrEqualTo(line.rawNeed().likely() * (1 - 1e-12));
      assertThat(line.trips() * 500.0).isGreaterThanOrEqualTo(line.ordered() * (1 - 1e-9));
    }
    double water =
        batch.dryMass() * 0.14
            - batch.parts().stream().mapToDouble(p -> p.moistMass() - p.dryMass()).sum();
    assertThat(batch.waterBalance(Steps.none())).isCloseTo(water, within(1e-9));
  }

  @Property(tries = 60, seed = "20261132")
  void anInsetShrinksAndAThickerLayerTakesMore(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.3) double inset) {
    Footprint whole = Footprint.regular(sides, 2);
    Footprint inner = whole.inset(inset);
    double inradius = 1 / Math.tan(Math.PI / sides);
    double ratio = (inradius - inset) / inradius;
    assertThat(inner.area()).isCloseTo(whole.area() * ratio * ratio, within(1e-9));
    for (int i = 0; i < sides; i++) {
      Vector2D corner = whole.corners().get(i);
      Vector2D moved = inner.corners().get(i);
      assertThat(moved.getX())
          .as("corner keeps its number")
          .isCloseTo(corner.getX() * ratio, within(1e-9));
      assertThat(moved.getY()).isCloseTo(corner.getY() * ratio, within(1e-9));
    }
    EarthQuantity thin = EarthQuantity.of(EarthLayer.coat("a", 0.02, Demo.COAT), inner.area(), 0);
    EarthQuantity thick = EarthQuantity.of(EarthLayer.coat("a", 0.03, Demo.COAT), inner.area(), 0);
    assertThat(thick.dryMass().low()).isGreaterThan(thin.dryMass().low());
  }

  @Property(tries = 60, seed = "20261133")
  void membraneStripsCoverEveryFootprint(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @Scale(2) @DoubleRange(min = 1, max = 6) double side,
      @ForAll @Scale(2) @DoubleRange(min = 1, max = 6) double width) {
    Footprint footprint = Footprint.regular(sides, side);
    MembraneLayer layer = new MembraneLayer("sheet", width, 20, 0.15, 0);
    MembraneQuantity sheet = MembraneQuantity.of(layer, footprint);
    double covered = 0;
    for (double strip : sheet.strips()) {
      covered += strip * (width - 0.15);
    }
    covered += sheet.strips().get(sheet.strips().size() - 1) * 0.15;
    assertThat(covered).isGreaterThanOrEqualTo(footprint.area() * (1 - 1e-9));
    double total = sheet.strips().stream().mapToDouble(Double::doubleValue).sum();
    assertThat(sheet.rolls() * 20.0).isGreaterThanOrEqualTo(total * (1 - 1e-9));
  }
}
