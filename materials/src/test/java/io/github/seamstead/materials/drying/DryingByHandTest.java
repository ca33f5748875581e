package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air, earth and days with numbers that a pencil gives. */
class DryingByHandTest {

  private static final double DAY = 86_400;
  private static final EarthMoisture EARTH = EarthMoisture.sandyMix();

  /** From the table of saturation vapour pressure at whole degrees, in kPa. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.657",
    "5, 0.872",
    "10, 1.228",
    "16, 1.818",
    "20, 2.338",
    "30, 4.243",
    "40, 7.376"
  })
  void theTableOfSaturationPressure(double temperature, double kilopascals) {
    OutsideCheck.of(
            "materials.drying",
            "table of saturation vapour pressure at " + temperature + " degC, kPa",
            Psychrometrics.FAO_56.at("annex 2, table 2.3"))
        .expect(kilopascals)
        .within(0.0006)
        .got(Psychrometrics.saturationPressure(temperature) / 1000);
  }

  @Test
  void humidityAndDensityOfTheAir() {
    // 1.1692 kPa is half of what air of 20 degC can hold.
    assertThat(Psychrometrics.relativeHumidity(1169.15, 20)).isCloseTo(0.5, within(1e-4));
    // 2338.3 / (461.5 * 293.15) = 17.28 g/m3, the tables' 17.3.
    OutsideCheck.of(
            "materials.drying",
            "vapour in saturated air of 20 degC, g/m3",
            Source.fromMemory("", "Tables of saturated air", "", "17.3 g/m3 at 20 degC"))
        .expect(17.3)
        .within(0.05)
        .got(1000 * Psychrometrics.vapourDensity(2338.3, 20));
    assertThat(new AirState(20, 0.5, 0.1).vapourPressure()).isCloseTo(1169.15, within(0.1));
  }

  /**
   * Beyond 60 degC nothing is known of the vapour; the humidity is kept for the refusal to tell.
   */
  @Test
  void airIsWarmedWithinItsRange() {
    AirState air = new AirState(20, 0.5, 0.2);
    AirState changed = air.changed(10, 3);
    // 0.5 * 2.3383 / 4.2431
    assertThat(changed.relativeHumidity()).isCloseTo(0.2755, within(1e-4));
    assertThat(changed.temperature()).isEqualTo(30);
    assertThat(changed.speed()).isCloseTo(0.6, within(1e-15));
    assertThatThrownBy(() -> air.changed(45, 1)).hasMessageContaining("air temperature");
    assertThatThrownBy(() -> air.changed(-20, 1)).hasMessageContaining("frost");
  }

  /** The two stated points of the sorption curve, and the diffusivity half-way in the exponent. */
  @Test
  void theEarthHoldsItsStatedPoints() {
    EarthMoisture earth = new EarthMoisture(1e-10, 4e-9, 0.25, 0.015, 0.027);
    assertThat(earth.equilibriumMoisture(0.5)).isCloseTo(0.015, within(1e-12));
    assertThat(earth.equilibriumMoisture(0.8)).isCloseTo(0.027, within(1e-12));
    assertThat(earth.equilibriumMoisture(0)).isZero();
    assertThat(earth.diffusivity(0)).isCloseTo(1e-10, within(1e-22));
    assertThat(earth.diffusivity(0.25)).isCloseTo(4e-9, within(1e-21));
    assertThat(earth.diffusivity(0.6)).isCloseTo(4e-9, within(1e-21));
    // Half the moisture: the square root of 40 times the dry one.
    assertThat(earth.diffusivity(0.125)).isCloseTo(1e-10 * Math.sqrt(40), within(1e-21));
    EarthMoisture twice = earth.timesDiffusivity(2);
    assertThat(twice.dryDiffusivity()).isEqualTo(2e-10);
    assertThat(twice.wetDiffusivity()).isEqualTo(8e-9);
    assertThat(twice.moistureAt80()).isEqualTo(0.027);
  }

