package io.github.seamstead.benchmarks;

import io.github.seamstead.assembly.merge.LineTree;
import java.util.Random;
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

/** The least merge tree of a line, by the number of pieces. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LineBenchmark {

  /** Pieces in the line. */
  @Param({"1000", "10000", "100000", "1000000"})
  public int pieces;

  private double[] weights = {1};

  /** Draws the pieces' masses. */
  @Setup
  public void weigh() {
    weights = new Random(11).doubles(pieces, 1, 20).toArray();
  }

  /** Masses in no order. */
  @Benchmark
  public LineTree optimal() {
    return LineTree.optimal(weights);
  }
}
