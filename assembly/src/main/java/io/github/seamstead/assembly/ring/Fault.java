package io.github.seamstead.assembly.ring;

/**
 * Something wrong in the log.
 *
 * @param kind what is wrong
 * @param entry the number of the line in the log, from 1
 * @param message what was found and what is right, for the crew
 */
public record Fault(Kind kind, int entry, String message) {

  /** What is wrong. */
  public enum Kind {
    /** No piece has such an edge: the entry cannot be used. */
    UNKNOWN_EDGE("unknown edge"),
    /** The mark typed is not the mark of that edge: something was misread. */
    MISREAD_MARK("misread mark"),
    /** The two edges belong to different joints. */
    WRONG_EDGE("wrong edge"),
    /** The pieces belong together, but were joined in another order. */
    WRONG_ORDER("right pieces in wrong order"),
    /** The edges belong together, but the wrong sides lay together. */
    WRONG_SIDE("wrong side"),
    /** The joint had been made before. */
    DONE_TWICE("joint done twice"),
    /** An edge had been used in another seam before. */
    EDGE_TAKEN("edge already used"),
    /** A seam was opened that was not there. */
    NOTHING_TO_UNDO("nothing to undo");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    /**
     * Names the kind as the book prints it.
     *
     * @return for example {@code wrong side}
     */
    public String label() {
      return label;
    }
  }
}
