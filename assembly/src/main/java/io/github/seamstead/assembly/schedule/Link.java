package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;

/**
 * A task that must end first, and how long to wait after it.
 *
 * @param task the id of the task before; not blank
 * @param lag time from its end to the earliest start, such as the cure of an adhesive, in seconds,
 *     0 or more; it runs by the clock, nights and breaks included
 */
public record Link(String task, double lag) {

  public Link {
    Args.notBlank("task before", task);
    Args.notNegative("wait after task " + task, lag, "s");
  }

  /**
   * Links without a wait.
   *
   * @param task the id of the task before
   * @return the link
   */
  public static Link to(String task) {
    return new Link(task, 0);
  }
}
