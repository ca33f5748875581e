package io.github.seamstead.assembly.schedule;

/**
 * When a task can and must be done, in seconds after the start of the work.
 *
 * @param task the task
 * @param earlyStart earliest start
 * @param earlyFinish earliest finish
 * @param lateStart latest start that does not delay the end
 * @param lateFinish latest finish that does not delay the end
 * @param slack how much it may be late, 0 or more
 * @param critical whether it has no slack
 */
public record TaskTimes(
    Task task,
    double earlyStart,
    double earlyFinish,
    double lateStart,
    double lateFinish,
    double slack,
    boolean critical) {}
