package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OrderListTest {

  private static final Source UNBRAKED =
      Source.found("", "Trailer guide: 600 kg load needs 150 kg tare or less", "", "");

  @Test
  void batchesAddToTheOrder() {
    List<BatchPlan> plans =
        Demo.FLOOR.earth().stream()
            .filter(q -> q.layer().mixed())
            .map(q -> BatchPlan.of(q, Demo.MIXER))
            .toList();
    OrderList order =
        OrderList.of(Demo.FLOOR, plans, List.of(), Optional.of(new Trailer(1.2, 600)), 0.010, 0.1);
    for (OrderLine line : order.lines()) {
      double batches =
          plans.stream()
              .mapToDouble(
                  plan ->
                      plan.likelyCount()
                          * plan.batch().parts().stream()
                              .filter(p -> p.part().name().equals(line.material()))
                              .mapToDouble(BatchPart::dryMass)
                              .sum())
              .sum();
      if (line.material().equals("chopped straw")) {
        assertThat(line.ordered()).as("whole bales").isEqualTo(20);
      }
      if (batches > 0) {
        assertThat(line.dryNeed().likely()).isCloseTo(batches, within(1e-9 * batches));
      }
      assertThat(line.ordered()).isGreaterThanOrEqualTo(line.rawNeed().likely() * 1.1);
      assertThat(line.trips() * Math.min(1.2 * 1e9, 600)).isGreaterThanOrEqualTo(line.ordered());
    }
    assertThat(order.trips()).isPositive();
    assertThat(order.cost()).isZero();
    double litres = order.finishes().get(0).litres().high();
    assertThat(order.cost(Map.of("damp-proof sheet", 60.0, "linseed oil", 8.0)))
        .isCloseTo(60 * order.membranes().get(0).rolls() + 8 * litres, within(1e-9));
    assertThatThrownBy(() -> order.cost(Map.of("paint", 3.0)))
        .hasMessageContaining("must be one of damp-proof sheet, linseed oil");
  }

  @Test
  void suppliesArePricedAndSteppedAndTheirNamesChecked() {
    OrderList order =
        OrderList.of(
            Demo.FLOOR,
            List.of(),
            List.of(
                new Supply("washed sand", 0.06, 500, 30, false),
                new Supply("chopped straw", 0.1, 18, 200, false)),
            Optional.of(new Trailer(1.2, 600)),
            0.010,
            0.1);
    OrderLine sand =
        order.lines().stream()
            .filter(l -> l.material().equals("washed sand"))
            .findFirst()
            .orElseThrow();
    assertThat(sand.ordered() % 500).isZero();
    assertThat(sand.cost()).isCloseTo(sand.ordered() * 0.03, within(1e-9));
    OrderLine straw =
        order.lines().stream()
            .filter(l -> l.material().equals("chopped straw"))
            .findFirst()
            .orElseThrow();
    // 30 for a tonne of sand, 200 for one of straw, and the clay soil is dug on the site.
    assertThat(order.cost()).isCloseTo(sand.ordered() * 0.03 + straw.ordered() * 0.2, within(1e-9));
    assertThat(sand.trips()).isZero();
    OrderLine soil =
        order.lines().stream()
            .filter(l -> l.material().equals("clay soil"))
            .findFirst()
            .orElseThrow();
    assertThat(soil.screenedOut()).isEqualTo(0.15);
    assertThat(soil.trips()).isPositive();
    assertThatThrownBy(
            () ->
                OrderList.of(
                    Demo.FLOOR,
                    List.of(),
                    List.of(new Supply("cement", 0, 25, 100, false)),
                    Optional.empty(),
                    0.01,
                    0.1))
        .hasMessageContaining("no layer uses it");
  }

  /** Mass is dry mass and its water; volume is dry mass over the dry density as it lies loose. */
  @Test
  void dampSandIsHeavierAndTakesItsTripsByItsDampMass() {
    double damp = 0.06;
    double payload = 600;
    double bucket = 0.010;
    OrderLine sand =
        OrderList.of(
                Demo.FLOOR,
                List.of(),
                List.of(new Supply("washed sand", damp, 1, 30, true)),
                Optional.of(new Trailer(1.2, payload)),
                bucket,
                0)
            .lines()
            .stream()
            .filter(line -> line.material().equals("washed sand"))
            .findFirst()
            .orElseThrow();
    double dry = sand.dryNeed().likely();
    assertThat(sand.rawNeed().likely()).isCloseTo(dry * 1.06, within(1e-9 * dry));
    assertThat(sand.rawNeed().high())
        .isCloseTo(sand.dryNeed().high() * 1.06, within(1e-9 * sand.dryNeed().high()));
    assertThat(sand.screenedOut()).isCloseTo(0, within(1e-9));
    double density =
        Demo.FLOOR.earth().stream()
            .flatMap(q -> q.layer().mix().parts().stream())
            .filter(part -> part.name().equals("washed sand"))
            .mapToDouble(MixPart::looseDryDensity)
            .findFirst()
            .orElseThrow();
    assertThat(sand.looseVolume() * density * 1.06)
        .isCloseTo(sand.ordered(), within(1e-6 * sand.ordered()));
    // Whole buckets: a load is at most the payload, and short of it by less than a bucket.
    double ofOneBucket = bucket * density * 1.06;
    assertThat(sand.trips() * payload).isGreaterThanOrEqualTo(sand.ordered());
    assertThat((sand.trips() - 1) * (payload - ofOneBucket)).isLessThan(sand.ordered());
  }

  @Test
  void aTrailerFillsByMassBeforeVolume() {
    OutsideCheck.of(
            "materials.floor", "loose volume of 600 kg wet sand at 1905 kg/m3, m3", UNBRAKED)
        .expect(0.315)
        .within(0.0005)
        .got(new Trailer(1.0, 600).load(1905, 0.010));
    StepRecorder steps = new StepRecorder();
    int trips = new Trailer(1.0, 600).trips(2.0, 1905, 0.01, steps);
    assertThat(trips).isEqualTo(7);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.trips", "trips"), trips);
  }

  @Test
  void aTruckTableInPrint() {
    Source table =
        Source.found("US Army", "TM 9-2320-366-10-1", "", "Table 2-15, body of 5.19 yd3 struck");
    double yard = 0.9144 * 0.9144 * 0.9144;
    double pound = 0.45359237;
    Trailer truck = new Trailer(5.19 * yard, 30_000);
    double earth = 2025 * pound / yard;
    double wetGravel = 3240 * pound / yard;
    OutsideCheck.of("materials.floor", "struck load of dry loose earth, lb", table)
        .expect(10_510)
        .within(2)
        .got(truck.load(earth, 0.01) * earth / pound);
    OutsideCheck.of("materials.floor", "struck load of wet gravel and sand, lb", table)
        .expect(16_816)
        .within(2)
        .got(truck.load(wetGravel, 0.01) * wetGravel / pound);
    assertThat(truck.load(wetGravel, 0.01) * wetGravel)
        .as("16 816 lb is 7628 kg, not the printed 7828")
        .isCloseTo(7628, within(1.0));
  }

  @Test
  void aPayloadBelowOneBucketIsRefused() {
    assertThatThrownBy(() -> new Trailer(1, 10).load(1905, 0.010))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("less than one bucket of 19.1 kg");
  }

  @Test
  void theOrderAllowsForStonesAndWater() {
    StepRecorder steps = new StepRecorder();
    double mass = OrderList.order(1000, 0.1, 0.2, 0.08, 250, steps);
    assertThat(mass).isEqualTo(1500);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.order", "order"), mass);
    assertThat(OrderList.order(0, 0.1, 0.2, 0.08, 250, Steps.none())).isZero();
  }
}
