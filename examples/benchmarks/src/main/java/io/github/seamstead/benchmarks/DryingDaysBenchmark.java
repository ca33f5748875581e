package io.github.seamstead.benchmarks;

import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.DryingCurve;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A coat of 100 mm drying in hourly weather, by the number of days. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class DryingDaysBenchmark {

  private static final DryingSlab SLAB =
      DryingSlab.sealed(0.1, 1750, 0.2, EarthMoisture.sandyMix());

  /** Length of the forecast. */
  @Param({"10", "30", "90"})
  public int days;

  private Weather weather = Weather.constant(new AirState(18, 0.6, 0.5));

  /** Makes weather that changes from hour to hour. */
  @Setup
  public void forecast() {
    List<AirState> hours = new ArrayList<>();
    for (int hour = 0; hour < days * 24; hour++) {
      double sun = Math.sin(2 * Math.PI * (hour - 9) / 24.0);
      hours.add(new AirState(16 + 6 * sun, 0.65 - 0.2 * sun, 0.6 + 0.4 * sun));
    }
    weather = Weather.hourly(hours);
  }

  /** One march through the weather. */
  @Benchmark
  public DryingCurve simulate() {
    return DryingForecast.simulate(SLAB, weather, days);
  }
}
