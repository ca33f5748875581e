package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.assembly.schedule.GanttChart;
import io.github.seamstead.assembly.schedule.ResourceSchedule;
import io.github.seamstead.assembly.schedule.Simulation;

/**
 * How long the joining takes.
 *
 * @param schedule the seams on the teams, each in its mean time
 * @param simulation the range of the whole
 * @param chart the schedule as bars
 */
public record SchedulePart(ResourceSchedule schedule, Simulation simulation, GanttChart chart) {}
