package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tasks and what must come before what, free of circles.
 *
 * <pre>{@code
 * Network network =
 *     Network.of(
 *         List.of(
 *             Task.of("A", ThreePoint.exactly(6)),
 *             Task.of("B", new ThreePoint(1, 2, 4), "A")));
 * CriticalPath.of(network).length();
 * }</pre>
 *
 * <p>Immutable. Building costs O(tasks + links).
 */
public final class Network {

  private final List<Task> tasks;
  private final Map<String, Integer> index = new HashMap<>();
  private final int[] order;
  private final int[][] before;
  private final double[][] lag;

  private Network(List<Task> tasks) {
    this.tasks = Args.notEmpty("tasks", tasks);
    for (int i = 0; i < tasks.size(); i++) {
      String id = tasks.get(i).id();
      Args.require(
          index.put(id, i) == null,
          "task id: given " + id + " twice, every task must have its own");
    }
    this.before = new int[tasks.size()][];
    this.lag = new double[tasks.size()][];
    for (int i = 0; i < tasks.size(); i++) {
      List<Link> links = tasks.get(i).after();
      before[i] = new int[links.size()];
      lag[i] = new double[links.size()];
      for (int j = 0; j < links.size(); j++) {
        before[i][j] = find(links.get(j).task(), tasks.get(i).id());
        lag[i][j] = links.get(j).lag();
      }
    }
    this.order = sorted();
  }

  /**
   * Makes a network.
   *
   * @param tasks at least one, with ids of their own
   * @return the network
   * @throws IllegalArgumentException if there is no task, an id stands twice, a task before is
   *     unknown, or tasks wait for each other in a circle
   */
  public static Network of(List<Task> tasks) {
    return new Network(tasks);
  }

  private int find(String id, String of) {
    Integer at = index.get(id);
    if (at == null) {
      throw new IllegalArgumentException(
          "task " + of + ": given " + id + " as a task before it, but there is no such task");
    }
    return at;
  }

  private int[] sorted() {
    int n = tasks.size();
    int[] missing = new int[n];
    List<List<Integer>> next = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      next.add(new ArrayList<>());
    }
    for (int i = 0; i < n; i++) {
      missing[i] = before[i].length;
      for (int b : before[i]) {
        next.get(b).add(i);
      }
    }
    Deque<Integer> ready = new ArrayDeque<>();
    for (int i = 0; i < n; i++) {
      if (missing[i] == 0) {
        ready.add(i);
      }
    }
    int[] sorted = new int[n];
    int count = 0;
    while (!ready.isEmpty()) {
      int task = ready.remove();
      sorted[count++] = task;
      for (int after : next.get(task)) {
        if (--missing[after] == 0) {
          ready.add(after);
        }
      }
    }
    if (count < n) {
      throw new IllegalArgumentException("tasks: given a circle: " + circle(missing));
    }
    return sorted;
  }

  /** Walks back from a task that can never start until one comes up again. */
  private String circle(int[] missing) {
    int at = 0;
    while (missing[at] == 0) {
      at++;
    }
    List<Integer> path = new ArrayList<>();
    while (!path.contains(at)) {
      path.add(at);
      for (int b : before[at]) {
        if (missing[b] > 0) {
          at = b;
          break;
        }
      }
    }
    StringBuilder text = new StringBuilder(tasks.get(at).id());
    for (int i = path.indexOf(at) + 1; i < path.size(); i++) {
      text.append(" waits for ").append(tasks.get(path.get(i)).id());
    }
    return text.append(" waits for ").append(tasks.get(at).id()).toString();
  }

  /**
   * Lists the tasks.
   *
   * @return as they were given
   */
  public List<Task> tasks() {
    return tasks;
  }

  /**
   * Finds a task.
   *
   * @param id its id
   * @return the task
   * @throws IllegalArgumentException if there is none
   */
  public Task task(String id) {
    Integer at = index.get(id);
    if (at == null) {
      throw new IllegalArgumentException("task: given " + id + ", but there is no such task");
    }
    return tasks.get(at);
  }

  int size() {
    return tasks.size();
  }

  /** Gives the indices so that every task comes after those it waits for. */
  int[] order() {
    return order;
  }

  int[] before(int task) {
    return before[task];
  }

  double[] lag(int task) {
    return lag[task];
  }

  double[] means() {
    return tasks.stream().mapToDouble(task -> task.duration().mean()).toArray();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Network network && network.tasks.equals(tasks);
  }

  @Override
  public int hashCode() {
    return tasks.hashCode();
  }

  @Override
  public String toString() {
    return "Network" + tasks.stream().map(Task::id).toList();
  }
}
