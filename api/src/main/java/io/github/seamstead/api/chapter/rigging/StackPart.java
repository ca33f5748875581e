package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.fixings.SeamStack;
import java.util.Optional;

/**
 * What a fixing of a seam goes through, and what that asks of it.
 *
 * @param stack the layers
 * @param leastLeg least length of a staple's leg or a screw, in metres; empty for stitches, and for
 *     screws whose bite is not stated
 * @param thread thread of all seams, needle and bobbin together, in metres; empty but for stitches
 */
public record StackPart(SeamStack stack, Optional<Double> leastLeg, Optional<Double> thread) {}
