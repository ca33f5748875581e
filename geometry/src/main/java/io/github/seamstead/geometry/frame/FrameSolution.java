package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * What {@link FrameSolver} found: no, one or two pyramids, and why.
 *
 * @param determination how far the measures fix a pyramid
 * @param candidates the pyramids, flattest first; one or two, or none
 * @param reasons sentences for the reader: why there is none, how two differ, what is barely
 *     determined; may be empty for a sound single pyramid
 */
public record FrameSolution(
    Determination determination, List<Candidate> candidates, List<String> reasons) {

  /** How far the measures fix a pyramid. */
  public enum Determination {
    /** Exactly one pyramid. */
    ONE,
    /** Two pyramids have these measures; one further measure decides. */
    TWO,
    /** No pyramid has these measures. */
    NONE,
    /** The measures leave a whole family of pyramids. */
    TOO_FEW
  }

  /**
   * A pyramid with the measures given.
   *
   * @param pyramid the whole pyramid
   * @param magnification how many percent the inradius or the height moves at most when one of the
   *     two measures it was found from moves by 1 %; infinite where two solutions touch; greater
   *     than 0
   * @param comparisons the further measures given against those of this pyramid
   */
  public record Candidate(
      RegularPyramid pyramid, double magnification, List<Comparison> comparisons) {

    public Candidate {
      comparisons = List.copyOf(comparisons);
    }
  }

  /**
   * A measure given beyond the two that fix the pyramid.
   *
   * @param measure which
   * @param given as given, in the measure's unit
   * @param found that of the pyramid, in the measure's unit
   */
  public record Comparison(PyramidMeasure measure, double given, double found) {

    /**
     * Gives {@code given / found - 1}.
     *
     * @return the relative difference, without unit
     */
    public double relativeDifference() {
      return given / found - 1;
    }
  }

  public FrameSolution {
    candidates = List.copyOf(candidates);
    reasons = List.copyOf(reasons);
    int count = determination == Determination.ONE ? 1 : determination == Determination.TWO ? 2 : 0;
    Args.require(
        candidates.size() == count,
        "solution",
        candidates.size() + " pyramids",
        "must be " + count);
    Args.require(count == 1 || !reasons.isEmpty(), "solution: must say why it is not one pyramid");
  }

  /**
   * Gives the one pyramid.
   *
   * @return the pyramid
   * @throws IllegalArgumentException if there is not exactly one, with the reasons
   */
  public RegularPyramid single() {
    Args.agree(
        determination == Determination.ONE,
        String.join(" ", reasons).replaceFirst("[.]$", ""),
        "must be measures that one pyramid has");
    return candidates.get(0).pyramid();
  }
}
