package io.github.seamstead.assembly.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class ResourceScheduleProperties {

  private static final Map<String, Integer> CAPACITIES = Map.of("team", 2, "tool", 3);

  private static Network network(Random random, int n, boolean waits) {
    List<Task> tasks = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      List<Link> after = new ArrayList<>();
      for (int j = 0; j < i; j++) {
        if (random.nextInt(4) == 0) {
          after.add(new Link("t" + j, waits ? random.nextInt(3) : 0));
        }
      }
      Map<String, Integer> needs = new HashMap<>();
      needs.put("team", random.nextInt(3));
      needs.put("tool", random.nextInt(4));
      tasks.add(
          new Task("t" + i, "task " + i, ThreePoint.exactly(random.nextInt(6)), after, needs));
    }
    return Network.of(tasks);
  }

  /** Places tasks in every order that respects precedence, each as early as it fits. */
  private static final class EveryOrder {

    private final Network network;
    private final Map<String, Integer> index = new HashMap<>();
    private double best = Double.POSITIVE_INFINITY;

    EveryOrder(Network network) {
      this.network = network;
      for (int i = 0; i < network.tasks().size(); i++) {
        index.put(network.tasks().get(i).id(), i);
      }
      run(new double[network.tasks().size()], new boolean[network.tasks().size()], 0);
    }

    private void run(double[] start, boolean[] placed, int count) {
      int n = start.length;
      if (count == n) {
        double end = 0;
        for (int i = 0; i < n; i++) {
          end = Math.max(end, start[i] + duration(i));
        }
        best = Math.min(best, end);
        return;
      }
      for (int i = 0; i < n; i++) {
        if (placed[i]) {
          continue;
        }
        double ready = 0;
        boolean open = true;
        for (Link link : network.tasks().get(i).after()) {
          int b = index.get(link.task());
          open &= placed[b];
          ready = Math.max(ready, start[b] + duration(b) + link.lag());
        }
        if (!open) {
          continue;
        }
        double at = ready;
        while (!fits(i, at, start, placed)) {
          at++;
        }
        start[i] = at;
        placed[i] = true;
        run(start, placed, count + 1);
        placed[i] = false;
      }
    }

    private double duration(int i) {
      return network.tasks().get(i).duration().likely();
    }

    /** All numbers are whole, so looking at each whole second is enough. */
    private boolean fits(int task, double at, double[] start, boolean[] placed) {
      for (double t = at; t < at + duration(task); t++) {
        for (String resource : CAPACITIES.keySet()) {
          int used = network.tasks().get(task).needs().get(resource);
          for (int i = 0; i < start.length; i++) {
            if (placed[i] && start[i] <= t && start[i] + duration(i) > t) {
              used += network.tasks().get(i).needs().get(resource);
            }
          }
          if (used > CAPACITIES.get(resource)) {
            return false;
          }
        }
      }
      return true;
    }
  }

  @Property(tries = 80, seed = "11005")
  void agreesWithEveryOrder(@ForAll long seed, @ForAll boolean waits) {
    Random random = new Random(seed);
    Network network = network(random, 2 + random.nextInt(4), waits);
    ResourceSchedule schedule =
        ResourceSchedule.of(network, CAPACITIES, Work.of(Budget.ofWork(200_000), seed));
    assertThat(schedule.proved()).isTrue();
    assertThat(schedule.length()).isCloseTo(new EveryOrder(network).best, within(1e-9));
    ResourceScheduleTest.checkFeasible(schedule, CAPACITIES);
  }

  /** The search alone, from a poor start, so that the priority schedules cannot hide a fault. */
  @Property(tries = 80, seed = "68967")
  void theSearchAloneFindsTheShortest(@ForAll long seed, @ForAll boolean waits) {
    Random random = new Random(seed);
    Network network = network(random, 2 + random.nextInt(4), waits);
    ResourceProblem problem = ResourceProblem.of(network, network.means(), CAPACITIES);
    double[] oneAfterAnother = new double[problem.size];
    double at = 0;
    for (int task : problem.order) {
      oneAfterAnother[task] = at + 3;
      at = oneAfterAnother[task] + problem.duration[task];
    }
    ScheduleSearch search =
        new ScheduleSearch(problem, oneAfterAnother, Work.of(Budget.ofWork(500_000), 1), 0);
    search.run();
    assertThat(search.isProved()).isTrue();
    assertThat(PriorityScheduler.length(problem, search.best()))
        .isCloseTo(new EveryOrder(network).best, within(1e-9));
  }

  @Property(tries = 15, seed = "17680")
  void largerJobsAreFeasibleAndBounded(@ForAll long seed) {
    Random random = new Random(seed);
    Network network = network(random, 80, random.nextBoolean());
    ResourceSchedule schedule =
        ResourceSchedule.of(network, CAPACITIES, Work.of(Budget.ofWork(20), seed));
    ResourceScheduleTest.checkFeasible(schedule, CAPACITIES);
    assertThat(schedule.lowerBound()).isLessThanOrEqualTo(schedule.length() + 1e-9);
    assertThat(schedule.gapRatio()).isBetween(0.0, 1.0);
    ResourceSchedule again =
        ResourceSchedule.of(network, CAPACITIES, Work.of(Budget.ofWork(20), seed));
    assertThat(again).isEqualTo(schedule);
  }
}
