package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Ten square metres of floor, counted on paper. */
class FloorByHandTest {

  private static final double AREA = 10;
  private static final Footprint TEN =
      Footprint.of(new double[] {0, 5, 5, 0}, new double[] {0, 0, 2, 2});
  private static final FloorMix MIX =
      new FloorMix(
          "mix",
          List.of(MixPart.of("soil", 0.4, 1000, 0.1), MixPart.of("sand", 0.6, 1500, 0.05)),
          new Range(1600, 1800, 1900),
          0.12,
          0.004);

  private static void close(Range range, double low, double likely, double high) {
    assertThat(range.low()).isCloseTo(low, within(1e-9 * Math.abs(low) + 1e-15));
    assertThat(range.likely()).isCloseTo(likely, within(1e-9 * likely));
    assertThat(range.high()).isCloseTo(high, within(1e-9 * high));
  }

  /** 30 mm of coat over a face that is even to 2 mm: from 29 to 31 mm. */
  private static EarthQuantity coat() {
    return EarthQuantity.of(EarthLayer.coat("coat", 0.030, MIX), AREA, 0);
  }

  @Test
  void volumesAndMassesOfALayer() {
    EarthQuantity coat = coat();
    close(coat.compactedVolume(), 0.29, 0.30, 0.31);
    close(coat.dryMass(), 0.29 * 1600, 540, 0.31 * 1900);
    // 0.4 / 1000 + 0.6 / 1500 = 0.8 L for each kilogram.
    close(coat.looseVolume(), 0.29 * 1.28, 0.432, 0.31 * 1.52);
    close(coat.thicknessRange(), 0.029, 0.030, 0.031);
    EarthQuantity third = coat.part(0.3);
    assertThat(third.area()).isCloseTo(3, within(1e-12));
    assertThat(third.meanThickness()).isEqualTo(0.030);
    close(third.compactedVolume(), 0.087, 0.09, 0.093);
    close(third.dryMass(), 0.087 * 1600, 162, 0.093 * 1900);
    close(third.looseVolume(), 0.087 * 1.28, 0.1296, 0.093 * 1.52);
  }

  /** A part and the rest are the whole. */
  @Test
  void partsOfALayerAddUp() {
    EarthQuantity coat = coat();
    Range sum = coat.part(0.37).dryMass().plus(coat.part(0.63).dryMass());
    close(coat.dryMass(), sum.low(), sum.likely(), sum.high());
    assertThatThrownBy(() -> coat.part(1.1)).hasMessageContaining("share of the area");
  }

  @Test
  void thinLayersAreLaidOnEvenerFaces() {
    assertThat(EarthLayer.coat("skim", 0.012, MIX).evenness()).isCloseTo(0.0012, within(1e-15));
    assertThat(EarthLayer.coat("coat", 0.030, MIX).evenness()).isCloseTo(0.002, within(1e-15));
    FloorMix gravel = FloorMix.single("gravel", 1600, 1450, 0.02, 0.016);
    assertThat(EarthLayer.capillaryBreak(0.020, gravel).evenness()).isCloseTo(0.005, within(1e-15));
    assertThat(EarthLayer.capillaryBreak(0.100, gravel).evenness()).isCloseTo(0.010, within(1e-15));
  }

  /**
   * Relative doubts of a product add as squares (JCGM 100, 5.1.6, from memory): 2 mm of 30 and 300
   * kg/m³ of 1800, each of them 3.29 standard deviations wide.
   */
  @Test
  void doubtsOfAProductAddAsSquares() {
    double thickness = 0.002 / 3.29 / 0.030;
    double density = 300 / 3.29 / 1800;
    double relative = Math.hypot(thickness, density);
    Propagation.Doubt loose = coat().looseVolumeDoubt(Steps.none());
    assertThat(loose.value()).isCloseTo(0.432, within(1e-12));
    assertThat(loose.standardUncertainty()).isCloseTo(0.432 * relative, within(1e-6));
    BatchPlan plan = BatchPlan.of(coat(), new Mixer(0.06, 500, 0.010, 0.5));
    double load = plan.batch().dryMass();
    Propagation.Doubt count = plan.countDoubt(Steps.none());
    assertThat(count.value()).isCloseTo(540 / load, within(1e-9));
    assertThat(count.standardUncertainty()).isCloseTo(540 / load * relative, within(1e-3));
  }

