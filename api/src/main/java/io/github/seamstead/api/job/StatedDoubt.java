package io.github.seamstead.api.job;

import io.github.seamstead.shared.sensitivity.Scatter;

/**
 * A doubt that a job states, looked up.
 *
 * @param number the number that is doubtful
 * @param value what the job states of it, in its SI unit
 * @param scatter how it may lie about that, in the SI unit
 * @param text how far it may be off, as the job writes it
 */
public record StatedDoubt(JobNumber number, double value, Scatter scatter, String text) {}
