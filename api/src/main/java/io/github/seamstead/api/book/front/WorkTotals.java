package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.quantity.UnitSystem;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * What a whole job takes, as the first sheet of its book says it.
 *
 * @param workingDays days on which the crew works
 * @param personDays days of one person's work: each working day times who is wanted on it
 * @param calendarDays from the first day to the end, with week-ends and drying: if every wait is as
 *     short as it may be, as likely, and if every wait is at its latest
 * @param openEnded whether a wait may last longer than was forecast
 * @param priced the sum of what has a price, in the money of the site
 * @param unpriced the names of what has to be bought and has no price
 */
public record WorkTotals(
    double workingDays,
    double personDays,
    Range calendarDays,
    boolean openEnded,
    double priced,
    List<String> unpriced) {

  public WorkTotals {
    unpriced = List.copyOf(unpriced);
  }

  /**
   * Adds up a plan.
   *
   * @param plan the plan
   * @return its totals
   */
  public static WorkTotals of(JobPlan plan) {
    Desk desk = new Desk(plan, new Words(UnitSystem.METRIC));
    WorkPlan work = WorkPlan.of(desk);
    Needs needs = Needs.of(desk);
    return new WorkTotals(
        work.workingDays(),
        work.personDays(),
        new Range(work.soonest(), work.likely(), work.latest()),
        work.isOpenEnded(),
        needs.priced(),
        needs.unpriced());
  }
}
