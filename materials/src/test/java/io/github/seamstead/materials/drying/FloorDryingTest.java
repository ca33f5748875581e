package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.MembraneLayer;
import io.github.seamstead.materials.floor.MixPart;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FloorDryingTest {

  private static final EarthMoisture EARTH = EarthMoisture.sandyMix();
  private static final Weather AIR = Weather.constant(new AirState(18, 0.65, 0.2));

  private static FloorMix mix(String name, double placed) {
    return new FloorMix(
        name,
        List.of(MixPart.of("soil", 0.3, 1080, 0.1), MixPart.of("sand", 0.7, 1200, 0.04)),
        new Range(1700, 1780, 1860),
        placed,
        0.004);
  }

  private static BuildUp floor() {
    return BuildUp.level(
        Footprint.regular(6, 2.4),
        List.of(
            new MembraneLayer("sheet", 4, 25, 0.2, 0.1),
            EarthLayer.dryPack(mix("pack", 0.09)),
            EarthLayer.coat("first", 0.020, mix("coat", 0.18)),
            EarthLayer.coat("second", 0.010, mix("fine", 0.18))));
  }

  private static DryingSlab slab(int index) {
    return FloorDrying.slab(floor(), index, layer -> layer.mix().placingMoisture(), EARTH);
  }

  private static DryingForecast forecast(DryingSlab slab, DryingCriteria criteria) {
    return DryingForecast.of(slab, AIR, criteria, DryingDoubt.published(), 730);
  }

  @Test
  void aPackLiesSealedAndACoatOnTheDampPack() {
    assertThat(slab(1).baseThickness()).isZero();
    assertThat(slab(2).baseThickness()).isCloseTo(0.05, within(1e-12));
    assertThat(slab(2).baseMoisture()).isCloseTo(0.09, within(1e-12));
    // The second coat waits until all below it is dry.
    assertThat(slab(3).baseThickness()).isCloseTo(0.07, within(1e-12));
    assertThat(slab(3).baseMoisture()).isCloseTo(DryingCriteria.dryMoisture(EARTH), within(1e-12));
    assertThatThrownBy(() -> slab(0)).hasMessageContaining("must be a mixed layer");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.05, 0.09, 0.13})
  void aRammedPackIsWalkedOnAtOnceHoweverDamp(double placed) {
    DryingForecast forecast =
        forecast(
            DryingSlab.sealed(0.05, 1780, placed, EARTH), DryingCriteria.rammed(placed, EARTH));
    for (int state = 0; state < 2; state++) {
      assertThat(forecast.milestones().get(state).soonest()).isEqualTo(Optional.of(0.0));
      assertThat(forecast.milestones().get(state).latest()).isEqualTo(Optional.of(0.0));
    }
    assertThat(forecast.milestones().get(2).likely().orElseThrow()).isPositive();
  }

  @Test
  void aDampPackUnderACoatKeepsItWetLonger() {
    DryingCriteria criteria = DryingCriteria.wetLaid(0.14, EARTH);
    double onPack = likely(forecast(slab(2), criteria));
    double sealed = likely(forecast(DryingSlab.sealed(0.020, 1780, 0.18, EARTH), criteria));
    assertThat(onPack).isGreaterThan(2 * sealed);
  }

  @Test
  void dryIsOneMoistureHoweverWetTheCoatWasLaid() {
    DryingCriteria criteria = DryingCriteria.wetLaid(0.14, EARTH);
    double before = 0;
    for (double placed : new double[] {0.12, 0.15, 0.18, 0.21}) {
      DryingForecast forecast = forecast(DryingSlab.sealed(0.025, 1700, placed, EARTH), criteria);
      assertThat(forecast.milestones().get(2).moisture())
          .isEqualTo(EARTH.equilibriumMoisture(0.75));
      double latest = forecast.milestones().get(2).latest().orElseThrow();
      assertThat(latest).isGreaterThan(before);
      before = latest;
    }
  }

  @Test
  void airAboveTheLimitNeverDriesIt() {
    DryingForecast damp =
        DryingForecast.of(
            DryingSlab.sealed(0.02, 1780, 0.15, EARTH),
            Weather.constant(new AirState(15, 0.8, 0.2)),
            DryingCriteria.wetLaid(0.14, EARTH),
            DryingDoubt.published(),
            90);
    assertThat(damp.neverDries()).isTrue();
    assertThat(damp.milestones().get(2).soonest()).isEmpty();
  }

  @Test
  void theRangeIsInOrderOverADampPackInDampAir() {
    DryingForecast forecast =
        DryingForecast.of(
            slab(2),
            Weather.constant(new AirState(14, 0.8, 0.2)),
            DryingCriteria.wetLaid(0.14, EARTH),
            DryingDoubt.published(),
            180);
    for (Milestone m : forecast.milestones()) {
      double soonest = m.soonest().orElse(999.0);
      double likely = m.likely().orElse(999.0);
      assertThat(soonest).isLessThanOrEqualTo(likely);
      assertThat(likely).isLessThanOrEqualTo(m.latest().orElse(999.0));
    }
  }

  private static double likely(DryingForecast forecast) {
    return forecast.milestones().get(2).likely().orElseThrow();
  }

  @Test
  void aPackIsCoveredDampAndACoatIsAwaited() {
    BuildUp floor = floor();
    assertThat(FloorDrying.isCoveredDamp(floor, 0)).as("a sheet").isFalse();
    assertThat(FloorDrying.isCoveredDamp(floor, 1)).as("a pack under a coat").isTrue();
    assertThat(FloorDrying.isCoveredDamp(floor, 2)).as("a coat").isFalse();
    // The pack waits a day at most, a coat until it is dry.
    assertThat(FloorDrying.daysToNext(floor, 1, 40)).isEqualTo(1);
    assertThat(FloorDrying.daysToNext(floor, 1, 0.5)).isEqualTo(0.5);
    assertThat(FloorDrying.daysToNext(floor, 2, 40)).isEqualTo(40);
    assertThatThrownBy(() -> FloorDrying.daysToNext(floor, 2, -1))
        .hasMessageContaining("days to dry");
    BuildUp bare =
        BuildUp.level(
            Footprint.regular(6, 2.4),
            List.of(
                EarthLayer.dryPack(mix("pack", 0.09)),
                new MembraneLayer("sheet", 4, 25, 0.2, 0.1)));
    assertThat(FloorDrying.isCoveredDamp(bare, 0)).as("a pack under a sheet").isFalse();
    BuildUp last =
        BuildUp.level(Footprint.regular(6, 2.4), List.of(EarthLayer.dryPack(mix("pack", 0.09))));
    assertThat(FloorDrying.isCoveredDamp(last, 0)).as("a pack on top").isFalse();
  }

  @Test
  void theLowestLayerCountsAndNoLayerBeyondTheLast() {
    BuildUp floor =
        BuildUp.level(
            Footprint.regular(6, 2.4),
            List.of(
                EarthLayer.dryPack(mix("pack", 0.09)),
                EarthLayer.coat("coat", 0.02, mix("coat", 0.18))));
    DryingSlab coat = FloorDrying.slab(floor, 1, layer -> layer.mix().placingMoisture(), EARTH);
    assertThat(coat.baseThickness()).isCloseTo(0.05, within(1e-12));
    assertThat(coat.baseMoisture()).isCloseTo(0.09, within(1e-12));
    assertThatThrownBy(() -> slab(4)).hasMessageContaining("layer: given 4");
  }

  @Test
  void aCoatDriesByItsLimitAndAPackStandsAtOnce() {
    List<EarthLayer> layers = floor().earth().stream().map(q -> q.layer()).toList();
    DryingCriteria pack = FloorDrying.criteria(layers.get(0), 0.09, 0.14, EARTH);
    assertThat(pack.states().get(0).name()).isEqualTo("walkable, as rammed");
    DryingCriteria coat = FloorDrying.criteria(layers.get(1), 0.18, 0.15, EARTH);
    assertThat(coat.states().get(0)).isEqualTo(new DryingCriteria.State("firm", 0.15));
  }
}
