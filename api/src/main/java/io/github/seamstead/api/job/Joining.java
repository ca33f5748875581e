package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * How the crew joins.
 *
 * @param quickestSeam shortest time to join one seam, in seconds
 * @param usualSeam usual time to join one seam, in seconds; of the first seam if the crew learns
 * @param slowestSeam longest time to join one seam, in seconds
 * @param liftLimit the most that one person may handle, in kilograms
 * @param learning what each doubling of the seams leaves of the time of one, if stated
 */
public record Joining(
    double quickestSeam,
    double usualSeam,
    double slowestSeam,
    double liftLimit,
    Optional<Double> learning) {}