  @Test
  void doubtsOfHoursCountMixingOnlyWhereThereIsAny() {
    CrewRates rates = CrewRates.beginners(4);
    Propagation.Doubt laying = WorkTime.hoursDoubt(coat(), Optional.empty(), rates, Steps.none());
    LayingRate rate = LayingRate.of(LayerRole.EARTH_COAT);
    double moved = 0.432 * rate.perCubicMetre().likely();
    double levelled = AREA * rate.perSquareMetre().likely();
    assertThat(laying.value()).isCloseTo(moved + levelled, within(1e-9));
    assertThat(laying.shares()).doesNotContainKey("the time for a load");
    BatchPlan plan = BatchPlan.of(coat(), new Mixer(0.06, 500, 0.010, 0.5));
    Propagation.Doubt all = WorkTime.hoursDoubt(coat(), Optional.of(plan), rates, Steps.none());
    // Eleven minutes for two people and each load.
    assertThat(all.value())
        .isCloseTo(moved + levelled + 540 / plan.batch().dryMass() * 11 * 2 / 60, within(1e-9));
    assertThat(all.standardUncertainty()).isGreaterThan(laying.standardUncertainty());
  }

  /** Four people, two of them at the mixer, on nine loads of eight to fifteen minutes. */
  @Test
  void hoursOfAllHandsAndByTheClock() {
    BatchPlan plan = BatchPlan.of(coat(), new Mixer(0.06, 500, 0.010, 0.5));
    CrewRates rates = CrewRates.beginners(4);
    WorkTime time = WorkTime.of(coat(), Optional.of(plan), rates);
    LayingRate rate = LayingRate.of(LayerRole.EARTH_COAT);
    Range loads = plan.count();
    Range loose = coat().looseVolume();
    double low =
        loads.low() * 8 * 2 / 60
            + loose.low() * rate.perCubicMetre().low()
            + AREA * rate.perSquareMetre().low();
    double likely =
        loads.likely() * 11 * 2 / 60
            + loose.likely() * rate.perCubicMetre().likely()
            + AREA * rate.perSquareMetre().likely();
    double high =
        loads.high() * 15 * 2 / 60
            + loose.high() * rate.perCubicMetre().high()
            + AREA * rate.perSquareMetre().high();
    close(time.personHours(), low, likely, high);
    close(
        time.elapsedHours(),
        Math.max(low / 4, loads.low() * 8 / 60),
        Math.max(likely / 4, loads.likely() * 11 / 60),
        Math.max(high / 4, loads.high() * 15 / 60));
    // With forty people the drum sets the pace, and not the hands.
    WorkTime many = WorkTime.of(coat(), Optional.of(plan), CrewRates.beginners(40));
    close(
        many.elapsedHours(),
        loads.low() * 8 / 60,
        loads.likely() * 11 / 60,
        loads.high() * 15 / 60);
    // In days of six hours, and at the slow end.
    assertThat(time.workingDays(6 * 3600))
        .isCloseTo(time.elapsedHours().likely() / 6, within(1e-12));
    assertThat(time.atPace(1).personHours().likely()).isCloseTo(high, within(1e-9));
    assertThat(time.atPace(1).elapsedHours().likely())
        .isCloseTo(time.elapsedHours().high(), within(1e-9));
    assertThat(WorkTime.likelyHours(coat(), Optional.empty(), rates, Steps.none()))
        .isCloseTo(likely - loads.likely() * 11 * 2 / 60, within(1e-9));
  }

  @Test
  void aTarpaulinIsSlowerThanADrum() {
    CrewRates feet = CrewRates.onTarpaulin(1);
    assertThat(feet.peopleAtMixer()).isEqualTo(1);
    assertThat(CrewRates.onTarpaulin(5).peopleAtMixer()).isEqualTo(2);
    assertThat(feet.minutesPerLoad().likely())
        .isGreaterThan(CrewRates.beginners(1).minutesPerLoad().likely());
    // Forty litres at 2200 kg/m³.
    assertThat(Mixer.tarpaulin(0.010).massLimit()).isCloseTo(88, within(1e-9));
    assertThat(Mixer.tarpaulin(0.010).workingVolume()).isEqualTo(0.040);
  }

  @Test
  void earthDugAndCarted() {
    // 1.3 m³ loose were one in the ground.
    close(GroundWork.hoursForLoose(1.3), 1.7, 2.1, 2.9);
    assertThat(GroundWork.hoursForLoose(0).high()).isZero();
    Supply dug = Supply.dug("earth", 0.12, 5);
    assertThat(dug.hauled()).isFalse();
    assertThat(dug.deliveryMoisture()).isEqualTo(0.12);
    assertThat(dug.pricePerTonne()).isEqualTo(5);
    // 750 kg gross and 150 kg empty carry 600 kg.
    assertThat(Trailer.fromPlate(1, 750, 150).payload()).isEqualTo(600);
    assertThatThrownBy(() -> Trailer.fromPlate(1, 150, 150)).hasMessageContaining("150 kg empty");
    // 1250 kg/m³ dry with 6 % of water.
    assertThat(MixPart.of("sand", 1, 1250, 0.06).looseMoistDensity()).isCloseTo(1325, within(1e-9));
    assertThat(new Trailer(1, 19.06).load(1905, 0.010)).isPositive();
  }

