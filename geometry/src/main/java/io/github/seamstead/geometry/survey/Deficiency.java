package io.github.seamstead.geometry.survey;

import java.util.List;

/**
 * A survey whose readings do not fix the frame, and the readings that would.
 *
 * @param survey the survey
 * @param missing how many independent readings are missing, 1 or more
 * @param looseNodes the nodes that could move without any reading changing
 * @param suggestions readings that together fix it, the best first; the first {@value
 *     #MOST_SUGGESTIONS} where more are missing
 */
public record Deficiency(
    Survey survey, int missing, List<Node> looseNodes, List<Suggestion> suggestions)
    implements SurveyOutcome {

  /** The most readings that are suggested at once. */
  public static final int MOST_SUGGESTIONS = 20;

  public Deficiency {
    looseNodes = List.copyOf(looseNodes);
    suggestions = List.copyOf(suggestions);
  }

  /** What to read. */
  public enum Quantity {
    /** The straight distance. */
    DISTANCE,
    /** The difference of heights: offered where no distance helps, as in a flat ring. */
    HEIGHT_DIFFERENCE
  }

  /**
   * A reading that fixes a loose motion.
   *
   * @param quantity what to read
   * @param from one end
   * @param to the other end
   * @param sharpness how far the reading changes while the nodes move by 1 in all, 0 to about 1.4:
   *     the larger, the better it fixes them
   */
  public record Suggestion(Quantity quantity, Node from, Node to, double sharpness) {

    /**
     * Writes the suggestion.
     *
     * @return such as {@code distance B1-B3}
     */
    public String text() {
      String what = quantity == Quantity.DISTANCE ? "distance " : "height difference ";
      return what + from + "-" + to;
    }
  }

  /**
   * Says what is missing and what to read, in one sentence.
   *
   * @return the message
   */
  public String message() {
    StringBuilder text = new StringBuilder("readings: ");
    text.append(missing)
        .append(missing == 1 ? " more is" : " more are")
        .append(" needed to fix ")
        .append(join(looseNodes));
    if (!suggestions.isEmpty()) {
      text.append("; best: ")
          .append(String.join(", ", suggestions.stream().map(Suggestion::text).toList()));
    }
    return text.toString();
  }

  private static String join(List<Node> nodes) {
    return String.join(", ", nodes.stream().map(Node::name).toList());
  }
}
