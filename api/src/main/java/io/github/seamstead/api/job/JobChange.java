package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;

/**
 * One value of a job document put in the place of another.
 *
 * @param path where it stands, such as {@code frame.sides}, {@code stock.sheets[0].count} or {@code
 *     floor.mixes[pack].sandParts}, where an item of a list is called by its number from 0 or by
 *     its id; not blank
 * @param value the value, or none to leave it out
 */
public record JobChange(String path, JobValue value) {

  public JobChange {
    Args.notBlank("path", path);
  }
}