  /** Half a metre of coat and base: 1800 kg/m3 * (0.03 * 0.2 + 0.05 * 0.04) = 14.4 kg/m2. */
  @Test
  void theWaterOfCoatAndBase() {
    DryingSlab slab = DryingSlab.sealed(0.03, 1800, 0.2, EARTH).drawingInto(0.05, 0.04);
    assertThat(slab.initialWater()).isCloseTo(14.4, within(1e-12));
    DryingCurve curve =
        DryingForecast.simulate(slab, Weather.constant(new AirState(18, 0.6, 0.2)), 5);
    double coat = curve.finalMoisture() * 0.03 * 1800;
    double held = 0;
    double top = 0;
    for (DryingCurve.ProfilePoint point : curve.profile(5)) {
      double size = 2 * (point.depth() - top);
      top += size;
      held += 1800 * size * point.moisture();
      assertThat(point.moisture()).isBetween(0.0, 0.2);
    }
    // The cells fill coat and base and hold what has not gone.
    assertThat(top).isCloseTo(0.08, within(1e-12));
    assertThat(held).isCloseTo(14.4 - curve.evaporated(), within(1e-9));
    assertThat(curve.waterLeft()).isCloseTo(held, within(1e-9));
    assertThat(coat).isLessThan(held);
    assertThat(curve.profiles()).isEqualTo(6);
    assertThat(curve.slab()).isEqualTo(slab);
    assertThatThrownBy(() -> curve.profile(6)).hasMessageContaining("day");
  }

  /** In the first days the wet floor gives off at an even rate, so that its curve is a line. */
  @Test
  void aCurveIsReadBetweenItsPoints() {
    AirState air = new AirState(18, 0.6, 0.2);
    DryingSlab slab = DryingSlab.sealed(0.05, 1750, 0.2, EARTH);
    DryingCurve curve = DryingForecast.simulate(slab, Weather.constant(air), 1);
    double rate = Evaporation.wetFloor(air, Steps.none());
    for (double hour : new double[] {1.3, 5.7, 12.9, 20.1}) {
      double gone = rate * hour * 3600;
      assertThat(curve.evaporatedAt(hour * 3600)).isCloseTo(gone, within(2e-3 * gone));
      double moisture = 0.2 - gone / (1750 * 0.05);
      assertThat(curve.coatMoistureAt(hour * 3600)).isCloseTo(moisture, within(2e-5));
      assertThat(curve.timeTo(moisture).orElseThrow()).isCloseTo(hour * 3600, within(120.0));
    }
    assertThat(curve.timeTo(0.2).orElseThrow()).isCloseTo(0, within(1e-6));
    assertThat(curve.timeTo(0.21)).isEqualTo(Optional.of(0.0));
    assertThat(curve.timeTo(0.01)).isEmpty();
    assertThat(curve.duration()).isEqualTo(DAY);
    assertThatThrownBy(() -> curve.evaporatedAt(DAY + 1)).hasMessageContaining("time");
    List<DryingCurve.Point> points = curve.points();
    assertThat(points.get(0).time()).isZero();
    assertThat(points.get(0).coatMoisture()).isCloseTo(0.2, within(1e-12));
    DryingCurve.Point last = points.get(points.size() - 1);
    assertThat(last.time()).isEqualTo(DAY);
    assertThat(last.coatMoisture()).isEqualTo(curve.finalMoisture());
    assertThat(last.evaporated()).isEqualTo(curve.evaporated());
  }

  @Test
  void equalCurvesAreEqual() {
    Weather air = Weather.constant(new AirState(18, 0.6, 0.2));
    DryingSlab slab = DryingSlab.sealed(0.02, 1750, 0.2, EARTH);
    DryingCurve one = DryingForecast.simulate(slab, air, 2);
    DryingCurve other = DryingForecast.simulate(slab, air, 2);
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(one).isNotEqualTo(DryingForecast.simulate(slab, air, 3));
    DryingSlab thicker = DryingSlab.sealed(0.021, 1750, 0.2, EARTH);
    assertThat(one.hashCode()).isNotEqualTo(DryingForecast.simulate(thicker, air, 2).hashCode());
    assertThat(one.toString()).startsWith("DryingCurve[");
  }

