package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;

/**
 * A value that the document leaves out and the plan takes from elsewhere.
 *
 * @param path the JSON path where the document could state the value
 * @param value the value taken, with its unit
 * @param ground why this value: the source or the practice it comes from
 */
public record Assumption(String path, String value, String ground) {

  /**
   * Checks the words.
   *
   * @param path not blank
   * @param value not blank
   * @param ground not blank
   * @throws IllegalArgumentException if a text is blank
   */
  public Assumption {
    Args.notBlank("path", path);
    Args.notBlank("value", value);
    Args.notBlank("ground", ground);
  }
}
