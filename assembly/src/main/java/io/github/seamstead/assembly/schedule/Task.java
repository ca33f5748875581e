package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A piece of work that is not interrupted by other work.
 *
 * @param id short name, used by other tasks; not blank
 * @param name what is done, for a person; not blank
 * @param duration how long it takes
 * @param after what must end first
 * @param needs how many of each resource it holds while it runs, such as one team and one stapler;
 *     each 0 or more
 */
public record Task(
    String id, String name, ThreePoint duration, List<Link> after, Map<String, Integer> needs) {

  public Task {
    Args.notBlank("task id", id);
    Args.notBlank("name of task " + id, name);
    after = List.copyOf(after);
    needs = Collections.unmodifiableMap(new TreeMap<>(needs));
    String task = id;
    needs.forEach(
        (what, count) ->
            Args.within("need of task " + task + " for " + what, count, 0, Integer.MAX_VALUE));
  }

  /**
   * Makes a task that needs no limited resource.
   *
   * @param id short name
   * @param duration how long it takes
   * @param after ids of the tasks that must end first
   * @return the task, named by its id
   */
  public static Task of(String id, ThreePoint duration, String... after) {
    return new Task(id, id, duration, Arrays.stream(after).map(Link::to).toList(), Map.of());
  }

  /**
   * Sets the needs.
   *
   * @param newNeeds how many of each resource
   * @return the new task
   */
  public Task needing(Map<String, Integer> newNeeds) {
    return new Task(id, name, duration, after, newNeeds);
  }
}
