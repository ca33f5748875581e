package io.github.seamstead.geometry.survey;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What of a survey the readings check among themselves. An error in a reading that no other
 * controls does not show in any residual, however large it is: the frame is simply drawn wrong.
 *
 * @param spareReadings readings beyond what the frame needs (the degrees of freedom); with 0 every
 *     residual is 0 and nothing is checked; 0 or more
 * @param uncontrolled the readings whose redundancy number is below {@value
 *     ReadingResult#CONTROLLED} and in which an error would move an edge or a diagonal of a panel,
 *     in the order of the field book
 * @param proposed readings to take before cloth is cut, after which all are controlled, or as many
 *     as {@value #MOST_PROPOSED} steps allow; empty if all are
 */
public record SurveyControl(
    int spareReadings, List<ReadingResult> uncontrolled, List<CheckReading> proposed) {

  /** The most steps of a proposal: each is a distance, a set of levels, or repeats. */
  public static final int MOST_PROPOSED = 12;

  public SurveyControl {
    uncontrolled = List.copyOf(uncontrolled);
    proposed = List.copyOf(proposed);
  }

  /**
   * Tells whether there is anything to check with.
   *
   * @return true if there is no reading to spare
   */
  public boolean isNothingChecked() {
    return spareReadings == 0;
  }

  /**
   * Tells whether an error in any one reading would show, if it does harm.
   *
   * @return true if every reading that matters is controlled by others
   */
  public boolean isAllControlled() {
    return uncontrolled.isEmpty();
  }

  /**
   * Says in one or two sentences what is not checked and what to read.
   *
   * @return the message
   */
  public String message() {
    if (isAllControlled()) {
      return "every reading that a panel depends on is controlled by others; readings to spare: "
          + spareReadings;
    }
    String gap =
        isNothingChecked()
            ? "nothing could be checked: 0 readings to spare, an error in any reading goes unseen"
            : "nothing controls "
                + uncontrolled.stream()
                    .map(r -> r.reading().name())
                    .distinct()
                    .collect(Collectors.joining(", "))
                + ": an error there goes unseen";
    return proposed.isEmpty()
        ? gap
        : gap
            + "; take at least these before cutting: "
            + proposed.stream().map(CheckReading::text).collect(Collectors.joining(", "));
  }
}
