package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * One way to state some values of a job.
 *
 * @param name what it is called in tables; not blank
 * @param set the values; empty to leave the job as it is written
 */
public record Alternative(String name, List<JobChange> set) {

  public Alternative {
    Args.notBlank("name", name);
    set = List.copyOf(set);
  }
}
