package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.uncertainty.Uncertain;

/**
 * How much of a result's variance one group of inputs makes.
 *
 * @param first the first-order index: the part of the variance that goes if the group is known and
 *     all else stays as doubtful, 0 to 1 but for the scatter of its estimate
 * @param total the total index: the part of the variance that is left if all but the group is
 *     known, which counts what it makes together with others, too
 */
public record SensitivityIndex(Uncertain first, Uncertain total) {}
