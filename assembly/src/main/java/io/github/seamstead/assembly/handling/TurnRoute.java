package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.uncertainty.Range;

/**
 * One way of turning the cover right side out.
 *
 * @param first the end that is taken and drawn through
 * @param through the opening that it goes through
 * @param bundle diameter of the gathered girth as it passes, tight to loose, in metres
 * @param opening diameter of the opening when it is drawn round, in metres
 * @param passage whether it passes
 */
public record TurnRoute(
    String first, String through, Range bundle, double opening, Passage passage) {

  /** Whether a bundle passes. */
  public enum Passage {
    /** Even loosely bunched cloth passes with room for hands. */
    PASSES("passes"),
    /** It passes if gathered tightly: try it before the cover is joined. */
    DOUBTFUL("doubtful: only if gathered tightly"),
    /** Not even tightly gathered. */
    TOO_TIGHT("does not pass");

    private final String label;

    Passage(String label) {
      this.label = label;
    }

    /**
     * Names the outcome.
     *
     * @return in words
     */
    public String label() {
      return label;
    }
  }
}
