package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The longest chain of tasks, by mean durations, with teams and tools for everybody.
 *
 * <p>Forward pass: earliest start is the greatest finish plus wait of the tasks before. Backward
 * pass: latest finish is the least latest start less wait of the tasks after. Slack is their
 * difference. Costs O(tasks + links).
 *
 * @param times when each task can and must be done, in the order given
 * @param path the ids of one critical path from start to end; where several are critical, the one
 *     of greatest variance
 * @param length expected time from start to end, in seconds
 * @param variance variance of that path, in seconds squared
 */
public record CriticalPath(
    List<TaskTimes> times, List<String> path, double length, double variance) {

  private static final double SLACK_TOLERANCE = 1e-9;

  public CriticalPath {
    times = List.copyOf(times);
    path = List.copyOf(path);
  }

  /**
   * Computes the path.
   *
   * @param network the tasks
   * @return the path and all times
   */
  public static CriticalPath of(Network network) {
    int n = network.size();
    double[] mean = network.means();
    double[] early = new double[n];
    double end = 0;
    for (int task : network.order()) {
      int[] before = network.before(task);
      for (int j = 0; j < before.length; j++) {
        early[task] =
            Math.max(early[task], early[before[j]] + mean[before[j]] + network.lag(task)[j]);
      }
      end = Math.max(end, early[task] + mean[task]);
    }
    double[] late = new double[n];
    Arrays.fill(late, end);
    int[] order = network.order();
    for (int i = n - 1; i >= 0; i--) {
      int task = order[i];
      int[] before = network.before(task);
      for (int j = 0; j < before.length; j++) {
        late[before[j]] = Math.min(late[before[j]], late[task] - mean[task] - network.lag(task)[j]);
      }
    }
    List<TaskTimes> times = new ArrayList<>(n);
    boolean[] critical = new boolean[n];
    for (int i = 0; i < n; i++) {
      double slack = Math.max(0, late[i] - mean[i] - early[i]);
      critical[i] = slack <= SLACK_TOLERANCE * Math.max(1, end);
      times.add(
          new TaskTimes(
              network.tasks().get(i),
              early[i],
              early[i] + mean[i],
              late[i] - mean[i],
              late[i],
              critical[i] ? 0 : slack,
              critical[i]));
    }
    return withPath(network, times, critical, end);
  }

  /** Of all chains of critical tasks that touch end to end, finds the one of greatest variance. */
  private static CriticalPath withPath(
      Network network, List<TaskTimes> times, boolean[] critical, double end) {
    int n = network.size();
    double tolerance = SLACK_TOLERANCE * Math.max(1, end);
    double[] variance = new double[n];
    int[] from = new int[n];
    Arrays.fill(from, -1);
    int last = -1;
    for (int task : network.order()) {
      if (!critical[task]) {
        continue;
      }
      int[] before = network.before(task);
      for (int j = 0; j < before.length; j++) {
        int b = before[j];
        boolean touches =
            critical[b]
                && Math.abs(
                        times.get(b).earlyFinish()
                            + network.lag(task)[j]
                            - times.get(task).earlyStart())
                    <= tolerance;
        if (touches && (from[task] < 0 || variance[b] > variance[from[task]])) {
          from[task] = b;
        }
      }
      variance[task] =
          network.tasks().get(task).duration().variance()
              + (from[task] < 0 ? 0 : variance[from[task]]);
      if (Math.abs(times.get(task).earlyFinish() - end) <= tolerance
          && (last < 0 || variance[task] >= variance[last])) {
        last = task;
      }
    }
    List<String> path = new ArrayList<>();
    for (int at = last; at >= 0; at = from[at]) {
      path.add(0, network.tasks().get(at).id());
    }
    return new CriticalPath(times, path, end, last < 0 ? 0 : variance[last]);
  }

  /**
   * Finds the times of a task.
   *
   * @param id its id
   * @return when it can and must be done
   * @throws IllegalArgumentException if there is no such task
   */
  public TaskTimes of(String id) {
    return times.stream()
        .filter(t -> t.task().id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException("task: given " + id + ", but there is no such task"));
  }

  /**
   * Gives the standard deviation along the path.
   *
   * @return in seconds
   */
  public double standardDeviation() {
    return Math.sqrt(variance);
  }

  /**
   * Estimates how likely the work ends in time.
   *
   * <p>PERT takes the critical path alone and adds its variances to a normal distribution. Where
   * other paths are nearly as long this is too hopeful; a simulation is not.
   *
   * @param deadline in seconds after the start
   * @return probability, 0 to 1; 0 or 1 if there is no doubt at all
   */
  public double probabilityBy(double deadline) {
    Args.finite("deadline", deadline, "s");
    if (variance == 0) {
      return deadline >= length ? 1 : 0;
    }
    return new NormalDistribution(null, length, standardDeviation())
        .cumulativeProbability(deadline);
  }

  /**
   * Estimates when the work is done with a probability, on the same assumption.
   *
   * @param probability more than 0 and less than 1
   * @return in seconds after the start
   */
  public double timeFor(double probability) {
    Args.between("probability", probability, 0, 1, "");
    return variance == 0
        ? length
        : new NormalDistribution(null, length, standardDeviation())
            .inverseCumulativeProbability(probability);
  }

  /**
   * Adds up the critical path with its steps.
   *
   * @param steps where the steps go
   * @return {@link #length()}, in seconds
   */
  @Calculation("assembly.schedule.criticalpath")
  public double length(Steps steps) {
    double variance = 0;
    double finish = 0;
    for (String id : path) {
      TaskTimes task = of(id);
      double sd = task.task().duration().standardDeviation();
      double sum =
          steps
              .step("V", "variance along the path up to " + id)
              .formula("V_before + sigma^2")
              .with("V_before", variance, "s2")
              .with("sigma", sd, "s")
              .from(ScheduleSources.PERT)
              .gives(variance + sd * sd, "s2");
      double duration = task.task().duration().mean();
      finish =
          steps
              .step("EF", "earliest finish of " + id)
              .formula("EF_before + wait + t_e")
              .with("EF_before", finish, "s")
              .with("wait", task.earlyStart() - finish, "s")
              .with("t_e", duration, "s")
              .from(ScheduleSources.CRITICAL_PATH)
              .gives(task.earlyFinish(), "s");
      variance = sum;
    }
    return finish;
  }
}
