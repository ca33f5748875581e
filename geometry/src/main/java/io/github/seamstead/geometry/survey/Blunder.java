package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;

/**
 * A reading that cannot be right, or is the likeliest not to be.
 *
 * @param number its place in the field book, from 1
 * @param reading the reading
 * @param statistic its standardised residual when it was taken out
 * @param critical the critical value it exceeded
 * @param predicted what the others say it should be if it is the wrong one, in metres; where none
 *     controls it, what a regular frame of this size has there
 * @param error how far it is off, given - predicted, in metres
 * @param hints what probably happened, the likeliest first; empty if nothing usual fits
 * @param alsoPossible other readings whose error would look nearly the same: measure these again
 *     too
 * @param cause how sure it is that this is the wrong one
 */
public record Blunder(
    int number,
    Reading reading,
    double statistic,
    double critical,
    Uncertain predicted,
    double error,
    List<String> hints,
    List<Alternative> alsoPossible,
    Cause cause) {

  /** How a reading came to be named. */
  public enum Cause {
    /** The other readings contradict it, and it alone. */
    CONTRADICTED,
    /**
     * One of those that {@link Blunder#alsoPossible()} lists may be the wrong one instead, and all
     * else would agree as well.
     */
    RIVAL,
    /**
     * No other reading controls it; it is named since it is off the regular frame by far more than
     * all others. What would settle it is in {@link SurveyControl#proposed()}.
     */
    UNCONTROLLED
  }

  /**
   * A reading that may be the wrong one instead.
   *
   * @param number its place in the field book, from 1
   * @param reading the reading
   * @param predicted what the others then say it should be, in metres
   * @param hints what then probably happened; empty if nothing usual fits
   */
  public record Alternative(int number, Reading reading, Uncertain predicted, List<String> hints) {

    public Alternative {
      hints = List.copyOf(hints);
    }
  }

  /**
   * Tells whether this reading is known to be the wrong one.
   *
   * @return false if another may be wrong instead
   */
  public boolean isCertain() {
    return cause == Cause.CONTRADICTED;
  }

  public Blunder {
    hints = List.copyOf(hints);
    alsoPossible = List.copyOf(alsoPossible);
  }
}
