package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;

/**
 * A value that the document leaves out and the plan takes from elsewhere.
 *
 * @param path the JSON path where the document could state the value; not blank
 * @param value the value taken, with its unit; not blank
 * @param ground why this value: the source or the practice it comes from; not blank
 */
public record Assumption(String path, String value, String ground) {

  public Assumption {
    Args.notBlank("path", path);
    Args.notBlank("value", value);
    Args.notBlank("ground", ground);
  }
}
