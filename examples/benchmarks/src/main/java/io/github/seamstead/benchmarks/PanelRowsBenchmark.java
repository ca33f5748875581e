package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.layout.PanelRows;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.shared.plane.Outline;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Equal panels on a strip in closed form, at every angle, by their number and the strip's width.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PanelRowsBenchmark {

  private static final Outline WHOLE =
      RegularPyramid.ofBaseSideAndHeight(8, 1.6, 1.8).faceOutline();
  private static final Outline TRUNCATED =
      RegularPyramid.ofBaseSideAndHeight(12, 1.6, 1.8).withOpeningSide(0.2).faceOutline();

  /** Equal panels to lay. */
  @Param({"10", "50", "200"})
  public int panels;

  /** Width of the strip, in metres. */
  @Param({"3.2", "8"})
  public double width;

  /** Triangles. */
  @Benchmark
  public Optional<PanelRows.Arrangement> triangles() {
    return rows(WHOLE);
  }

  /** Trapezoids. */
  @Benchmark
  public Optional<PanelRows.Arrangement> trapezoids() {
    return rows(TRUNCATED);
  }

  private Optional<PanelRows.Arrangement> rows(Outline outline) {
    Piece piece = Piece.of("panel", outline).withRotations(Rotations.anyAngle());
    return PanelRows.onStrip(piece, panels, width, Double.POSITIVE_INFINITY, 0.01, 0.02);
  }
}
