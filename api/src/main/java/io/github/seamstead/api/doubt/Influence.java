package io.github.seamstead.api.doubt;

import io.github.seamstead.shared.sensitivity.SensitivityIndex;
import java.util.Optional;

/**
 * How one doubt moves one number.
 *
 * @param doubt what is doubtful
 * @param spread how far it may be off, for people
 * @param ground where that is stated or taken from
 * @param remedy what to do to know it better
 * @param low the least that the number comes to if the doubt alone goes from its 5 % to its 95 %
 *     end, all else as planned
 * @param high the most that it comes to then
 * @param open whether the plan cannot be met, or never dries, towards an end
 * @param index the part of the number's variance that the doubt makes
 * @param halved what the number's range becomes with half this doubt; empty if the doubt moves it
 *     too little to have been tried
 */
public record Influence(
    String doubt,
    String spread,
    String ground,
    String remedy,
    double low,
    double high,
    boolean open,
    SensitivityIndex index,
    Optional<Halved> halved) {

  /**
   * The range of a number from its 5 % to its 95 % end, before and after a doubt is halved; both
   * from runs at the same points.
   *
   * @param lowBefore 5 % end with all doubts as they are
   * @param highBefore 95 % end with all doubts as they are
   * @param lowAfter 5 % end with half the doubt
   * @param highAfter 95 % end with half the doubt
   */
  public record Halved(double lowBefore, double highBefore, double lowAfter, double highAfter) {

    /**
     * Tells how much narrower the range becomes.
     *
     * @return the part of its width that goes, 0 for none; below 0 if it grows
     */
    public double narrowing() {
      double before = highBefore - lowBefore;
      return before > 0 ? 1 - (highAfter - lowAfter) / before : 0;
    }
  }
}
