package io.github.seamstead.benchmarks;

import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.DryingCurve;
import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.TestTile;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.drying.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** One drying, a forecast with its range, and the fit of a test tile. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DryingBenchmark {

  private static final int DAYS = 90;

  private final Weather weather = weather();
  private final DryingSlab thick = DryingSlab.sealed(0.1, 1750, 0.20, EarthMoisture.sandyMix());
  private final DryingSlab coat = DryingSlab.sealed(0.025, 1750, 0.18, EarthMoisture.sandyMix());
  private final TestTile tile = tile(coat, weather);

  /** A floor of 100 mm over 90 days of hourly weather; error below 0.1 % of the water given off. */
  @Benchmark
  public DryingCurve hundredMillimetresNinetyDays() {
    return DryingForecast.simulate(thick, weather, DAYS);
  }

  /** A coat of 25 mm with its range: three runs until it is dry. */
  @Benchmark
  public DryingForecast forecast() {
    return DryingForecast.of(
        coat,
        weather,
        DryingCriteria.wetLaid(0.14, EarthMoisture.sandyMix()),
        DryingDoubt.published(),
        DAYS);
  }

  /** Two factors fitted to nine weighings. */
  @Benchmark
  public TileCalibration calibration() {
    return TileCalibration.of(tile, weather);
  }

  private static Weather weather() {
    List<AirState> hours = new ArrayList<>();
    for (int hour = 0; hour < DAYS * 24; hour++) {
      double wave = Math.sin(2 * Math.PI * hour / 24);
      hours.add(
          new AirState(
              16 + 6 * wave + 2 * Math.sin(hour / 50.0),
              0.62 - 0.18 * wave,
              0.25 + 0.2 * Math.abs(Math.sin(hour / 7.0))));
    }
    return Weather.hourly(hours);
  }

  private static TestTile tile(DryingSlab slab, Weather weather) {
    DryingSlab truth = slab.with(slab.earth().timesDiffusivity(0.6));
    DryingCurve curve = DryingForecast.simulate(truth, weather, 20);
    List<TestTile.Weighing> weighings = new ArrayList<>();
    for (double day : new double[] {0, 1, 2, 3, 5, 7, 10, 14, 20}) {
      double time = day * Weather.DAY;
      weighings.add(new TestTile.Weighing(time, 6 - 0.09 * curve.evaporatedAt(time)));
    }
    return new TestTile(slab, 0.09, weighings, 0.002);
  }
}
