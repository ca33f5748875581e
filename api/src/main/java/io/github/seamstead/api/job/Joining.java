package io.github.seamstead.api.job;

/**
 * How the crew joins.
 *
 * @param quickestSeam shortest time to join one seam, in seconds
 * @param usualSeam usual time to join one seam, in seconds
 * @param slowestSeam longest time to join one seam, in seconds
 * @param liftLimit the most that one person may handle, in kilograms
 */
public record Joining(
    double quickestSeam, double usualSeam, double slowestSeam, double liftLimit) {}
