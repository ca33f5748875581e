package io.github.seamstead.api.job;

import io.github.seamstead.materials.mix.TrialOutcome;
import java.util.Optional;

/**
 * One sample of a trial mix and what became of it.
 *
 * @param sandParts parts of sand to one part of soil, by the bucket, as a part of one
 * @param crack width of all cracks along the mould together, in metres
 * @param mould length of the mould, in metres
 * @param dusting how it dusts when rubbed dry
 * @param scratch what a nail does
 * @param drop what a fall of 1 m does
 * @param sticky whether it stuck to the trowel when wet
 * @param straw chopped straw over its dry mass, as a part of one, if stated
 */
public record TrialSample(
    double sandParts,
    double crack,
    double mould,
    TrialOutcome.Dusting dusting,
    TrialOutcome.Scratch scratch,
    TrialOutcome.Drop drop,
    boolean sticky,
    Optional<Double> straw) {}
