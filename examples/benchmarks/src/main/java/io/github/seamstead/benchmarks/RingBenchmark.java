package io.github.seamstead.benchmarks;

import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.Limits;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.merge.PlanOptions;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.schedule.JoinTasks;
import io.github.seamstead.assembly.schedule.Network;
import io.github.seamstead.assembly.schedule.ResourceSchedule;
import io.github.seamstead.assembly.schedule.Simulation;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
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

/** A ring of 24 pieces: order of joining, schedule, simulation. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RingBenchmark {

  private static final Map<String, Integer> TOOLS = Map.of(JoinTasks.TEAM, 2, "stapler", 2);

  private final PieceRing ring = ring();
  private final Network network =
      JoinTasks.of(
          JoinPlanner.plan(ring, options(Objective.ELAPSED_TIME)).orThrow(),
          8 / 9.0,
          10 / 9.0,
          0,
          Map.of("stapler", 1));

  /** All four objectives with limits and two teams. */
  @Benchmark
  public List<MergePlan> allObjectives() {
    List<MergePlan> plans = new ArrayList<>();
    for (Objective objective : Objective.values()) {
      JoinPlanner.plan(ring, options(objective)).plan().ifPresent(plans::add);
    }
    return plans;
  }

  /** The join order as a schedule of two teams with two staplers. */
  @Benchmark
  public ResourceSchedule schedule() {
    return ResourceSchedule.of(network, TOOLS, Work.of(Budget.ofWork(20_000), 1));
  }

  /** A thousand runs of that schedule. */
  @Benchmark
  public Simulation simulation() {
    return Simulation.of(network, TOOLS, Work.of(Budget.ofWork(1000), 1));
  }

  private static PlanOptions options(Objective objective) {
    return PlanOptions.least(objective).with(Limits.NONE.withCarriedMass(80)).withTeams(2);
  }

  private static PieceRing ring() {
    List<Piece> pieces = new ArrayList<>();
    List<Double> joints = new ArrayList<>();
    for (int i = 1; i <= 24; i++) {
      pieces.add(Piece.of(Integer.toString(i), Load.ofMass(4 + i % 5)));
      joints.add(3.2);
    }
    return PieceRing.ring(pieces, joints);
  }
}
