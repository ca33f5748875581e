package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.ConvexParts;
import io.github.seamstead.geometry.layout.internal.NoFitBuilder;
import io.github.seamstead.geometry.layout.internal.Obstacles;
import io.github.seamstead.shared.work.Seeds;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
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

/** How long a no-fit region takes to build, by the corners of the two pieces, mostly not convex. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class NoFitBenchmark {

  /** Corners of each piece. */
  @Param({"4", "8", "16", "32"})
  public int corners;

  private double[] first = {};
  private double[] second = {};
  private List<double[]> a = List.of();
  private List<double[]> b = List.of();

  /** Draws the pieces. */
  @Setup
  public void draw() {
    RandomGenerator random = Seeds.stream(1, "no-fit", 0);
    first = star(random);
    second = star(random);
    a = ConvexParts.of(first);
    b = ConvexParts.of(second);
  }

  private double[] star(RandomGenerator random) {
    return Obstacles.corners(Stars.star(random, corners, 0.1, 0.3), Vector2D.ZERO, 1);
  }

  /**
   * Cuts both pieces into convex parts.
   *
   * @return the number of parts
   */
  @Benchmark
  public int parts() {
    return ConvexParts.of(first).size() + ConvexParts.of(second).size();
  }

  /**
   * Builds the region from the parts.
   *
   * @return the number of boundary segments
   */
  @Benchmark
  public int build() {
    return NoFitBuilder.build(a, b, 0).segments.length / 5;
  }
}