  /** Two days are seen, then the last one stands for all that follow. */
  @Test
  void theLastDayOfTheWeatherIsRepeated() {
    List<AirState> hours = new ArrayList<>();
    for (int h = 0; h < 48; h++) {
      hours.add(new AirState(h < 24 ? 10 : 20, h < 24 ? 0.9 : h < 36 ? 0.4 : 0.6, 0.1 + h / 100.0));
    }
    Weather weather = Weather.hourly(hours);
    assertThat(weather.repeated()).isEqualTo(24);
    assertThat(weather.index(0)).isZero();
    assertThat(weather.index(47)).isEqualTo(47);
    assertThat(weather.index(48)).isEqualTo(24);
    assertThat(weather.index(50)).isEqualTo(26);
    assertThat(weather.index(72)).isEqualTo(24);
    // Of thirty hours the last twenty-four: hour 31 is the one after the seventh.
    assertThat(Weather.hourly(hours.subList(0, 30)).index(31)).isEqualTo(7);
    assertThat(weather.settledHumidity()).isCloseTo(0.5, within(1e-12));
    // 24 hours of 90 %, 12 of 40 % and 12 of 60 %; air at 0.1 to 0.57 m/s.
    AirState mean = weather.mean();
    assertThat(mean.temperature()).isCloseTo(15, within(1e-12));
    assertThat(mean.relativeHumidity()).isCloseTo(0.7, within(1e-12));
    assertThat(mean.speed()).isCloseTo(0.335, within(1e-12));
    Weather later = weather.after(0.5);
    assertThat(later.states()).hasSize(36);
    assertThat(later.states().get(0)).isEqualTo(hours.get(12));
    assertThat(weather.after(1).states().get(0)).isEqualTo(hours.get(24));
    assertThat(weather.after(9).states()).isEqualTo(hours.subList(24, 48));
    assertThat(Weather.daily(hours.subList(0, 3)).repeated()).isEqualTo(1);
    assertThat(Weather.daily(hours.subList(0, 3)).interval()).isEqualTo(DAY);
    Weather warmer = weather.changed(2, 2);
    assertThat(warmer.states().get(0).temperature()).isEqualTo(12);
    assertThat(warmer.states().get(10).speed()).isCloseTo(0.4, within(1e-12));
    assertThat(warmer.interval()).isEqualTo(3600);
  }

  /** The day is warmest in the hour of three and coldest twelve hours before. */
  @Test
  void aDaySwingsBetweenItsExtremes() {
    Weather weather = Weather.fromDays(List.of(new Weather.DayWeather(8, 20, 0.6, 0.25)));
    // Half an hour from the peak: 14 + 6 cos 7.5 degrees.
    double peak = 14 + 6 * Math.cos(Math.toRadians(7.5));
    assertThat(weather.states().get(14).temperature()).isCloseTo(peak, within(1e-9));
    assertThat(weather.states().get(15).temperature()).isCloseTo(peak, within(1e-9));
    assertThat(weather.states().get(2).temperature()).isCloseTo(28 - peak, within(1e-9));
    assertThat(weather.states().get(3).temperature()).isCloseTo(28 - peak, within(1e-9));
    assertThat(weather.states().get(0).speed()).isEqualTo(0.25);
    assertThat(weather.states().get(14).relativeHumidity())
        .isCloseTo(
            0.6
                * Psychrometrics.meanSaturationPressure(20, 8)
                / Psychrometrics.saturationPressure(peak),
            within(1e-9));
    assertThatThrownBy(() -> new Weather.DayWeather(12, 11, 0.6, 0.2))
        .hasMessageContaining("must not be above it");
    assertThatThrownBy(() -> new Weather.DayWeather(12, 65, 0.6, 0.2))
        .hasMessageContaining("air temperature");
    assertThatThrownBy(() -> new Weather.DayWeather(12, 15, 1.6, 0.2))
        .hasMessageContaining("mean relative humidity");
    assertThatThrownBy(() -> new Weather.DayWeather(12, 15, 0.6, 0))
        .hasMessageContaining("air speed");
    assertThatThrownBy(() -> new Weather(30, List.of(new AirState(12, 0.5, 0.1))))
        .hasMessageContaining("weather interval");
    assertThatThrownBy(() -> Psychrometrics.meanSaturationPressure(10, 11))
        .hasMessageContaining("given lowest 11 above highest 10");
  }

