package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;

class DryingProperties {

  private static DryingCurve dry(double thickness, double base, AirState air, double days) {
    DryingSlab slab = DryingSlab.sealed(thickness, 1750, 0.18, EarthMoisture.sandyMix());
    DryingSlab whole = base > 0.001 ? slab.drawingInto(base, 0.03) : slab;
    return DryingForecast.simulate(whole, Weather.constant(air), days);
  }

  @Property(tries = 60, seed = "20261135")
  void waterIsConserved(
      @ForAll @Scale(4) @DoubleRange(min = 0.002, max = 0.15) double thickness,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.2) double base,
      @ForAll @Scale(4) @DoubleRange(min = 1, max = 45) double temperature,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @Scale(4) @DoubleRange(min = 0.02, max = 8) double speed) {
    DryingCurve curve = dry(thickness, base, new AirState(temperature, humidity, speed), 20);
    assertThat((curve.evaporated() + curve.waterLeft()) / curve.slab().initialWater())
        .isCloseTo(1, within(1e-9));
    assertThat(curve.finalMoisture()).isBetween(0.0, 1.0);
  }

  @Tag("dear")
  @Property(tries = 40, seed = "20261136")
  void thickerIsNeverFaster(
      @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.06) double thickness,
      @ForAll @Scale(4) @DoubleRange(min = 1.05, max = 3) double more,
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.16) double moisture) {
    AirState air = new AirState(18, 0.55, 0.3);
    Optional<Double> thin = dry(thickness, 0, air, 200).timeTo(moisture);
    Optional<Double> thick = dry(thickness * more, 0, air, 200).timeTo(moisture);
    assertThat(thick.orElse(Double.POSITIVE_INFINITY)).isGreaterThanOrEqualTo(thin.orElseThrow());
  }

  @Property(tries = 40, seed = "20261137")
  void wetterAirIsNeverFaster(
      @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.06) double thickness,
      @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 0.9) double humidity,
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.1) double more) {
    DryingCurve dry = dry(thickness, 0, new AirState(18, humidity, 0.3), 30);
    DryingCurve damp = dry(thickness, 0, new AirState(18, humidity + more, 0.3), 30);
    for (int day = 1; day <= 30; day++) {
      double time = day * Weather.DAY;
      // A thousandth of the first moisture is the error allowed to the solver.
      assertThat(damp.coatMoistureAt(time)).isGreaterThanOrEqualTo(dry.coatMoistureAt(time) - 2e-4);
    }
  }

  @Example
  void aFewWildNumbers() {
    for (long seed = 1; seed <= 12; seed++) {
      wildNumbersNeitherHangNorLoseWater(seed);
    }
  }

  @Tag("dear")
  @Property(tries = 150, seed = "20261138")
  void wildNumbersNeitherHangNorLoseWater(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Random random = new Random(seed);
    double dry = Math.pow(10, -12 + 5 * random.nextDouble());
    double wet = Math.min(1e-6, dry * Math.pow(10, 3 * random.nextDouble()));
    double at50 = 0.001 + 0.1 * random.nextDouble();
    EarthMoisture earth =
        new EarthMoisture(
            dry, wet, 0.05 + 0.5 * random.nextDouble(), at50, at50 * (1.15 + random.nextDouble()));
    double first = 0.02 + 0.7 * random.nextDouble();
    DryingSlab coat =
        DryingSlab.sealed(
            0.001 + 0.4 * random.nextDouble(), 500 + 2000 * random.nextDouble(), first, earth);
    DryingSlab slab =
        random.nextBoolean()
            ? coat
            : coat.drawingInto(
                0.001 + 0.5 * random.nextDouble(), 0.001 + (first - 0.001) * random.nextDouble());
    List<AirState> hours = new ArrayList<>();
    for (int hour = 0; hour < 48; hour++) {
      double humidity = random.nextDouble() < 0.1 ? random.nextInt(2) : random.nextDouble();
      hours.add(
          new AirState(
              0.5 + 59 * random.nextDouble(),
              humidity,
              0.01 + 29 * random.nextDouble() * random.nextDouble()));
    }
    double exchange = Math.pow(10, 2 * random.nextDouble() - 1);
    DryingCurve curve =
        new DryingRun(slab, Weather.hourly(hours), exchange).until(5 * Weather.DAY, 0);
    assertThat((curve.evaporated() + curve.waterLeft()) / slab.initialWater())
        .isCloseTo(1, within(1e-9));
    assertThat(curve.finalMoisture()).isBetween(0.0, 1.0);
  }
}