  private static OrderLine sand(double step, double reserve, double screened) {
    FloorMix sand =
        new FloorMix(
            "sand",
            List.of(new MixPart("sand", 1, 1250, 0.06, screened)),
            new Range(1520, 1600, 1680),
            0.06,
            0.004);
    BuildUp floor =
        BuildUp.level(
            TEN, List.of(new EarthLayer("bed", LayerRole.LEVELLING, 0.05, 0, sand, false)));
    return OrderList.of(
            floor,
            List.of(),
            List.of(new Supply("sand", 0.06, step, 50, true)),
            Optional.of(new Trailer(1, 400)),
            0.01,
            reserve)
        .lines()
        .get(0);
  }

  /** 800 kg of dry sand, 760 to 840; of it a fifth stays on the screen; 6 % of water. */
  @Test
  void whatIsScreenedOutIsOrderedToo() {
    OrderLine line = sand(1, 0, 0.2);
    close(line.dryNeed(), 760, 800, 840);
    close(line.rawNeed(), 760 * 1.06 / 0.8, 1060, 840 * 1.06 / 0.8);
    assertThat(line.ordered()).isCloseTo(1060, within(1e-9));
    assertThat(line.looseMoistDensity()).isCloseTo(1325, within(1e-9));
    assertThat(line.coversHigh()).as("1060 kg for at most 1113").isFalse();
    assertThat(sand(1113.0, 0, 0.2).coversHigh()).as("1113 kg").isTrue();
  }

  @Test
  void whatLiesThereIsTakenOff() {
    OrderLine line = sand(100, 0, 0);
    // 848 kg in steps of 100 kg, three trips of 400 kg, 45 of money.
    assertThat(line.ordered()).isEqualTo(900);
    OrderLine less = line.less(450);
    assertThat(less.ordered()).isEqualTo(500);
    assertThat(less.looseVolume()).isCloseTo(line.looseVolume() * 5 / 9, within(1e-12));
    assertThat(less.trips()).isEqualTo(2);
    assertThat(less.cost()).isCloseTo(25, within(1e-9));
    assertThat(line.less(900).ordered()).isZero();
    assertThat(line.less(900).trips()).isZero();
  }

  /** One material in two layers, with two loose densities: volumes add, not densities. */
  @Test
  void oneMaterialOfTwoLayersIsOneLine() {
    FloorMix loose = FloorMix.single("sand", 1600, 1000, 0, 0.004);
    FloorMix dense = FloorMix.single("sand", 1600, 1600, 0, 0.004);
    BuildUp floor =
        BuildUp.level(
            TEN,
            List.of(
                new EarthLayer("a", LayerRole.LEVELLING, 0.05, 0, loose, false),
                new EarthLayer("b", LayerRole.LEVELLING, 0.05, 0, dense, false)));
    OrderList order = OrderList.of(floor, List.of(), List.of(), Optional.empty(), 0.01, 0);
    assertThat(order.lines()).hasSize(1);
    OrderLine line = order.lines().get(0);
    assertThat(line.ordered()).isCloseTo(1600, within(1e-9));
    // 800 kg at 1000 and 800 at 1600: 0.8 and 0.5 m³.
    assertThat(line.looseVolume()).isCloseTo(1.3, within(1e-9));
  }

  @Test
  void aFallIsHighestFarthestFromItsFoot() {
    double[] directions = {0, 0.3, Math.PI / 2, 2.5, Math.PI, 4, 5.5};
    for (double direction : directions) {
      Fall fall = new Fall(0.02, direction);
      Vector2D down = Vector2D.of(Math.cos(direction), Math.sin(direction));
      double least = 1;
      for (Vector2D corner : TEN.corners()) {
        least = Math.min(least, fall.heightAt(TEN, corner));
      }
      assertThat(least).as("the lowest corner is the mark").isCloseTo(0, within(1e-12));
      Vector2D middle = TEN.centroid();
      double drop = fall.heightAt(TEN, middle) - fall.heightAt(TEN, middle.add(down.multiply(0.5)));
      assertThat(drop).as("a centimetre in half a metre").isCloseTo(0.01, within(1e-12));
      Vector2D across = Vector2D.of(-down.getY(), down.getX());
      assertThat(fall.heightAt(TEN, middle.add(across)))
          .isCloseTo(fall.heightAt(TEN, middle), within(1e-12));
      assertThat(fall.meanExtra(TEN)).isCloseTo(fall.heightAt(TEN, middle), within(1e-12));
    }
  }

