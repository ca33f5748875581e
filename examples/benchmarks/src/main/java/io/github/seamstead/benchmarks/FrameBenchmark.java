package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.bars.BarStock;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolution;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.markout.TapeDivision;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.SpliceRule;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One frame: solved from measures, its panels, its marking out, its bars. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FrameBenchmark {

  private static final RegularPyramid FRAME =
      RegularPyramid.ofBaseSideAndHeight(10, 1.95, 1.8).withOpeningSide(0.2);
  private static final EdgePlan EDGES =
      EdgePlan.of(EdgeAllowance.hem(0.05), EdgeAllowance.finSeam(0.04), EdgeAllowance.turnIn(0.06));

  private final Map<PyramidMeasure, Double> two =
      Map.of(PyramidMeasure.ACROSS_FLATS, 6.0, PyramidMeasure.FACE_SLOPE, Math.PI / 6);
  private final Map<PyramidMeasure, Double> every = everyMeasure();

  /** Two measures given, all measures back. */
  @Benchmark
  public FrameMeasures solveTwo() {
    return FrameSolver.solve(10, two).single().measures();
  }

  /** Every measure given: all pairs are weighed against each other. */
  @Benchmark
  public FrameSolution solveEvery() {
    return FrameSolver.solve(10, every);
  }

  /** A panel in one part. */
  @Benchmark
  public Panel panel() {
    return Panel.of(FRAME.faceOutline(), PanelSpec.of("P", EDGES).times(10));
  }

  /** The same panel spliced from a grid of smaller cloths. */
  @Benchmark
  public Panel splicedPanel() {
    return Panel.of(
        FRAME.faceOutline(),
        PanelSpec.of("P", EDGES).times(10).withSplices(SpliceRule.of(0.7, 0.7, 0.03)));
  }

  /** Tape tables of a face. */
  @Benchmark
  public MarkOut markOut() {
    return MarkOut.of(FRAME.faceOutline(), TapeDivision.MILLIMETRE, 0.002);
  }

  /** Bars for poles and rings. */
  @Benchmark
  public BarPlan bars() {
    return BarCutting.plan(
        List.of(
            new BarPiece("pole", 3.3, 10),
            new BarPiece("ring", 1.9, 10),
            new BarPiece("purlin", 1.2, 10)),
        List.of(BarStock.unlimited("bar", 6)),
        0.003);
  }

  private static Map<PyramidMeasure, Double> everyMeasure() {
    RegularPyramid whole = RegularPyramid.ofBaseSideAndHeight(10, 1.95, 1.8);
    Map<PyramidMeasure, Double> given = new EnumMap<>(PyramidMeasure.class);
    for (PyramidMeasure measure : PyramidMeasure.values()) {
      given.put(measure, measure.of(whole));
    }
    return given;
  }
}
