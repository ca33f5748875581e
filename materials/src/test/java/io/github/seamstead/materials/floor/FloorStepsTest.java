package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class FloorStepsTest {

  private static final Source RATES = LayingRate.MOVING;

  @Test
  void everyLayerHasItsStepFromTheGroundUp() {
    List<FloorStep> steps = FloorSteps.of(Demo.FLOOR, SectorPlan.of(Demo.FOOTPRINT, 0));
    assertThat(steps)
        .extracting(FloorStep::title)
        .containsExactly(
            "Dig out",
            "Lead water away",
            "Set the levels from the centre peg",
            "Set the edging",
            "Lay the gravel: capillary break",
            "Lay the damp-proof sheet: damp-proof sheet",
            "Ram the dry pack: dry pack",
            "Moisten the base for first coat",
            "Lay the coat: first coat",
            "Let it dry evenly: first coat",
            "Oil it: linseed oil",
            "Keep it");
    FloorStep.Quantity spoil = steps.get(0).quantities().get(2);
    double hole = Demo.FOOTPRINT.grossArea() * 0.175;
    assertThat(spoil.value().likely()).isCloseTo(hole * 1.3, within(1e-9));
    assertThat(steps.get(10).work()).anyMatch(s -> s.contains("rags"));
    StepRecorder recorder = new StepRecorder();
    double bank = GroundWork.bank(27, 0.195, recorder);
    assertThat(bank).isCloseTo(5.265, within(1e-9));
    DerivationChecks.assertFollowsTo(recorder.derivation("materials.floor.dig", "V"), bank);
  }

  @Test
  void hoursGrowWithWhatIsMovedAndNotWithTheAreaAlone() {
    double thin = hours(0.02);
    double thick = hours(0.10);
    assertThat(thick).isGreaterThan(2 * thin);
    Range rate = LayingRate.of(LayerRole.CAPILLARY_BREAK).perCubicMetre();
    OutsideCheck.of("materials.floor", "loading and levelling sand by hand, h/m3", RATES)
        .expect(1.00 + 1.25)
        .within((rate.high() - rate.low()) / 2)
        .got((rate.high() + rate.low()) / 2);
  }

  private static double hours(double thickness) {
    EarthLayer gravel = EarthLayer.capillaryBreak(thickness, Demo.GRAVEL);
    EarthQuantity quantity = BuildUp.level(Demo.FOOTPRINT, List.of(gravel)).earth().get(0);
    return WorkTime.of(quantity, Optional.empty(), CrewRates.beginners(3)).personHours().likely();
  }

  @Test
  void looseLayersAreBarrowedToo() {
    // 10 m² × 0.1 m × 1600 kg/m³ = 1600 kg dry, 1632 kg damp, 1.103 m³ loose.
    EarthQuantity gravel = EarthQuantity.of(EarthLayer.capillaryBreak(0.1, Demo.GRAVEL), 10, 0);
    assertThat(gravel.barrowTrips(0.080, 1000)).isEqualTo(14);
    assertThat(gravel.barrowTrips(1, 100)).isEqualTo(17);
    assertThat(gravel.barrowTrips(1, 102.1)).isEqualTo(16);
  }

  @Test
  void dampSandIsOrderedAndFetchedWithItsWater() {
    // 10 m² × 50 mm × 1600 kg/m³ = 800 kg dry; at 6 % of water 848 kg; loose 1250 kg/m³ dry.
    FloorMix sand = FloorMix.single("sand", 1600, 1250, 0.06, 0.004);
    Footprint ten = Footprint.of(new double[] {0, 5, 5, 0}, new double[] {0, 0, 2, 2});
    BuildUp floor = BuildUp.level(ten, List.of(EarthLayer.levelling(0.05, sand)));
    OrderList order =
        OrderList.of(
            floor,
            List.of(),
            List.of(new Supply("sand", 0.06, 1, 50, true)),
            Optional.of(new Trailer(1, 400)),
            0.01,
            0);
    OrderLine line = order.lines().get(0);
    assertThat(line.rawNeed().likely()).isCloseTo(848, within(1e-9));
    assertThat(line.ordered()).isCloseTo(848, within(1e-9));
    assertThat(line.looseVolume()).isCloseTo(0.64, within(1e-9));
    // 400 kg over 1325 kg/m³ is 0.302 m³ a trip.
    assertThat(line.trips()).isEqualTo(3);
    assertThat(order.cost()).isCloseTo(42.4, within(1e-9));
    assertThat(order.cost(Map.of())).isCloseTo(42.4, within(1e-9));
  }

  @Test
  void aSheetReachesUpTheEdgeOnBothSides() {
    Footprint square = Footprint.of(new double[] {0, 3, 3, 0}, new double[] {0, 0, 3, 3});
    double flat = sheet(square, 0).areaWithLaps();
    double turned = sheet(square, 0.1).areaWithLaps();
    assertThat(turned).isGreaterThan(flat);
    // One strip of 4 m: 3.2 m by 3.2 m of it is needed, laps none.
    assertThat(turned).isGreaterThanOrEqualTo(3.2 * 3.2 - 1e-9);
  }

  private static MembraneQuantity sheet(Footprint footprint, double upstand) {
    return MembraneQuantity.of(new MembraneLayer("sheet", 4, 25, 0.2, upstand), footprint);
  }

  @Test
  void impossibleWaterIsRefusedWithTheMostThatFits() {
    FloorMix slurry =
        new FloorMix(
            "coat",
            List.of(MixPart.of("earth", 1, 1200, 0.1)),
            new Range(1673, 1780, 1887),
            0.50,
            0.004);
    assertThatThrownBy(() -> EarthLayer.coat("coat", 0.025, slurry))
        .hasMessageContaining("given 50.0 %")
        .hasMessageContaining("must be at most 22.0 %")
        .hasMessageContaining("18.4 %");
    FloorMix wet = new FloorMix("coat", slurry.parts(), slurry.compactedDryDensity(), 0.20, 0.004);
    assertThat(EarthLayer.coat("coat", 0.025, wet).waterAdvice().orElseThrow())
        .contains("18.4 %")
        .contains("2.7 %");
    assertThatThrownBy(() -> EarthLayer.dryPack(wet)).hasMessageContaining("at most 18.4 %");
  }

  @Test
  void roundAndCrookedRoomsAreCutIntoSectors() {
    Footprint round = Footprint.round(6);
    assertThat(round.area()).isCloseTo(Math.PI * 9, within(1e-9));
    SectorPlan plan = SectorPlan.of(round, 0);
    assertThat(plan.sectors()).hasSize(16);
    assertThat(plan.area()).isCloseTo(round.area(), within(1e-9));
    assertThat(plan.sectors().get(plan.door() - 1).order()).isEqualTo(16);
    // The first sector lies nearest the reader, in the middle.
    assertThat(plan.sectors().get(0).labelPoint().getX()).isCloseTo(0, within(1e-9));
    assertThat(plan.sectors().get(0).labelPoint().getY()).isNegative();
    assertThat(SectorPlan.of(Footprint.regular(64, 0.5), 63).sectors()).hasSize(16);
    assertThat(SectorPlan.of(Footprint.regular(25, 1), 24).area())
        .isCloseTo(Footprint.regular(25, 1).area(), within(1e-9));
    Footprint ell = Footprint.of(new double[] {0, 6, 6, 2, 2, 0}, new double[] {0, 0, 2, 2, 6, 6});
    assertThat(SectorPlan.of(ell, 0).area()).isCloseTo(20, within(1e-9));
    Footprint horseshoe =
        Footprint.of(new double[] {0, 6, 6, 5, 5, 1, 1, 0}, new double[] {0, 0, 4, 4, 1, 1, 4, 4});
    assertThat(horseshoe.screedCentre()).isEmpty();
    assertThatThrownBy(() -> SectorPlan.of(horseshoe, 0)).hasMessageContaining("in two parts");
    assertThat(
            Footprint.runsClockwise(List.of(Vector2D.ZERO, Vector2D.of(0, 1), Vector2D.of(1, 1))))
        .isTrue();
  }
}
