/**
 * When the work is done: tasks with three-point durations, their order, teams and tools, critical
 * path, ranges and a calendar.
 *
 * <pre>
 *   MergePlan -&gt; JoinTasks -&gt; Network -&gt; CriticalPath        slack, mean and variance
 *                                     -&gt; ResourceSchedule    teams and tools, exact for small jobs
 *                                     -&gt; Simulation          P50, P80, P95
 *                                     -&gt; WorkCalendar        daylight and breaks -&gt; GanttChart
 * </pre>
 *
 * <p>Times are in seconds. First class to open: {@link
 * io.github.seamstead.assembly.schedule.Network}.
 */
@NullMarked
package io.github.seamstead.assembly.schedule;

import org.jspecify.annotations.NullMarked;
