package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DryingSolverTest {

  private static final Source CRANK =
      Source.derived("Crank, The Mathematics of Diffusion: plane sheet, series of 200 terms");
  private static final Source UPTAKE =
      Source.found("", "Uptake by a plane sheet, open numerical library documentation", "", "");

  /** One open face held at balance, constant D: evaporated over all that can evaporate. */
  private static double gone(double fourier) {
    double thickness = 0.05;
    double diffusivity = 1e-9;
    EarthMoisture earth = new EarthMoisture(diffusivity, diffusivity, 0.2, 0.01, 0.02);
    DryingSlab slab = DryingSlab.sealed(thickness, 1800, 0.2, earth);
    double time = fourier * thickness * thickness / diffusivity;
    DryingCurve curve =
        new DryingRun(slab, Weather.constant(new AirState(20, 0.5, 1)), 1e6).until(time, 0);
    return curve.evaporated() / (1800 * thickness * (0.2 - 0.01));
  }

  private static double series(double fourier) {
    double left = 0;
    for (int k = 0; k < 200; k++) {
      double odd = (2 * k + 1) * Math.PI;
      left += 8 / (odd * odd) * Math.exp(-odd * odd * fourier / 4);
    }
    return 1 - left;
  }

  @Test
  void thePlaneSheetDriesAsItsSeriesSays() {
    for (double fourier : new double[] {0.01, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2}) {
      OutsideCheck.of("materials.drying", "plane sheet, share gone at Fo " + fourier, CRANK)
          .expect(series(fourier))
          .withinRatio(1e-3)
          .got(gone(fourier));
    }
  }

  @Test
  void thePublishedUptakeIsReached() {
    // L 0.2 mm, D 1e-10 m²/s, 100 s: Fo 0.25
    OutsideCheck.of("materials.drying", "plane sheet, uptake at Fo 0.25", UPTAKE)
        .expect(0.562233541762138)
        .withinRatio(1e-3)
        .got(gone(0.25));
    assertThat(series(0.25)).isCloseTo(0.562233541762138, within(1e-12));
  }

  @Test
  void theHalfTimeIsCranks() {
    // D t / l² with l the full thickness open on both faces: a quarter of Fo on half of it.
    Source crank = Source.fromMemory("Crank", "The Mathematics of Diffusion", "1975", "half-time");
    double low = 0.1;
    double high = 0.3;
    for (int i = 0; i < 12; i++) {
      double middle = (low + high) / 2;
      if (gone(middle) < 0.5) {
        low = middle;
      } else {
        high = middle;
      }
    }
    OutsideCheck.of("materials.drying", "half-time D t / l2 of a sheet open on both faces", crank)
        .expect(0.04919)
        .withinRatio(3e-3)
        .got((low + high) / 2 / 4);
  }

  @Test
  void aHundredMillimetresOverNinetyDaysAreWithinAThousandth() {
    Weather weather = Weather.hourly(hours(90));
    DryingSlab slab = DryingSlab.sealed(0.1, 1750, 0.2, EarthMoisture.sandyMix());
    DryingRun run = new DryingRun(slab, weather, 1);
    DryingCurve curve = run.until(90 * Weather.DAY, 0);
    DryingCurve fine = run.until(90 * Weather.DAY, 0, DryingDetail.FINE, 1e-4, 4);
    for (int day = 1; day <= 90; day++) {
      double time = day * Weather.DAY;
      assertThat(curve.evaporatedAt(time) / fine.evaporatedAt(time))
          .as("day %d", day)
          .isCloseTo(1, within(1e-3));
    }
    assertThat((curve.evaporated() + curve.waterLeft()) / slab.initialWater())
        .isCloseTo(1, within(1e-9));
    assertThat(curve.profiles()).isEqualTo(91);
  }

  @Test
  void aSoftToleranceStaysWithinAThousandthUnderConstantAir() {
    DryingSlab slab =
        DryingSlab.sealed(0.03, 1750, 0.2, EarthMoisture.sandyMix()).drawingInto(0.05, 0.04);
    DryingRun run = new DryingRun(slab, Weather.constant(new AirState(18, 0.6, 0.2)), 1);
    DryingCurve curve = run.until(40 * Weather.DAY, 0);
    DryingCurve fine = run.until(40 * Weather.DAY, 0, DryingDetail.FINE, 5e-6, 4);
    for (int day = 1; day <= 40; day++) {
      double time = day * Weather.DAY;
      assertThat(curve.coatMoistureAt(time))
          .as("day %d", day)
          .isCloseTo(fine.coatMoistureAt(time), within(1e-3 * 0.2));
    }
  }

  @Test
  void theFirstDaysFollowTheAirAlone() {
    AirState air = new AirState(18, 0.6, 0.2);
    DryingSlab slab = DryingSlab.sealed(0.05, 1750, 0.2, EarthMoisture.sandyMix());
    DryingCurve curve = DryingForecast.simulate(slab, Weather.constant(air), 1);
    double rate = Evaporation.wetFloor(air, io.github.seamstead.shared.derivation.Steps.none());
    assertThat(curve.evaporated()).isCloseTo(rate * Weather.DAY, within(1e-3 * curve.evaporated()));
  }

  @Test
  void theProfileIsDriestAtTheTop() {
    DryingSlab slab = DryingSlab.sealed(0.05, 1750, 0.2, EarthMoisture.sandyMix());
    DryingCurve curve =
        DryingForecast.simulate(slab, Weather.constant(new AirState(18, 0.6, 0.2)), 12);
    List<DryingCurve.ProfilePoint> profile = curve.profile(12);
    for (int i = 1; i < profile.size(); i++) {
      assertThat(profile.get(i).depth()).isGreaterThan(profile.get(i - 1).depth());
      assertThat(profile.get(i).moisture())
          .isGreaterThanOrEqualTo(profile.get(i - 1).moisture() - 1e-12);
    }
  }

  static List<AirState> hours(int days) {
    List<AirState> hours = new ArrayList<>();
    for (int h = 0; h < days * 24; h++) {
      double wave = Math.sin(2 * Math.PI * h / 24);
      hours.add(
          new AirState(
              16 + 6 * wave + 2 * Math.sin(h / 50.0),
              0.62 - 0.18 * wave,
              0.25 + 0.2 * Math.abs(Math.sin(h / 7.0))));
    }
    return hours;
  }
}
