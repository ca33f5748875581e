package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.fixings.AdhesiveNeed;
import java.util.Optional;

/**
 * What of the fixings stands in seams that are made, and what the seams left take; both without
 * spare. Together they are the fixings of the whole cover.
 *
 * @param made staples, stitches or screws in the seams that are made
 * @param open staples, stitches or screws of the seams left
 * @param adhesive adhesive of the seams left; empty if none is left, or the document states no bead
 * @param thread thread of the seams left, in metres; empty if none is left, and but for stitches
 */
public record FixingsLeft(
    int made, int open, Optional<AdhesiveNeed> adhesive, Optional<Double> thread) {}
