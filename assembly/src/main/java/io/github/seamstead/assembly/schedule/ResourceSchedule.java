package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * When each task starts with the teams and tools there are.
 *
 * <p>Up to {@link #MOST_EXACT} tasks the shortest schedule is sought exactly by branch and bound,
 * which is exponential in the worst case and stops at the budget; beyond, or at the budget's end,
 * the best of a number of priority schedules stands with a lower bound. One work unit is one
 * priority schedule or one node of the search. The problem is the resource-constrained project
 * scheduling problem: Kolisch and Sprecher, PSPLIB, European Journal of Operational Research 96
 * (1996); the two dominance rules follow Demeulemeester and Herroelen, Management Science 38
 * (1992), from memory.
 *
 * @param tasks tasks with their starts, earliest first
 * @param length from start to end, in seconds
 * @param lowerBound what no schedule can go below, in seconds
 * @param proved whether no schedule is shorter
 * @param workUnits work units spent
 */
public record ResourceSchedule(
    List<Placed> tasks, double length, double lowerBound, boolean proved, long workUnits) {

  /** The most tasks that are scheduled exactly. */
  public static final int MOST_EXACT = ScheduleSearch.MOST_TASKS;

  private static final int SAMPLES = 40;

  public ResourceSchedule {
    tasks = List.copyOf(tasks);
  }

  /**
   * A task in the schedule.
   *
   * @param task the task
   * @param startTime its start, in seconds after the start of the work
   * @param finishTime its finish, in seconds after the start of the work
   */
  public record Placed(Task task, double startTime, double finishTime) {}

  /**
   * Schedules by mean durations.
   *
   * @param network the tasks
   * @param capacities how many there are of each resource; a resource without a capacity is not
   *     limited
   * @param work budget and seed
   * @return the best schedule found and how sure it is
   * @throws IllegalArgumentException if a task needs more than there is, or a capacity is negative
   */
  public static ResourceSchedule of(Network network, Map<String, Integer> capacities, Work work) {
    ResourceProblem problem = ResourceProblem.of(network, network.means(), capacities);
    int samples = (int) Math.min(SAMPLES, work.budget().workUnits());
    double[] starts = new PriorityScheduler(problem).best(samples, work.seed());
    double bound = problem.lowerBound();
    double length = PriorityScheduler.length(problem, starts);
    boolean proved = length <= bound * (1 + 1e-12);
    long spent = samples;
    if (!proved && problem.size <= MOST_EXACT) {
      work.progress().report(0.1, "searching for a schedule shorter than the best so far");
      ScheduleSearch search = new ScheduleSearch(problem, starts, work, samples);
      search.run();
      starts = search.best();
      proved = search.isProved();
      spent += search.nodes();
      length = PriorityScheduler.length(problem, starts);
    }
    work.progress().report(1, "scheduled");
    return new ResourceSchedule(
        placed(network, problem, starts), length, proved ? length : bound, proved, spent);
  }

  private static List<Placed> placed(Network network, ResourceProblem problem, double[] starts) {
    List<Placed> placed = new ArrayList<>();
    // Network order first, so that of two tasks at one time the one before stands before.
    for (int i : problem.order) {
      placed.add(new Placed(network.tasks().get(i), starts[i], starts[i] + problem.duration[i]));
    }
    placed.sort(Comparator.comparingDouble(Placed::startTime));
    return placed;
  }

  /**
   * Gives the gap.
   *
   * @return the part of the length that a better schedule could save at most; 0 if proved
   */
  public double gapRatio() {
    return proved || length <= 0 ? 0 : Math.max(0, (length - lowerBound) / length);
  }

  /** Tells for each task, in the order of {@link #tasks()}, whether the end waits for it. */
  boolean[] critical(Map<String, Integer> capacities) {
    List<Task> list = tasks.stream().map(Placed::task).toList();
    Network network = Network.of(list);
    double[] duration = tasks.stream().mapToDouble(p -> p.finishTime() - p.startTime()).toArray();
    double[] starts = tasks.stream().mapToDouble(Placed::startTime).toArray();
    return CriticalSequence.of(ResourceProblem.of(network, duration, capacities), starts);
  }
}
