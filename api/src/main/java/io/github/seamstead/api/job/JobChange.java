package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

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

  /**
   * Leaves a value out.
   *
   * @param path where it stands; not blank
   * @return the change
   */
  public static JobChange none(String path) {
    return new JobChange(path, JobValue.none());
  }

  /**
   * Puts a quantity in the place of another.
   *
   * @param path where it stands; not blank
   * @param value the number, in the unit that follows; finite
   * @param unit a unit of the quantity's kind, such as {@code m}
   * @return the change
   */
  public static JobChange quantity(String path, double value, String unit) {
    return new JobChange(path, JobValue.text(Numbers.plain(value) + " " + unit));
  }
}
