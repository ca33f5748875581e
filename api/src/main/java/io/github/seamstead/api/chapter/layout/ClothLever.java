package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * Something that a builder can do to need less cloth, or to get by with smaller pieces of it.
 *
 * @param name what is done, as a builder says it; not blank
 * @param price what it costs that no number of the plan shows; not blank
 * @param changes the values that state it in the job document; one or more
 */
public record ClothLever(String name, String price, List<JobChange> changes) {

  public ClothLever {
    Args.notBlank("name", name);
    Args.notBlank("price", price);
    Args.require(!changes.isEmpty(), "changes", "none", "must be at least one");
    changes = List.copyOf(changes);
  }
}
