package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * Something of a job that is tried in several ways.
 *
 * @param name what is varied, as tables head it; not blank
 * @param choices the ways, one or more
 */
public record Variation(String name, List<Alternative> choices) {

  public Variation {
    Args.notBlank("name", name);
    Args.require(!choices.isEmpty(), "choices", "none", "must be at least one");
    choices = List.copyOf(choices);
  }
}
