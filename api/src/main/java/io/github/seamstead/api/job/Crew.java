package io.github.seamstead.api.job;

/**
 * The people who do the work.
 *
 * @param people how many people work
 * @param teams how many teams join seams at the same time
 * @param hoursPerDay working time in a day, in seconds
 */
public record Crew(int people, int teams, double hoursPerDay) {}
