package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How long the work takes if each duration falls as it may: many runs with durations drawn from
 * their beta distributions, each scheduled with the teams and tools there are, in the planned
 * order.
 *
 * <p>It is wider and later than PERT's normal distribution where paths run side by side, since the
 * later of them counts. Durations are drawn independently: where one cause slows all tasks, such as
 * cold or a new crew, the true range is wider still. One work unit is one run; equal seeds and
 * numbers of runs give equal results. A run costs O(n^2) for n tasks.
 */
public final class Simulation {

  /** The fewest runs for which a 95 % value means something. */
  public static final int LEAST_RUNS = 100;

  /** The most runs. */
  public static final int MOST_RUNS = 1_000_000;

  private final double[] sorted;
  private final Map<String, Double> criticality;

  private Simulation(double[] sorted, Map<String, Double> criticality) {
    this.sorted = sorted;
    this.criticality = criticality;
  }

  /**
   * Runs the simulation.
   *
   * @param network the tasks
   * @param capacities how many there are of each limited resource; empty for no limits
   * @param work as many work units as runs, {@link #LEAST_RUNS} to {@link #MOST_RUNS}; seed
   * @return the range; of fewer runs if cancelled or out of time, but of one at least
   * @throws IllegalArgumentException if the number of runs is out of range, or a task needs more
   *     than there is
   */
  public static Simulation of(Network network, Map<String, Integer> capacities, Work work) {
    long wanted = Math.min(work.budget().workUnits(), MOST_RUNS);
    Args.require(
        wanted >= LEAST_RUNS,
        "simulation runs",
        String.valueOf(wanted),
        "must be " + LEAST_RUNS + " or more");
    int runs = (int) wanted;
    long deadline =
        work.budget().time().map(t -> System.nanoTime() + t.toNanos()).orElse(Long.MAX_VALUE);
    int n = network.size();
    ResourceProblem planned = ResourceProblem.of(network, network.means(), capacities);
    double[] starts = new PriorityScheduler(planned).best(10, work.seed());
    double[] priority = Arrays.stream(starts).map(start -> -start).toArray();
    double[] lengths = new double[runs];
    int[] critical = new int[n];
    int done = 0;
    while (done < runs) {
      BetaSampler sampler = new BetaSampler(Seeds.stream(work.seed(), "schedule simulation", done));
      double[] duration = new double[n];
      for (int i = 0; i < n; i++) {
        duration[i] = sampler.draw(network.tasks().get(i).duration());
      }
      ResourceProblem drawn = planned.lasting(duration);
      double[] start = PriorityScheduler.serial(drawn, priority);
      lengths[done++] = PriorityScheduler.length(drawn, start);
      CriticalSequence.count(drawn, start, critical);
      if (done % 256 == 0) {
        work.progress().report((double) done / runs, "simulating");
        if (work.cancellation().isCancelled() || System.nanoTime() > deadline) {
          break;
        }
      }
    }
    double[] sorted = Arrays.copyOf(lengths, done);
    Arrays.sort(sorted);
    Map<String, Double> share = new LinkedHashMap<>();
    for (int i = 0; i < n; i++) {
      share.put(network.tasks().get(i).id(), (double) critical[i] / done);
    }
    work.progress().report(1, "simulated");
    return new Simulation(sorted, java.util.Collections.unmodifiableMap(share));
  }

  /**
   * Gives the number of runs.
   *
   * @return 1 or more
   */
  public int runs() {
    return sorted.length;
  }

  /**
   * Gives the time within which a part of the runs ended.
   *
   * @param probability more than 0 and less than 1, such as 0.8
   * @return the smallest time that so many runs kept, in seconds
   */
  public double timeFor(double probability) {
    Args.between("probability", probability, 0, 1, "");
    int rank = (int) Math.ceil(probability * sorted.length - 1e-9);
    return sorted[Math.max(1, rank) - 1];
  }

  /**
   * Gives the part of the runs that ended in time.
   *
   * @param deadline in seconds after the start
   * @return 0 to 1
   */
  public double probabilityBy(double deadline) {
    Args.finite("deadline", deadline, "s");
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) / 2;
      if (sorted[middle] <= deadline) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return (double) low / sorted.length;
  }

  /**
   * Gives the time that half of the runs kept.
   *
   * @return in seconds
   */
  public double p50() {
    return timeFor(0.5);
  }

  /**
   * Gives the time that four of five runs kept.
   *
   * @return in seconds
   */
  public double p80() {
    return timeFor(0.8);
  }

  /**
   * Gives the time that nineteen of twenty runs kept.
   *
   * @return in seconds
   */
  public double p95() {
    return timeFor(0.95);
  }

  /**
   * Gives the mean of the runs.
   *
   * @return in seconds
   */
  public double mean() {
    return Arrays.stream(sorted).average().orElse(0);
  }

  /**
   * Gives the standard deviation of the runs.
   *
   * @return in seconds
   */
  public double standardDeviation() {
    double mean = mean();
    double squares = Arrays.stream(sorted).map(x -> (x - mean) * (x - mean)).sum();
    return sorted.length < 2 ? 0 : Math.sqrt(squares / (sorted.length - 1));
  }

  /**
   * Tells how often each task held up the end.
   *
   * @return by task id, in the order of the tasks, 0 to 1: the part of the runs in which the task
   *     was on a chain of tasks and shared resources that touch end to end up to the end of the
   *     work
   */
  public Map<String, Double> criticality() {
    return criticality;
  }

  /**
   * Counts the runs by their length for a drawing.
   *
   * @param bins how many bars, 1 to 1000
   * @return counts over equal steps from the shortest run to the longest
   */
  public int[] histogram(int bins) {
    Args.within("bars", bins, 1, 1000);
    int[] counts = new int[bins];
    double low = sorted[0];
    double width = sorted[sorted.length - 1] - low;
    for (double length : sorted) {
      int bin = width > 0 ? (int) ((length - low) / width * bins) : 0;
      counts[Math.min(bins - 1, bin)]++;
    }
    return counts;
  }

  /**
   * Gives the shortest run.
   *
   * @return in seconds
   */
  public double shortest() {
    return sorted[0];
  }

  /**
   * Gives the longest run.
   *
   * @return in seconds
   */
  public double longest() {
    return sorted[sorted.length - 1];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Simulation simulation
        && Arrays.equals(simulation.sorted, sorted)
        && simulation.criticality.equals(criticality);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(sorted) + criticality.hashCode();
  }

  @Override
  public String toString() {
    return "Simulation[" + sorted.length + " runs]";
  }
}
