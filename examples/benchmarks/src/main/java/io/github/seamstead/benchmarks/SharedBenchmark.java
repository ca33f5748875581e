package io.github.seamstead.benchmarks;

import io.github.seamstead.shared.derivation.Formula;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.QuantityText;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Quantity text, formulas, and what recording costs beside the plain call. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SharedBenchmark {

  private double inradius = 3;
  private double height = 4;
  private String text = "17 ft 3 1/2 in";

  /** Reads feet and inches with a fraction. */
  @Benchmark
  public double quantityText() {
    return QuantityText.parse(text, Dimension.LENGTH);
  }

  /** Reads a formula. */
  @Benchmark
  public Formula formula() {
    return Formula.parse("sqrt(r^2 + H^2) / (2 * sin(pi / n))");
  }

  /** One root with nobody recording: to be held against {@link #bareSum()}. */
  @Benchmark
  public double plainCall() {
    return slant(inradius, height, Steps.none());
  }

  /** The same root without any step. */
  @Benchmark
  public double bareSum() {
    return Math.sqrt(inradius * inradius + height * height);
  }

  /** The same root with its step kept. */
  @Benchmark
  public double workedCall() {
    return slant(inradius, height, new StepRecorder());
  }

  private static double slant(double r, double h, Steps steps) {
    return steps
        .step("s", "slant height")
        .formula("sqrt(r^2 + H^2)")
        .with("r", r, "m")
        .with("H", h, "m")
        .gives(Math.sqrt(r * r + h * h), "m");
  }
}
