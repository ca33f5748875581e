package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.assembly.schedule.GanttChart;
import io.github.seamstead.assembly.schedule.LearningCurve;
import io.github.seamstead.assembly.schedule.ResourceSchedule;
import io.github.seamstead.assembly.schedule.Simulation;
import io.github.seamstead.assembly.schedule.WorkCalendar;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How long the joining takes.
 *
 * @param schedule the seams on the teams, each in its mean time
 * @param simulation the range of the whole
 * @param chart the schedule as bars
 * @param days the schedule laid into working days, from midnight before the first; empty if the
 *     document states no crew
 * @param start the first day, if the document states it
 * @param learning how later seams go quicker, if the document states it
 */
public record SchedulePart(
    ResourceSchedule schedule,
    Simulation simulation,
    GanttChart chart,
    Optional<GanttChart> days,
    Optional<LocalDate> start,
    Optional<LearningCurve> learning) {

  /**
   * Gives the working day on which the last seam is done, every day being worked.
   *
   * @return 1 or more; empty if the document states no crew
   */
  public Optional<Integer> lastDay() {
    return days.map(
        chart -> (int) Math.max(1, Math.ceil(chart.endTime() / WorkCalendar.DAY_SECONDS)));
  }
}