  /** The skin of the driest hour; never longer than the two hours of a cool damp day. */
  @Test
  void theOpenTimeOfADay() {
    AirState dry = new AirState(25, 0.4, 2);
    Weather hours = Weather.hourly(List.of(new AirState(15, 0.9, 0.1), dry));
    assertThat(OpenTime.driest(hours)).isEqualTo(dry);
    Range range = OpenTime.of(dry, 1750, 0.2, 0.14);
    double likely = 1750 * 0.002 * 0.06 / Evaporation.wetFloor(dry, Steps.none());
    assertThat(range.likely()).isCloseTo(likely, within(1e-9));
    assertThat(range.low()).isCloseTo(likely / 1.4, within(1e-9));
    assertThat(range.high()).isCloseTo(likely * 1.4, within(1e-9));
    Range day = OpenTime.onTheDay(hours, 1750, 0.2, 0.14);
    assertThat(day)
        .isEqualTo(
            new Range(
                Math.min(7200, range.low()),
                Math.min(7200, range.likely()),
                Math.min(7200, range.high())));
    Range damp = OpenTime.onTheDay(Weather.constant(new AirState(15, 0.95, 0.1)), 1750, 0.2, 0.14);
    assertThat(damp).isEqualTo(Range.exactly(7200));
    // Later days of the weather do not count: the layer is laid on the first.
    List<AirState> two = new ArrayList<>(java.util.Collections.nCopies(24, hours.states().get(0)));
    two.add(dry);
    assertThat(OpenTime.driest(Weather.hourly(two))).isEqualTo(hours.states().get(0));
    Steps none = Steps.none();
    assertThatThrownBy(() -> OpenTime.of(dry, 200, 0.2, 0.14, none))
        .hasMessageContaining("dry density");
    assertThatThrownBy(() -> OpenTime.of(dry, 1750, 0.2, 0, none))
        .hasMessageContaining("plastic limit");
    assertThatThrownBy(() -> OpenTime.of(dry, 1750, 1.2, 0.14, none))
        .hasMessageContaining("moisture as laid");
    assertThatThrownBy(() -> OpenTime.of(dry, 1750, 0.14, 0.14, none))
        .hasMessageContaining("moisture as laid");
  }

  @Test
  void milestonesAreWordedAndWaitedFor() {
    Milestone due =
        new Milestone("firm", 0.14, Optional.of(1.23), Optional.of(2.0), Optional.empty(), 60);
    assertThat(due.text()).isEqualTo("firm: likely 2 days (1.2 to more than 60)");
    assertThat(due.isWaitedFor()).isTrue();
    Optional<Double> now = Optional.of(0.0);
    assertThat(new Milestone("walkable", 0.1, now, now, now, 60).isWaitedFor()).isFalse();
    Optional<Double> overnight = Optional.of(Milestone.OVERNIGHT);
    assertThat(new Milestone("walkable", 0.1, now, overnight, now, 60).isWaitedFor()).isFalse();
    assertThat(new Milestone("dry", 0.1, now, Optional.empty(), Optional.empty(), 60).isWaitedFor())
        .isTrue();
  }

  @Test
  void statesOfAMixAreInOrder() {
    double dry = EARTH.equilibriumMoisture(0.75);
    DryingCriteria wet = DryingCriteria.wetLaid(0.14, EARTH);
    assertThat(wet.states())
        .extracting(DryingCriteria.State::moisture)
        .containsExactly(0.14, 0.07, dry);
    assertThat(wet.driest()).isEqualTo(dry);
    assertThat(DryingCriteria.rammed(0.09, EARTH).driest()).isEqualTo(dry);
    assertThat(DryingCriteria.rammed(0.01, EARTH).driest()).isEqualTo(0.01);
    assertThatThrownBy(() -> DryingCriteria.wetLaid(1.9 * dry, EARTH))
        .hasMessageContaining("plastic limit");
    assertThatThrownBy(
            () ->
                new DryingCriteria(
                    List.of(
                        new DryingCriteria.State("a", 0.1), new DryingCriteria.State("b", 0.11))))
        .hasMessageContaining("b moisture");
    assertThatThrownBy(() -> new DryingCriteria(List.of())).hasMessageContaining("states");
    assertThatThrownBy(() -> new DryingCriteria.State(" ", 0.1)).hasMessageContaining("state");
    assertThatThrownBy(() -> new DryingCriteria.State("a", 0)).hasMessageContaining("a moisture");
    assertThatThrownBy(() -> new DryingCriteria.State("a", 0.9)).hasMessageContaining("a moisture");
  }

  @Test
  void doubtIsHeldWithinItsRange() {
    DryingDoubt published = DryingDoubt.published();
    assertThat(published.diffusivity().high()).isCloseTo(Math.sqrt(10), within(1e-12));
    assertThat(published.diffusivity().low()).isCloseTo(1 / Math.sqrt(10), within(1e-12));
    assertThat(published.exchange()).isEqualTo(new Range(1 / 1.4, 1, 1.4));
    Range one = Range.exactly(1);
    assertThatThrownBy(() -> new DryingDoubt(new Range(0.001, 1, 1), one))
        .hasMessageContaining("diffusivity factor (low)");
    assertThatThrownBy(() -> new DryingDoubt(new Range(1, 1, 101), one))
        .hasMessageContaining("diffusivity factor (high)");
    assertThatThrownBy(() -> new DryingDoubt(one, new Range(0.05, 1, 1)))
        .hasMessageContaining("exchange factor (low)");
    assertThatThrownBy(() -> new DryingDoubt(one, new Range(1, 1, 11)))
        .hasMessageContaining("exchange factor (high)");
    // A draw far below is as far below in a range of its own: 0.6 (0.5 / 0.6)^2.
    DryingDoubt tile = new DryingDoubt(new Range(0.5, 0.6, 0.9), new Range(1, 1.1, 1.21));
    DryingDoubt far = tile.supposing(new DryingDoubt(Range.exactly(0.1), Range.exactly(1.96)));
    assertThat(far.diffusivity().likely()).isCloseTo(0.6 * 25 / 36, within(1e-12));
    assertThat(far.exchange().likely()).isCloseTo(1.1 * 1.21, within(1e-12));
  }

