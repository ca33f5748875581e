package io.github.seamstead.assembly.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.testing.SharedData;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ResourceScheduleTest {

  private static final Source PSPLIB =
      Source.fromMemory(
          "Kolisch and Sprecher",
          "PSPLIB, a project scheduling problem library",
          "1996",
          "set j30, instance 1_1");
  private static final Source PATTERSON =
      Source.found(
          "Patterson", "Resource-constrained project scheduling test set", "", "pat1, pat2");

  private static Work work() {
    return Work.of(Budget.ofWork(2_000_000), 1);
  }

  /** A job as the published files print it: id, duration, needs, successors. */
  private record Job(int id, int duration, int[] needs, int[] successors) {}

  private static Job job(int id, int duration, int[] needs, int... successors) {
    return new Job(id, duration, needs, successors);
  }

  private static int[] needs(int... needs) {
    return needs;
  }

  private static Network network(List<Job> jobs) {
    Map<Integer, List<Link>> after = new HashMap<>();
    for (Job job : jobs) {
      for (int next : job.successors()) {
        after.computeIfAbsent(next, k -> new ArrayList<>()).add(Link.to("job " + job.id()));
      }
    }
    List<Task> tasks = new ArrayList<>();
    for (Job job : jobs) {
      Map<String, Integer> needs = new HashMap<>();
      for (int r = 0; r < job.needs().length; r++) {
        needs.put("R" + (r + 1), job.needs()[r]);
      }
      String id = "job " + job.id();
      tasks.add(
          new Task(
              id,
              id,
              ThreePoint.exactly(job.duration()),
              after.getOrDefault(job.id(), List.of()),
              needs));
    }
    return Network.of(tasks);
  }

  private static Map<String, Integer> capacities(int... capacities) {
    Map<String, Integer> map = new HashMap<>();
    for (int r = 0; r < capacities.length; r++) {
      map.put("R" + (r + 1), capacities[r]);
    }
    return map;
  }

  private static ResourceSchedule solve(
      String name, Source source, List<Job> jobs, int[] capacity, double path, double optimum) {
    Network network = network(jobs);
    OutsideCheck.of("assembly.schedule", name + ": critical path", source)
        .expect(path)
        .within(1e-9)
        .got(CriticalPath.of(network).length());
    ResourceSchedule schedule = ResourceSchedule.of(network, capacities(capacity), work());
    OutsideCheck.of("assembly.schedule", name + ": shortest schedule", source)
        .expect(optimum)
        .within(1e-9)
        .got(schedule.length());
    assertThat(schedule.proved()).isTrue();
    assertThat(schedule.gapRatio()).isZero();
    checkFeasible(schedule, capacities(capacity));
    return schedule;
  }

  /** Looks at every start: all tasks before have ended and nothing is used more than there is. */
  static void checkFeasible(ResourceSchedule schedule, Map<String, Integer> capacities) {
    Map<String, ResourceSchedule.Placed> placed = new HashMap<>();
    schedule.tasks().forEach(p -> placed.put(p.task().id(), p));
    for (ResourceSchedule.Placed p : schedule.tasks()) {
      for (Link link : p.task().after()) {
        assertThat(p.startTime())
            .isGreaterThanOrEqualTo(placed.get(link.task()).finishTime() + link.lag() - 1e-9);
      }
      capacities.forEach(
          (resource, capacity) ->
              assertThat(
                      schedule.tasks().stream()
                          .filter(
                              o ->
                                  o.startTime() <= p.startTime() + 1e-9
                                      && o.finishTime() > p.startTime() + 1e-9)
                          .mapToInt(o -> o.task().needs().getOrDefault(resource, 0))
                          .sum())
                  .isLessThanOrEqualTo(capacity));
    }
  }

  @Test
  void patterson2() {
    solve(
        "pat2",
        PATTERSON,
        List.of(
            job(1, 0, needs(0, 0, 0), 2, 3),
            job(2, 1, needs(2, 2, 1), 4, 5),
            job(3, 2, needs(0, 2, 1), 6),
            job(4, 2, needs(3, 3, 3), 7),
            job(5, 3, needs(2, 1, 3), 6),
            job(6, 2, needs(1, 1, 0), 7),
            job(7, 0, needs(0, 0, 0))),
        new int[] {5, 5, 3},
        6,
        7);
  }

  @Test
  void patterson1() {
    solve(
        "pat1",
        PATTERSON,
        List.of(
            job(1, 0, needs(0, 0, 0), 2, 3, 4),
            job(2, 6, needs(1, 0, 0), 9, 10),
            job(3, 4, needs(1, 0, 0), 5, 6, 7),
            job(4, 3, needs(0, 0, 0), 8, 11),
            job(5, 1, needs(0, 0, 0), 10),
            job(6, 6, needs(1, 0, 1), 12),
            job(7, 2, needs(1, 0, 0), 8, 11),
            job(8, 1, needs(0, 0, 0), 13),
            job(9, 4, needs(0, 1, 1), 14),
            job(10, 3, needs(0, 0, 1), 12),
            job(11, 2, needs(0, 0, 1), 12),
            job(12, 3, needs(0, 1, 0), 13),
            job(13, 5, needs(0, 0, 0), 14),
            job(14, 0, needs(0, 0, 0))),
        new int[] {2, 1, 2},
        18,
        19);
  }

  @Test
  void thirtyJobsOfTheLibrary() throws IOException {
    String text = Files.readString(SharedData.require("benchmarks/schedule/j301_1.json"));
    Matcher found =
        Pattern.compile(
                "\"id\": (\\d+), \"duration\": (\\d+), \"needs\": \\[([^]]*)\\], \"successors\":"
                    + " \\[([^]]*)\\]")
            .matcher(text);
    List<Job> jobs = new ArrayList<>();
    while (found.find()) {
      jobs.add(
          new Job(
              Integer.parseInt(found.group(1)),
              Integer.parseInt(found.group(2)),
              numbers(found.group(3)),
              numbers(found.group(4))));
    }
    assertThat(jobs).hasSize(32);
    solve("j301_1", PSPLIB, jobs, new int[] {12, 13, 4, 12}, 38, 43);
  }

  private static int[] numbers(String list) {
    return Pattern.compile("\\d+")
        .matcher(list)
        .results()
        .mapToInt(m -> Integer.parseInt(m.group()))
        .toArray();
  }

  @Test
  void refusesANeedThatCanNeverBeMet() {
    Network network =
        Network.of(List.of(Task.of("A", ThreePoint.exactly(1)).needing(Map.of("team", 3))));
    assertThatThrownBy(() -> ResourceSchedule.of(network, Map.of("team", 2), work()))
        .hasMessage("task A: given a need of 3 team, there are only 2");
  }
}
