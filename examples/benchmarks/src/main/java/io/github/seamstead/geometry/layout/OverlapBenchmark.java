package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long one place of a piece among others takes to judge, by the number of others, with no-fit
 * regions and, for pieces that may lie at any angle, from parts. It stands in the layout's package
 * because the search's inner loop is not public.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class OverlapBenchmark {

  private static final int PLACES = 1024;
  private static final int KINDS = 10;

  /** Pieces on the strip. */
  @Param({"50", "200", "800"})
  public int pieces;

  private Nest held = laid(Rotations.halfTurn(), KINDS);
  private Nest free = held;
  private final double[] along = new double[PLACES];
  private final double[] across = new double[PLACES];

  /** Fills the strip. */
  @Setup
  public void lay() {
    held = laid(Rotations.halfTurn(), pieces);
    free = laid(Rotations.anyAngle(), pieces);
    RandomGenerator random = Seeds.stream(1, "places", 0);
    for (int i = 0; i < PLACES; i++) {
      along[i] = random.nextDouble();
      across[i] = random.nextDouble();
    }
  }

  private static Nest laid(Rotations turns, int copies) {
    RandomGenerator random = Seeds.stream(1, "pieces", 0);
    List<Piece> kinds = new ArrayList<>();
    for (int k = 0; k < KINDS; k++) {
      kinds.add(
          Piece.of("kind " + k, Stars.star(random, 4 + k % 5, 0.09, 0.3))
              .withCount(copies / KINDS)
              .withRotations(turns));
    }
    Roll roll = Roll.of("strip", 2, copies);
    Bin bin = new Bin(roll, 1, new Bounds(0, 0, roll.length(), roll.width()), 0);
    NestSetup setup = new NestSetup(kinds, List.of(bin), 0, 0);
    Nest nest = setup.nest();
    new Filler(setup, nest)
        .fill(IntStream.range(0, nest.pieces).toArray(), new int[] {0}, () -> false);
    return nest;
  }

  /**
   * One place judged by no-fit regions, all overlaps summed.
   *
   * @return so that nothing is left out
   */
  @Benchmark
  @OperationsPerInvocation(PLACES)
  public double byRegions() {
    return judged(held);
  }

  /**
   * The same from convex parts.
   *
   * @return so that nothing is left out
   */
  @Benchmark
  @OperationsPerInvocation(PLACES)
  public double byParts() {
    return judged(free);
  }

  private double judged(Nest nest) {
    double reach = 0;
    for (int i = 0; i < nest.pieces; i++) {
      reach = Math.max(reach, nest.x[i]);
    }
    double sum = 0;
    for (int k = 0; k < PLACES; k++) {
      int i = k % nest.pieces;
      sum +=
          nest.evaluate(
              i, nest.orientation[i], reach * along[k], across[k], Double.POSITIVE_INFINITY);
    }
    return sum;
  }
}