  /** Factors by which the table of the paper brings a wind to 2 m: 1.178 at 1 m, 0.748 at 10 m. */
  @ParameterizedTest
  @CsvSource({"1, 1.178", "2, 1.000", "3, 0.921", "10, 0.748"})
  void theTableOfWindHeights(double height, double factor) {
    OutsideCheck.of(
            "materials.drying",
            "wind read at " + height + " m brought to 2 m, factor",
            Source.fromMemory(
                "Allen, Pereira, Raes and Smith",
                "FAO Irrigation and Drainage Paper 56",
                "1998",
                "annex 2, table 2.9"))
        .expect(factor)
        .within(0.0016)
        .got(Psychrometrics.windAtTwoMetres(1, height));
  }

  /** Fine cells where water moves: at the top, and on both sides of the joint with the base. */
  @Test
  void cellsAreFineAtTheTopAndAtTheJoint() {
    DryingSlab slab = DryingSlab.sealed(0.04, 1750, 0.2, EARTH).drawingInto(0.05, 0.04);
    DryingGrid grid = DryingGrid.of(slab, DryingDetail.FINE, 1);
    int coat = grid.coatCells();
    double sum = 0;
    for (int i = 0; i < coat; i++) {
      sum += grid.size(i);
    }
    assertThat(sum).isCloseTo(0.04, within(1e-12));
    assertThat(grid.size(0)).isLessThanOrEqualTo(0.0003);
    assertThat(grid.size(coat - 1)).isLessThanOrEqualTo(0.04 / 40);
    assertThat(grid.size(coat)).isLessThanOrEqualTo(0.04 / 40);
    assertThat(grid.size(coat / 2)).isGreaterThan(grid.size(coat - 1));
    assertThat(grid.size(grid.cells() - 1)).isGreaterThan(grid.size(coat));
    for (int i = 1; i < grid.cells(); i++) {
      double ratio = grid.size(i) / grid.size(i - 1);
      assertThat(ratio).as("cell %s", i).isBetween(0.2, 5.0);
    }
    DryingGrid twice = DryingGrid.of(slab, DryingDetail.FINE, 2);
    assertThat(twice.cells()).isEqualTo(2 * grid.cells());
    assertThat(twice.size(1)).isEqualTo(grid.size(0) / 2);
  }

  @Test
  void airAtFrostCarriesNoWaterOff() {
    assertThatThrownBy(() -> Ventilation.changesFor(1, 10, -1, 0.5, 0.9, Steps.none()))
        .hasMessageContaining("frost");
  }

  /** One doubt alone spreads the days as well. */
  @Test
  void eitherDoubtSpreadsTheDays() {
    DryingSlab coat = DryingSlab.sealed(0.02, 1750, 0.18, EARTH);
    Weather air = Weather.constant(new AirState(18, 0.6, 0.2));
    DryingCriteria criteria = DryingCriteria.wetLaid(0.14, EARTH);
    Range one = Range.exactly(1);
    Range some = new Range(0.5, 1, 2);
    for (DryingDoubt doubt : List.of(new DryingDoubt(some, one), new DryingDoubt(one, some))) {
      Milestone dry = DryingForecast.of(coat, air, criteria, doubt, 365).milestones().get(2);
      assertThat(dry.soonest().orElseThrow()).isLessThan(0.95 * dry.likely().orElseThrow());
      assertThat(dry.latest().orElseThrow()).isGreaterThan(1.05 * dry.likely().orElseThrow());
    }
    Milestone sure =
        DryingForecast.of(coat, air, criteria, new DryingDoubt(one, one), 365).milestones().get(2);
    assertThat(sure.soonest()).isEqualTo(sure.latest());
  }
}
