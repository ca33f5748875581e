package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.materials.floor.BatchPart;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in two chapters is one number: areas, masses and counts of a whole plan add up. */
class SumsAgreeTest {

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model"})
  void clothOfTheShapesIsTheClothOfTheCover(String demo) {
    JobPlan plan = DemoJobs.plan(demo);
    var cover = plan.cover().orElseThrow();
    double shapes =
        cover.cuts().stream().mapToDouble(s -> s.pattern().clothArea() * s.pieces().size()).sum();
    assertThat(shapes).isCloseTo(cover.clothArea(), within(1e-9 * shapes));
    double perArea = plan.job().document().cover().orElseThrow().fabric().massPerArea();
    assertThat(cover.clothMass()).isCloseTo(shapes * perArea, within(1e-9 * cover.clothMass()));
    plan.handling()
        .ifPresent(
            handling ->
                assertThat(handling.bundle().mass())
                    .isCloseTo(cover.clothMass(), within(1e-9 * cover.clothMass())));
  }

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model"})
  void everyPieceIsLaidOrMissed(String demo) {
    JobPlan plan = DemoJobs.plan(demo);
    var cover = plan.cover().orElseThrow();
    var layout = plan.layout().orElseThrow();
    int wanted = cover.cuts().stream().map(CutShape::pieces).mapToInt(p -> p.size()).sum();
    int laid = layout.result().used().stream().mapToInt(use -> use.placements().size()).sum();
    int missed = layout.result().unplaced().stream().mapToInt(Shortfall::count).sum();
    assertThat(laid + missed).isEqualTo(wanted);
  }

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide"})
  void theJoinOrderHasEverySeamOfTheRingOnce(String demo) {
    JobPlan plan = DemoJobs.plan(demo);
    var joining = plan.joining().orElseThrow();
    assertThat(joining.order().orElseThrow().steps()).hasSize(joining.ring().joints().size());
    assertThat(joining.ring().joints()).hasSize(plan.cover().orElseThrow().panels().size());
  }

  @ParameterizedTest
  @ValueSource(strings = "seed-loft")
  void sectorsAreTheFloorAndLoadsAreTheirParts(String demo) {
    JobPlan plan = DemoJobs.plan(demo);
    var floor = plan.floor().orElseThrow();
    double sectors = floor.sectors().sectors().stream().mapToDouble(s -> s.area()).sum();
    assertThat(sectors).isCloseTo(floor.buildUp().footprint().area(), within(1e-6));
    for (var batches : floor.batches()) {
      double parts =
          batches.batch().parts().stream().mapToDouble(BatchPart::moistMass).sum()
              + batches.batch().water();
      assertThat(parts).isCloseTo(batches.batch().mass(), within(1e-6 * parts));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = "seed-loft")
  void theOrderHoldsEachMaterialOfTheLayersOnce(String demo) {
    JobPlan plan = DemoJobs.plan(demo);
    var floor = plan.floor().orElseThrow();
    var orders = floor.orders().orElseThrow();
    assertThat(orders.lines().stream().map(line -> line.material()))
        .doesNotHaveDuplicates()
        .isNotEmpty();
    assertThat(orders.lines().stream().mapToInt(line -> line.trips()).max().orElse(0))
        .isLessThanOrEqualTo(orders.trips());
    assertThat(orders.lines().stream().mapToDouble(line -> line.cost()).sum())
        .isCloseTo(orders.cost(), within(1e-6));
  }
}
