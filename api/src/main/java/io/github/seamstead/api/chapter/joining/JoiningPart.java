package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.assembly.merge.Comparison;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.ring.JointMap;
import io.github.seamstead.assembly.ring.PieceRing;
import java.util.Optional;

/**
 * How the panels are joined.
 *
 * @param ring the panels round the frame with their joints
 * @param standing the map as the cover stands, seen from outside
 * @param lying the map as the cover lies, inside out, seen from the plain side
 * @param order the join order; empty if no order keeps the limits
 * @param alternatives the join order beside others
 * @param options the objective, limits, times and teams that the order was planned with
 */
public record JoiningPart(
    PieceRing ring,
    JointMap standing,
    JointMap lying,
    Optional<MergePlan> order,
    Comparison alternatives,
    io.github.seamstead.assembly.merge.PlanOptions options) {}
