package io.github.seamstead.api.plan;

import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolution;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.Optional;

/**
 * The ideal frame.
 *
 * @param pyramid the frame on its centre lines, whole or truncated
 * @param measures all its measures
 * @param solution how the stated measures fix it; empty if the frame comes from a survey alone
 */
public record FramePart(
    RegularPyramid pyramid, FrameMeasures measures, Optional<FrameSolution> solution) {}
