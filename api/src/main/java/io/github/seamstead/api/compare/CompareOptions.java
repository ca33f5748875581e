package io.github.seamstead.api.compare;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobChange;
import java.util.List;

/**
 * The terms on which variants are planned.
 *
 * @param plan effort, seed, progress and the switch that stops the work
 * @param quick whether the stock is left out, so that no layout is searched
 */
public record CompareOptions(PlanOptions plan, boolean quick) {

  /** What a quick comparison leaves out, for people. */
  public static final String LEFT_OUT =
      "Quick: nothing is laid out on the stock. Panels are whole, without the splices that narrow"
          + " cloth needs; so cloth and seams are too short by these, what rolls cost is not in the"
          + " money, and whether the stock is enough is not looked at. Marking out, turning and"
          + " raising, and the schedule of the seams are left out too.";

  /**
   * Gives the whole plan for each variant at the least effort.
   *
   * @return the options
   */
  public static CompareOptions whole() {
    return new CompareOptions(PlanOptions.defaults(), false);
  }

  /**
   * Gives the cheap chapters alone for each variant.
   *
   * @return the options
   */
  public static CompareOptions quickly() {
    return new CompareOptions(PlanOptions.defaults(), true);
  }

  /** The terms for each plan. */
  PlanOptions planned() {
    return quick
        ? plan.only(
            Chapter.FRAME,
            Chapter.SURVEY,
            Chapter.PATTERN,
            Chapter.FIXINGS,
            Chapter.HANDLING,
            Chapter.ANCHORING,
            Chapter.SOIL,
            Chapter.MIX,
            Chapter.FLOOR,
            Chapter.DRYING)
        : plan;
  }

  /** What is changed in every document before it is planned. */
  List<JobChange> cut() {
    return quick ? List.of(JobChange.none("stock")) : List.of();
  }
}