  @Test
  void waxIsOneCoatAndOilFour() {
    assertThat(FinishLayer.wax().rates()).hasSize(1);
    assertThat(FinishLayer.linseedOil().allCoats().likely()).isCloseTo(0.375, within(1e-12));
    assertThat(FinishLayer.wax().allCoats().likely()).isCloseTo(0.02, within(1e-12));
  }

  @Test
  void theWettestPartIsTheOneToDry() {
    // 12 % aimed at; soil brings 0.3 · 0.30 = 9 points, sand 0.7 · 0.06 = 4.2 points.
    FloorMix wet =
        new FloorMix(
            "wet",
            List.of(MixPart.of("sand", 0.7, 1500, 0.06), MixPart.of("soil", 0.3, 1000, 0.30)),
            Range.exactly(1800),
            0.12,
            0.004);
    FloorMix.DryFirst first = wet.dryFirst().orElseThrow();
    assertThat(first.part().name()).isEqualTo("soil");
    assertThat(first.moisture()).isCloseTo(0.30 - 0.012 / 0.3, within(1e-12));
    // The drier of two parts brings more water where there is much more of it.
    FloorMix sandy =
        new FloorMix(
            "sandy",
            List.of(MixPart.of("soil", 0.1, 1000, 0.30), MixPart.of("sand", 0.9, 1500, 0.12)),
            Range.exactly(1800),
            0.12,
            0.004);
    assertThat(sandy.dryFirst().orElseThrow().part().name()).isEqualTo("sand");
  }

  /** Peat of 0.2 m under 400 kg/m2: squeezed by the load and shortened by rot, as a sum. */
  @Test
  void theDoubtOfSettlementIsAboutItsLikelyValue() {
    Settlement.doubt(0.2, 400, Steps.none());
    double value = Settlement.doubt(0.2, 400, Steps.none()).value();
    assertThat(Settlement.doubt(0.4, 400, Steps.none()).value())
        .isCloseTo(2 * value, within(1e-12));
    double bare = Settlement.doubt(0.2, 0, Steps.none()).value();
    // Without a load it only rots; the squeeze is that of the calculation itself.
    assertThat(bare).isPositive().isLessThan(value);
    assertThat(Settlement.doubt(0, 400, Steps.none()).value()).isZero();
  }

  @Test
  void coarseGrainsAreAdvisedAgainst() {
    FloorMix coarse = new FloorMix("coat", MIX.parts(), MIX.compactedDryDensity(), 0.12, 0.012);
    BuildUp floor = BuildUp.level(TEN, List.of(EarthLayer.coat("coat", 0.030, coarse)));
    // A third of 30 mm.
    assertThat(floor.advice())
        .anyMatch(text -> text.contains("30 mm over grains of 12 mm") && text.contains("10 mm"));
    BuildUp fine = BuildUp.level(TEN, List.of(EarthLayer.coat("coat", 0.030, MIX)));
    assertThat(fine.advice()).noneMatch(text -> text.contains("drag under the trowel"));
  }

  @Test
  void wordsFollowTheLayer() {
    SectorPlan sectors = SectorPlan.of(TEN, 0);
    FloorMix gravel = FloorMix.single("gravel", 1600, 1450, 0.02, 0.016);
    List<FloorStep> bare =
        FloorSteps.of(
            BuildUp.level(
                TEN,
                List.of(
                    EarthLayer.levelling(0.05, gravel), EarthLayer.capillaryBreak(0.1, gravel))),
            sectors);
    assertThat(work(bare, "Lay the gravel")).contains("washed stone without fines");
    assertThat(work(bare, "Lay the levelling")).contains("do not build hills");
    assertThat(work(bare, "Keep it")).contains("Without oil or wax it dusts");
    List<FloorStep> oiled =
        FloorSteps.of(
            BuildUp.level(
                TEN,
                List.of(
                    EarthLayer.coat("coat", 0.03, MIX),
                    FinishLayer.linseedOil(),
                    FinishLayer.wax())),
            sectors);
    assertThat(work(oiled, "Keep it")).contains("Oil or wax worn paths again");
    assertThat(work(oiled, "Oil it")).contains("as much as it drinks");
    assertThat(work(oiled, "Wax it")).contains("thin and warm by hand");
  }

  private static String work(List<FloorStep> steps, String title) {
    return String.join(
        " ",
        steps.stream().filter(s -> s.title().startsWith(title)).findFirst().orElseThrow().work());
  }
}
