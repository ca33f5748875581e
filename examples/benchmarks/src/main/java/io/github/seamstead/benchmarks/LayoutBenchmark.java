package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.StripLayout;
import io.github.seamstead.geometry.layout.StripProblem;
import io.github.seamstead.geometry.layout.StripResult;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Panels on rolls and a strip, by the number of panels. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LayoutBenchmark {

  private static final Outline FACE =
      RegularPyramid.ofBaseSideAndHeight(12, 1.6, 1.8).withOpeningSide(0.2).faceOutline();
  private static final long EFFORT = 20_000;

  /** Equal panels to lay. */
  @Param({"12", "50", "200", "800"})
  public int panels;

  /** Panels on rolls of 3.2 m at a work budget of 20 000 placements. */
  @Benchmark
  public LayoutResult rolls() {
    return CuttingLayout.plan(
        LayoutRequest.of(
            List.of(Piece.of("panel", FACE).withCount(panels)), List.of(Roll.of("roll", 3.2, 80))),
        Work.of(Budget.ofWork(EFFORT), 1));
  }

  /** The same on a strip without end. */
  @Benchmark
  public StripResult strip() {
    return StripLayout.solve(
        StripProblem.of(3.2, List.of(Piece.of("panel", FACE).withCount(panels))),
        Work.of(Budget.ofWork(EFFORT), 1));
  }
}
